// Records of somebody who means harm, in a real browser: on every page they are words; nothing runs, nothing is fetched, nothing leaves the folder.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readMachine } from '../../src/command/read-machine.ts';
import { machineFile, record } from '../evenings/evening.ts';
import { wagtailBook } from '../evenings/wagtail-book.ts';
import { binderSite } from '../site/binder-site.ts';
import { writeSite } from '../site/site-folder.ts';
import { hasBrowser, openBrowser } from './chromium.ts';
import { addressOf, openPage } from './look.ts';

/** What each would do if it were anything but words. */
const hostile = {
  script: '<script>window.harmed = "script"</script>',
  end: '</script></title></textarea><script>window.harmed = "end"</script>',
  picture: '<img src=x onerror="window.harmed = 1">',
  drawing: '"><svg onload="window.harmed = 2"><use href="https://harm.invalid/a.svg#a"/></svg>',
  frame: "'><iframe src=https://harm.invalid/frame></iframe>",
  style: '<style>@import url(https://harm.invalid/a.css); body { display: none }</style>',
  base: '<base href="https://harm.invalid/"><meta http-equiv=refresh content="0;url=https://harm.invalid/">',
  template: '{{ 1111 * 1111 }}{% include "/etc/hostname" %}{{ range.constructor("return 1111 * 1111")() }}',
  markup: '<%= 1111 * 1111 %> ${1111 * 1111} #{1111 * 1111}',
  turned: 'torque \u202e 21 N·m \u202c and \u2066 on',
  entity: '&lt;script&gt;window.harmed = 3&lt;/script&gt;&#60;b&#62;',
} as const;

/** In stories, where Markdown is read. */
const story = `
[a link](javascript:window.harmed=4) and [another](JaVaScRiPt&colon;window.harmed=5) and <javascript:window.harmed=6>

[data](data:text/html,<script>window.harmed=7</script>) [vb](vbscript:x) [file](file:///etc/hostname)

![remote](https://harm.invalid/picture.png) ![up](../../../../etc/hostname.png) ![share](//harm.invalid/x.png)

<script src="https://harm.invalid/a.js"></script>

<details open ontoggle="window.harmed = 8"><summary>x</summary></details>

[reference]: https://harm.invalid/reference

    <script>window.harmed = 9</script>

\`\`\`html
<script>window.harmed = 10</script>
\`\`\`

${Object.values(hostile).join('\n\n')}
`;

const said = (text: string): string => JSON.stringify(text);
const all = Object.values(hostile).join(' ');

const jobs: Readonly<Record<string, string>> = {
  '2026-05-01-words': `title: ${said(hostile.script)}
kind: strip
hands: [${said(hostile.picture)}]
work:
  - {removed: ${said(hostile.drawing)}, bag: ${said(hostile.frame)}, where: ${said(hostile.style)}, note: ${said(all)}}
  - {sent out: ${said(hostile.end)}, to: ${said(hostile.base)}}
parts:
  - {part: ${said(hostile.end)}, number: ${said(hostile.picture)}, from: ${said(hostile.template)}, size: ${said(hostile.markup)}, state: wanted, bring: ${said(hostile.entity)}, note: ${said(all)}}
findings: [{id: harm, saw: ${said(all)}, weight: note, became: open}]
readings: [{item: points-gap, left: 0.35 mm, note: ${said(all)}}]
money: [{paid: 1.00 GBP, for: ${said(hostile.script)}, group: ${said(hostile.base)}}]
state left: [${said(all)}]
next: ${said(hostile.template)}`,
  '2026-06-01-planned': `title: ${said(hostile.template)}
state: planned
procedures: [wheel-rear-out]
work: [{removed: ${said(hostile.picture)}}]`,
};

function machineOf(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'splitpin-hostile-'));
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  return folder;
}

const clean = {
  'machine.yaml': machineFile({ name: said(`Wagtail ${hostile.end}`), make: said(hostile.style) }),
  'maker/book.yaml': wagtailBook().replace('Cylinder head nuts', `'${hostile.frame.replaceAll("'", '')}'`),
};

