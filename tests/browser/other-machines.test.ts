// Machines other than the demo: every form of a calculation as the machine stands, with commas, with a wrong unit, and empty; every sheet on a leaf.
import { rmSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Book } from '../../src/book/book.ts';
import { calculationOn } from '../../src/book/taken/on-machine.ts';
import type { Calculation, Worked } from '../../src/calc/calculation.ts';
import type { Input } from '../../src/calc/input.ts';
import { calculations } from '../../src/calc/list.ts';
import { workOut } from '../../src/calc/work.ts';
import { resultLines } from '../../src/calc/work-text.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { contextOf } from '../../src/compose/context.ts';
import { sentence } from '../../src/views/wording/blocks.ts';
import { binderSite } from '../site/binder-site.ts';
import { writeSite } from '../site/site-folder.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { addressOf, openPage } from './look.ts';

const day = '2026-11-14';

type Texts = Readonly<Record<string, string>>;

interface Said {
  readonly results: readonly string[];
  readonly doubts: readonly string[];
  readonly wrong: readonly string[];
  readonly text: string;
}

/** Writes into the fields of the only form of a page, as typing does, and gives what it says then. */
async function typed(page: Page, texts: Texts): Promise<Said> {
  return page.evaluate((wanted) => {
    const form = document.querySelector('form.working');
    const words = (of: string) => [...(form?.querySelectorAll(of) ?? [])].map((one) => one.textContent);
    const fields = form?.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select') ?? [];
    for (const field of fields) {
      const text = wanted[field.name];
      if (text === undefined) continue;
      field.value = text;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }
    const wrong = [...fields].filter((field) => field.getAttribute('aria-invalid') === 'true');
    return {
      results: words('.results li'),
      doubts: words('.doubts li'),
      wrong: wrong.map((field) => field.name),
      text: form?.querySelector('.answer')?.textContent ?? '',
    };
  }, texts);
}

/** Results as a page of this machine says them, in its dialect. */
function saidOf(book: Book, one: Calculation, worked: Worked): readonly string[] {
  const { say } = contextOf(book);
  return resultLines(one, worked).map((line) => sentence(say(line)));
}

/** All fields of a calculation, with these texts in some of them and nothing in the others. */
function only(one: Calculation, texts: Texts): Texts {
  return { ...Object.fromEntries(Object.keys(one.inputs).map((name) => [name, ''])), ...texts };
}

/** Decimals with a comma; where three digits follow it could be thousands, and is asked about. */
function withCommas(one: Calculation): Texts {
  const given = Object.entries(one.example.given).map(([name, text]) => {
    return [
      name,
      one.inputs[name]?.kind === 'words' ? text : text.replaceAll(/(?<=\d)\.(?=\d)(?!\d{3}(?!\d))/gu, ','),
    ] as const;
  });
  return Object.fromEntries(given);
}

/** A value that cannot be meant: its unit is of another kind. */
function ofAnotherKind(input: Exclude<Input, { kind: 'words' }>): string {
  return input.unit.dimension === 'voltage' ? '5 mm' : '5 V';
}

/** Words of the cells beside boxes that begin on one line and end on the next. */
const partedFigures = `[...document.querySelectorAll('.blanks tbody td')].flatMap((cell) => {
  const texts = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
  const parted = [];
  while (texts.nextNode() !== null)
    for (const { 0: word, index } of texts.currentNode.data.matchAll(/[\\d.]+/gu)) {
      const range = document.createRange();
      range.setStart(texts.currentNode, index);
      range.setEnd(texts.currentNode, index + word.length);
      if (range.getClientRects().length > 1) parted.push(word);
    }
  return parted;
})`;

