// The binder of the demo machine in Firefox, opened from a folder: what is walked in Chromium elsewhere is walked once here, page by page of every kind.
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openPdf, pageText } from '../pdf/read-pdf.ts';
import { binderSite } from '../site/binder-site.ts';
import { oneOfEachKind, oneOfEachTemplate } from '../site/kinds-of-page.ts';
import { writeSite } from '../site/site-folder.ts';
import { byId, choice, field, named, seenOf, wordsOf } from './on-the-page.ts';
import { wrongOn } from './open-all.ts';
import { keys, openPages, type Pages } from './pages.ts';
import { hasFirefox } from './start-firefox.ts';

const phone = { width: 360, scheme: 'light' } as const;
const desk = { width: 1280, scheme: 'light' } as const;

describe.skipIf(!hasFirefox)('the demo in Firefox', () => {
  let firefox: Pages;
  let folder: string;
  let pages: readonly string[];
  beforeAll(async () => {
    const site = await binderSite('demo-bike', '2026-11-14');
    folder = writeSite(site.files);
    pages = site.files.map(({ file }) => file).filter((file) => file.endsWith('.html'));
    firefox = await openPages(folder);
  });
  afterAll(async () => {
    await firefox.close();
    rmSync(folder, { recursive: true, force: true });
  });
  beforeEach(() => firefox.look(phone));
  afterEach(({ task }) => {
    if (task.result?.state === 'fail') console.error(`Firefox last waited for ${firefox.lastWaited()}`);
  });

  it.each([
    { ...phone, files: oneOfEachKind },
    { ...desk, scheme: 'dark', files: oneOfEachTemplate },
  ] as const)('opens a page of every kind at $width, $scheme, and nothing is wrong with it', async (look) => {
    await firefox.look(look);
    expect(await wrongOn(firefox, look.files(pages))).toEqual([]);
    expect(await firefox.read(ground)).toBe(look.scheme === 'dark' ? 'rgb(24, 23, 21)' : 'rgb(255, 255, 255)');
  });

  it('finds a part by keyboard alone, misspelt and in the other dialect, and goes to its very place', async () => {
    await firefox.open('search.html');
    // Past the contents; the field is the first thing of the page.
    await firefox.press(keys.tab, keys.enter, keys.tab, ...'gearbox sproket nut'.split(''));
    await firefox.seen(`${wordsOf('.found li')}[0]?.startsWith('Gearbox sprocket nut')`);
    await firefox.press(keys.tab, keys.enter);
    await firefox.seen("document.querySelector(':target')?.textContent.startsWith('Gearbox sprocket nut')");
    expect(await firefox.read('location.pathname')).toMatch(/\/torque\.html$/u);
    await firefox.back();
    await firefox.seen(`${wordsOf('.found li')}.length > 0`);
    expect(await firefox.read(`${searchField}.value`)).toBe('gearbox sproket nut');
    await firefox.type(searchField, 'carburetor');
    await firefox.seen(`${wordsOf('.found li a')}[0] === 'Carburettor'`);
    await firefox.type(searchField, 'qqqqzzzz');
    await firefox.seen(`${wordsOf('[role=status]')}[0].includes('Nothing is found')`);
    expect(await firefox.complaints()).toEqual([]);
  });

  it('narrows the log, and the torque table by part and by thread', async () => {
    await firefox.open('log.html');
    await firefox.type(field('Only entries with'), 'COUNTIES two');
    await firefox.seen(`${wordsOf('[role=status]')}[0].startsWith('1 of ')`);
    expect(await firefox.read(wordsOf('[id^="log-"] a'))).toEqual(['Two counties and back']);
    expect(await firefox.read(wordsOf('[id^="year-"]'))).toEqual(['2026']);
    await firefox.open('torque.html');
    await firefox.type(field('Only entries with'), 'm16x1.0');
    await firefox.seen(`${wordsOf('[role=status]')}[0].startsWith('1 of ')`);
    expect(await firefox.read(wordsOf('tbody tr strong'))).toEqual(['Gearbox sprocket nut']);
    await firefox.type(field('Only entries with'), 'head nut');
    await firefox.seen(`${wordsOf('tbody tr strong')}.join() === 'Cylinder head nuts'`);
    expect(await firefox.complaints()).toEqual([]);
  });

  it('works out at the bench, says what cannot be read, and shows the working', async () => {
    await firefox.open('bench/oil-in-fuel.html');
    const form = "form.working:has([id^='oil-in-fuel-'])";
    const results = `${wordsOf(`${form} .results li`)}.join()`;
    await firefox.type(byId('oil-in-fuel-fuel'), '0,25');
    await firefox.seen(`${results}.includes(': 10.0 ml')`);
    await firefox.click(`${seenOf(`${form} summary`)}[0]`);
    await firefox.seen(`${wordsOf(`${form} details li`)}.some((line) => line.startsWith('formula: '))`);
    await firefox.type(byId('oil-in-fuel-fuel'), '2?5');
    await firefox.seen(`${wordsOf(`${form} .doubts`)}.join().includes('2?5')`);
    expect(await firefox.read(results)).toBe('');
    await firefox.open('bench/threads.html');
    await firefox.click(`${field('Fastener of this machine')}.options[1]`);
    await firefox.seen(`${byId('thread-geometry-thread')}.value.startsWith('M')`);
    expect(await firefox.complaints()).toEqual([]);
  });

  it('shows a photo in full by keyboard, turns to the next, and gives the place back', async () => {
    await firefox.open('log.html');
    await firefox.read("document.querySelector('.photo a').focus()");
    await firefox.press(keys.enter);
    const shown = 'document.querySelector("dialog[open] img")';
    await firefox.seen(`${shown}?.complete && ${shown}.naturalWidth > 0`);
    const first = await firefox.read(`${shown}.src`);
    await firefox.press(keys.right);
    await firefox.seen(`${wordsOf('dialog [role=status]')}[0].startsWith('2 of ')`);
    expect(await firefox.read(`${shown}.src`)).not.toBe(first);
    await firefox.press(keys.escape);
    await firefox.seen("document.activeElement === document.querySelectorAll('.photo a')[1]");
    expect(await firefox.read("document.querySelectorAll('dialog[open]').length")).toBe(0);
    expect(await firefox.complaints()).toEqual([]);
  });

  it('leads to the next test by what was seen', async () => {
    await firefox.open('next-test.html');
    await firefox.click(named('#bench summary', 'What was tried'));
    await firefox.click(choice('Spark at a new plug of known good, in the shade', 'none'));
    await firefox.seen(`${wordsOf('#bench [role=status]')}[0].includes('Stop switch, key or neutral wire')`);
    await firefox.click(choice('Spark from the end of the lead, cap off, 6 mm to the head', 'jumps'));
    await firefox.seen(`${wordsOf('#bench [role=status]')}[0].includes('Plug cap or high-tension lead broken down')`);
    expect(await firefox.complaints()).toEqual([]);
  });

  it('keeps what is written on the telephone, and gives it as a file', async () => {
    const job = 'phone/2026-11-21-top-end-again.html';
    const bore = 'document.getElementsByName("2026-11-21-top-end-again/bore/left top across/found")[0]';
    await firefox.open(job);
    await firefox.type(bore, '50,62');
    await firefox.seen(`${wordsOf('.remark')}.some((words) => words.includes('Past the limit'))`);
    await firefox.open('index.html');
    await firefox.open(job);
    expect(await firefox.read(`${bore}.value`)).toBe('50,62');
    expect(await firefox.read(wordsOf('#count'))).toEqual(['1 answer is written.']);
    await firefox.click(named('button', 'Save as a file'));
    await firefox.click(named('summary', 'The answers as text'));
    const answers = String(await firefox.read('document.querySelector("#text").value'));
    expect(answers).toContain('50,62');
    expect(await savedIn(firefox.downloads, 'End of 1 answer.\n')).toBe(answers);
    expect(await firefox.complaints()).toEqual([]);
  });

  it('folds the contents on a telephone and unfolds them by a link, without scripts; going back folds them again', async () => {
    await firefox.look({ ...phone, scripting: false });
    await firefox.open('jobs/2025-04-05-top-end-on.html');
    const folded = await firefox.read(wordsOf('.contents a'));
    expect(folded).toEqual(expect.arrayContaining(['Contents', 'Log', 'Search']));
    expect(folded).toHaveLength(3);
    await firefox.click(named('a', 'Contents'));
    await firefox.seen(named('a', 'Fold the contents'));
    expect(await firefox.read(wordsOf('.contents a'))).toEqual(expect.arrayContaining(['Torque', 'Service', 'Manual']));
    await firefox.back();
    await firefox.seen(`${wordsOf('.contents a')}.length === 3`);
    await firefox.open('search.html');
    expect(await firefox.read("document.querySelectorAll('input').length")).toBe(0);
    await firefox.click(`${seenOf('main a')}.at(-1)`);
    await firefox.click(named('main a', 'Rear wheel spindle nut'));
    await firefox.seen("location.hash.startsWith('#torque-rear')");
    await firefox.look(desk);
    await firefox.seen(named('.contents a', 'Torque'));
    expect(await firefox.complaints()).toEqual([]);
  });

  it('prints what was worked out, black on white from a dark screen, without what only leads about', async () => {
    await firefox.look({ ...desk, scheme: 'dark' });
    await firefox.open('bench/oil-in-fuel.html');
    await firefox.type(byId('oil-in-fuel-fuel'), '1 l');
    await firefox.seen(`${wordsOf('.results li')}.join().includes(': 40.0 ml')`);
    const pdf = await openPdf(await firefox.print());
    const pages = Array.from({ length: pdf.numPages }, (_, index) => pageText(pdf, index + 1));
    const text = (await Promise.all(pages)).join(' ').replaceAll(/\s+/gu, ' ');
    await pdf.loadingTask.destroy();
    expect(text).toContain('Oil in the fuel, and topping up');
    expect(text).toContain('40.0 ml');
    expect(text).toContain('Petrol vapour sinks and finds a flame');
    expect(text).not.toContain('Sheets to print');
    await firefox.asPrinted();
    expect(await firefox.read(ground)).toBe('rgb(255, 255, 255)');
    expect(await firefox.complaints()).toEqual([]);
  });

  // Last, for complaints of it may come late.
  it('would be told of whatever went wrong: errors, refusals of the policy, files that are not there, requests', async () => {
    await firefox.open('index.html');
    expect(await firefox.read("fetch('log.html').then(() => 'read', () => 'refused')")).toBe('refused');
    await firefox.read("document.body.insertAdjacentHTML('beforeend', '<p style=\"color: red\">no</p>')");
    writeFileSync(join(folder, 'wrong.html'), wrong);
    await firefox.open('wrong.html');
    const wanted = [
      /^CORS/u,
      /inline style/u,
      /this is wrong/u,
      /not-there\.js/u,
      /^request: https?:\/\/harm\.invalid/u,
    ];
    const told: string[] = [];
    while (!wanted.every((words) => told.some((line) => words.test(line)))) {
      told.push(...(await firefox.complaints()));
      await pause(25);
    }
    expect(told.length).toBeGreaterThanOrEqual(wanted.length);
  });
});

const ground = 'getComputedStyle(document.documentElement).backgroundColor';
const searchField = field('Words, part number, frame number or size');

/** A page as none of ours may be. */
const wrong = `<!doctype html><title>Wrong</title><script>throw new Error('this is wrong')</script>
<script src="not-there.js"></script><img src="http://harm.invalid/picture.png" alt="">`;

/** The only file in a folder, once it is there to its last words; before that it has another name, or is empty. */
async function savedIn(downloads: string, last: string): Promise<string> {
  for (;;) {
    const [text = ''] = readdirSync(downloads)
      .filter((name) => name.endsWith('.txt'))
      .map((name) => readFileSync(join(downloads, name), 'utf8'));
    if (text.endsWith(last)) return text;
    await pause(25);
  }
}