describe.skipIf(!hasBrowser)('hostile records', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => browser.close());

  it('are words on every page, in the search and on the telephone: nothing runs, nothing is asked for', async () => {
    const files = Object.fromEntries(
      Object.entries(jobs).map(([id, lines]) => [
        `jobs/${id}.md`,
        record(id, lines) + (id.endsWith('words') ? story : ''),
      ]),
    );
    const machine = machineOf({ ...clean, ...files, 'story.md': story });
    let folder = '';
    try {
      const wrong = readMachine(machine, '2026-05-20', {}).problems.filter(({ severity }) => severity === 'problem');
      expect(wrong.map(({ at, message }) => `${at.file}: ${message}`)).toEqual([]);
      const site = await binderSite(machine, '2026-05-20');
      folder = writeSite(site.files);
      const { page, faults } = await openPage(browser, folder, 'index.html', { width: 1280, scheme: 'light' });
      const dialogs: string[] = [];
      page.on('dialog', (dialog) => {
        dialogs.push(dialog.message());
        void dialog.dismiss();
      });
      let seen = '';
      const html = site.files.map(({ file }) => file).filter((file) => file.endsWith('.html'));
      expect(html.some((file) => file.startsWith('phone/'))).toBe(true);
      for (const file of html) {
        await page.goto(addressOf(folder, file));
        expect(await page.evaluate('window.harmed'), file).toBeUndefined();
        const odd = await page.evaluate<readonly string[]>(
          `[...document.querySelectorAll('iframe, object, embed, base, meta[http-equiv=refresh], [onload], [onerror], [ontoggle], a[href]')]
            .filter((one) => one.tagName !== 'A' || !one.href.startsWith(${JSON.stringify(addressOf(folder, ''))}))
            .map((one) => one.outerHTML.slice(0, 120))`,
        );
        expect(odd, file).toEqual([]);
        if (file.startsWith('jobs/') || file === 'index.html' || file === 'parts.html')
          seen += await page.innerText('body');
      }
      for (const [name, text] of Object.entries(hostile)) {
        const shown = text.replaceAll(
          /[\u202a-\u202e\u2066-\u2069]/gu,
          (sign) => `U+${sign.charCodeAt(0).toString(16).toUpperCase()}`,
        );
        expect(seen.includes(shown), name).toBe(true);
      }
      // Nothing turns the direction of what is read, in any file.
      const turning = site.files.filter(
        ({ content }) => typeof content === 'string' && /[\u202a-\u202e\u2066-\u2069]/u.test(content),
      );
      expect(turning.map(({ file }) => file)).toEqual([]);
      expect(seen).toMatch(/a link[^\n]* and [\s\S]*another/u);
      expect(seen).not.toContain('1234321');
      await page.goto(addressOf(folder, 'search.html'));
      for (const words of ['window.harmed', '<script>', 'harm invalid', 'onerror']) {
        await page.getByRole('searchbox').fill(words);
        expect(await page.locator('.found li').count(), words).toBeGreaterThan(0);
      }
      expect(await page.evaluate('window.harmed')).toBeUndefined();
      expect(dialogs).toEqual([]);
      // Every request and every complaint of the browser since the first page.
      expect(faults).toEqual([]);
      await page.context().close();
    } finally {
      rmSync(machine, { recursive: true, force: true });
      if (folder !== '') rmSync(folder, { recursive: true, force: true });
    }
  });
});

const bell = '\u0007';
const refused: readonly (readonly [string, string, string])[] = [
  ['a path that climbs', 'photos: [{file: ../../etc/hostname.png, caption: x, private: no}]', 'path-climbs'],
  ['a path from the root', 'photos: [{file: /etc/hostname.png, caption: x, private: no}]', 'path-climbs'],
  ['an address as a photo', 'photos: [{file: "https://harm.invalid/a.png", caption: x, private: no}]', 'path-climbs'],
  ['a control character', `title: "a${bell}b"`, 'yaml-broken'],
];

describe('what is refused', () => {
  it.each(refused)('%s is a problem at its line', (_name, line, code) => {
    const id = '2026-05-01-words';
    const machine = machineOf({ ...clean, [`jobs/${id}.md`]: record(id, line) });
    try {
      const { problems } = readMachine(machine, '2026-05-20', {});
      const found = problems.filter(({ severity, at }) => severity === 'problem' && at.file === `jobs/${id}.md`);
      expect(found.map((one) => one.code).join()).toBe(code);
    } finally {
      rmSync(machine, { recursive: true, force: true });
    }
  });
});