describe.skipIf(!hasBrowser).each(['tests/fixtures/tern-350', 'tests/fixtures/finch-125'])(
  'the pages of %s',
  { timeout: 240_000 },
  (machine) => {
    const book = readMachine(machine, day, {}).binder?.book;
    let browser: Browser;
    let folder: string;
    let pages: readonly string[];
    beforeAll(async () => {
      const site = await binderSite(machine, day);
      folder = writeSite(site.files);
      pages = [...site.pages.keys()];
      browser = await openBrowser();
    });
    afterAll(async () => {
      await browser.close();
      rmSync(folder, { recursive: true, force: true });
    });

    it('work out as the machine stands, take commas, refuse a unit of another kind, and ask when they are empty', async () => {
      if (book === undefined) throw new Error(`${machine} cannot be read`);
      const { page, faults } = await openPage(browser, folder, 'index.html', { width: 360, scheme: 'light' });
      const found: string[] = [];
      let standing = 0;
      for (const one of calculations) {
        await page.goto(addressOf(folder, `calculations/${one.id}.html`));
        const worked = calculationOn(book, one.id)?.worked;
        const stands = worked === undefined ? [] : saidOf(book, one, worked);
        if (stands.length > 0) standing += 1;
        const asItStands = await typed(page, {});
        if (asItStands.results.join('\n') !== stands.join('\n')) found.push(`${one.id} as it stands`);

        const wanted = saidOf(book, one, workOut(one.id, one.example.given));
        const commas = await typed(page, only(one, withCommas(one)));
        if (commas.results.join('\n') !== wanted.join('\n')) found.push(`${one.id} with commas: ${commas.text}`);

        for (const [name, input] of Object.entries(one.inputs)) {
          if (input.kind === 'words') continue;
          const said = await typed(page, only(one, { ...one.example.given, [name]: ofAnotherKind(input) }));
          const refused = said.results.length === 0 && said.doubts.length === 1 && said.wrong.join() === name;
          if (!refused) found.push(`${one.id}, ${name} of another kind: ${said.text}`);
        }

        const empty = await typed(page, only(one, {}));
        const asks = Object.values(one.inputs).some((input) => input.optional !== true);
        if (empty.results.length > 0 || (asks && !empty.text.startsWith('Still needed: ')))
          found.push(`${one.id} empty: ${empty.text}`);
      }
      await page.context().close();
      expect(found).toEqual([]);
      expect(faults).toEqual([]);
      expect(standing).toBeGreaterThan(5);
    });

    it('take a bare number in the unit that stands beside its field, inches where the machine is measured in them', async () => {
      const inches = book?.records.machine.units === 'imperial';
      const { page } = await openPage(browser, folder, 'calculations/wrench-setting.html', {
        width: 360,
        scheme: 'light',
      });
      const beside = await page.locator('label[for="wrench-setting-torque"] .about').innerText();
      expect(beside).toBe(inches ? 'lbf·ft' : 'N·m');
      const said = await typed(page, { torque: '25', length: '14', extension: '2' });
      expect(said.results[0]).toContain(inches ? '21.9\u00a0lbf·ft' : '21.9\u00a0N·m');
      await page.goto(addressOf(folder, 'calculations/torque-slip.html'));
      const nothing = await typed(page, { torque: '22 N·m', neighbours: '22 N·m; 24 N·m' });
      expect(nothing.text).toBe('Nothing to say with these values.');
      await page.context().close();
    });

    it('stay within a leaf, every sheet of them', async () => {
      const sheets = pages.filter((file) => file.startsWith('sheets/'));
      // What is left of A4 between its margins.
      const { page } = await openPage(browser, folder, 'index.html', { width: 658, scheme: 'light', print: true });
      const broad: string[] = [];
      for (const file of sheets) {
        await page.goto(addressOf(folder, file));
        await page.evaluate('document.fonts.ready.then(() => undefined)');
        if (await page.evaluate('document.documentElement.scrollWidth > innerWidth')) broad.push(file);
      }
      await page.goto(addressOf(folder, 'sheets/inspection-engine.html'));
      const parted = await page.evaluate(partedFigures);
      await page.context().close();
      expect(sheets.length).toBeGreaterThan(20);
      expect(broad).toEqual([]);
      expect(parted).toEqual([]);
    });
  },
);
