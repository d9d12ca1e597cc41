// The PDF as reading programs see it: fonts, tags, order of text, outline, labels, links, and the same bytes every time.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createHash } from 'node:crypto';
import { inflateSync } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shape } from '../../src/pdf/faces.ts';
import type { Block } from '../../src/sheet/sheet.ts';
import { longHistory } from './long-history.ts';
import { everyBlock, sheetOf } from './sample-sheets.ts';
import { everyNode, makePdf, openPdf, pageText, structureOf, type Made } from './read-pdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'splitpin-pdf-'));
const photo = join(folder, 'head.jpg');
let whole: Made;
const sheet = sheetOf(everyBlock, { foot: 'sign off', squareCode: 'pipit/SM', continues: 'AS-1' });
const shelf = (file: string): { path: string; width: number; height: number } | undefined =>
  file === 'photos/head.jpg' ? { path: photo, width: 80, height: 60 } : undefined;

beforeAll(async () => {
  await sharp({ create: { width: 80, height: 60, channels: 3, background: '#777' } })
    .jpeg()
    .toFile(photo);
  whole = await makePdf(sheet, { photo: shelf });
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Plain objects of the file, and its streams opened. */
function opened(bytes: Buffer): string {
  const text = bytes.toString('latin1');
  const streams = [...text.matchAll(/stream\n([\s\S]*?)\nendstream/g)].map((found) => {
    try {
      return inflateSync(Buffer.from(found[1] ?? '', 'latin1')).toString('latin1');
    } catch {
      return '';
    }
  });
  return text.replace(/stream\n[\s\S]*?\nendstream/g, '') + '\n' + streams.join('\n');
}

describe('a sheet as PDF', () => {
  it('is a sound file', () => {
    expect(whole.bytes.toString('latin1', 0, 8)).toBe('%PDF-1.7');
    const file = join(folder, 'whole.pdf');
    writeFileSync(file, whole.bytes);
    const qpdf = ['/usr/bin/qpdf', '/usr/local/bin/qpdf'].find((path) => existsSync(path));
    if (qpdf === undefined) return;
    expect(execFileSync(qpdf, ['--check', file], { encoding: 'utf8' })).toContain(
      'No syntax or stream encoding errors',
    );
  });

  it('says its language and title, shows the title, and is marked as tagged', async () => {
    const document = await openPdf(whole.bytes);
    expect(document.numPages).toBe(whole.pages);
    expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
    const { info } = await document.getMetadata();
    expect(info).toMatchObject({ Language: 'en-GB', Title: 'Strip the top end · Larkmoor Pipit 175' });
    expect(JSON.stringify(info)).toContain('D:20261120000000Z');
    expect(opened(whole.bytes)).toContain('/DisplayDocTitle true');
  });

  it('embeds every font it uses, as a subset under our own name', () => {
    const objects = opened(whole.bytes);
    const descriptors = objects.match(/\/Type \/FontDescriptor[\s\S]*?>>/g) ?? [];
    expect(descriptors.length).toBeGreaterThanOrEqual(3);
    for (const descriptor of descriptors) {
      expect(descriptor).toMatch(/\/FontFile2 \d+ 0 R/);
      expect(descriptor).toMatch(/\/FontName \/[A-Z]{6}\+Splitpin(Sans|Signs)-/);
    }
    expect(objects).not.toContain('Helvetica');
    expect(new Set(descriptors).size).toBe(descriptors.length);
  });

  it('has the text in reading order, each word parted from the next', async () => {
    const document = await openPdf(whole.bytes);
    const pages = await Promise.all(Array.from({ length: whole.pages }, (_, index) => pageText(document, index + 1)));
    const text = pages.join(' ').replace(/[\u00a0 ]+/g, ' ');
    const wanted = [
      'Strip the top end',
      'WARNING Petrol vapour sinks',
      'CAUTION Start',
      'NOTE Set',
      'Exhaust pipes, both',
      'Slacken crosswise in three passes',
      'Cylinder head M6',
      'Bore, right, top',
      '50.00–50.02',
      'Gearbox oil filled',
      'Cylinder head nuts M8 × 1.25 21.6 2.2 15.9',
      'The head came off without a fight. Nuts slackened in three passes',
      'front left',
      'main jet 90',
      'Run log',
      'state left in',
    ];
    let at = 0;
    for (const part of wanted) {
      const found = text.indexOf(part, at);
      expect(found, part).toBeGreaterThanOrEqual(at);
      at = found;
    }
  });

  it('knows how many pages there are, on every page', async () => {
    const document = await openPdf(whole.bytes);
    for (let number = 1; number <= whole.pages; number += 1) {
      // The reading program used here drops the space before a drawing within a drawing.
      const head = new RegExp('page ' + String(number) + ' of ?' + String(whole.pages) + ' ');
      expect(await pageText(document, number)).toMatch(head);
    }
    expect(await document.getPageLabels()).toEqual(
      Array.from({ length: whole.pages }, (_, index) => 'SM-' + String(index + 1)),
    );
  });

  it('has an outline of its headings, each leading somewhere', async () => {
    const document = await openPdf(whole.bytes);
    const outline = await document.getOutline();
    expect(outline.map((entry) => entry.title)).toEqual(['Strip the top end']);
    expect(outline[0]?.items.map((entry: { title: string }) => entry.title)).toEqual([
      'Strip',
      'Measure',
      'Before the first start',
      'Torque',
      'Tags',
    ]);
    for (const entry of outline[0]?.items ?? [])
      expect(await document.getPageIndex(entry.dest?.[0])).toBeGreaterThanOrEqual(0);
  });

  it('is tagged: sections, headings without a gap, tables with heads, lists, figures with words', async () => {
    const document = await openPdf(whole.bytes);
    const trees = await Promise.all(
      Array.from({ length: whole.pages }, (_, index) => structureOf(document, index + 1)),
    );
    const nodes = trees.flatMap(everyNode);
    const roles = new Set(nodes.map((node) => node.role));
    for (const role of [
      'Document',
      'Sect',
      'H1',
      'H2',
      'P',
      'L',
      'LI',
      'Lbl',
      'LBody',
      'Table',
      'TR',
      'TH',
      'TD',
      'Figure',
      'Link',
      'BlockQuote',
    ])
      expect(roles).toContain(role);
    const levels = nodes.filter((node) => /^H\d$/.test(node.role)).map((node) => Number(node.role.slice(1)));
    for (const [index, level] of levels.entries()) expect(level).toBeLessThanOrEqual((levels[index - 1] ?? 0) + 1);
    for (const figure of nodes.filter((node) => node.role === 'Figure')) expect(figure.alt ?? '').not.toBe('');
    for (const table of nodes.filter((node) => node.role === 'Table')) {
      expect(table.children.every((row) => row.role === 'TR')).toBe(true);
    }
  });

  it('marks every drawn thing as content or as furniture', () => {
    const contents = opened(whole.bytes).split('\n');
    let depth = 0;
    let drawn = 0;
    for (const line of contents) {
      if (/(BDC|BMC)$/.test(line)) depth += 1;
      if (line === 'EMC') depth -= 1;
      expect(depth).toBeLessThanOrEqual(1);
      if (line.startsWith('BT 1 0 0 -1') && depth === 0) drawn += 1;
    }
    // The number of pages is text of its own drawing, used inside furniture.
    expect(drawn).toBe(1);
    expect(depth).toBe(0);
  });

  it('has live links between its headings', async () => {
    const document = await openPdf(whole.bytes);
    const links: { readonly dest?: unknown; readonly contentsObj?: { readonly str: string } }[] = [];
    for (let number = 1; number <= whole.pages; number += 1)
      links.push(...(await (await document.getPage(number)).getAnnotations()));
    // Parted by a line end, the one link is two live places.
    expect(links).toHaveLength(2);
    const place = await document.getDestination(String(links[0]?.dest));
    expect(place?.[1]).toMatchObject({ name: 'XYZ' });
    expect(links.map((link) => link.contentsObj?.str)).toEqual(['Go to the', 'Go to readings']);
  });

  it('carries the photo that is at hand and frames the one that is not', async () => {
    expect(opened(whole.bytes).match(/\/Subtype \/Image/g)).toHaveLength(1);
    const document = await openPdf(whole.bytes);
    const pages = await Promise.all(Array.from({ length: whole.pages }, (_, index) => pageText(document, index + 1)));
    expect(pages.join(' ')).toContain('The photo is not at hand: photos/missing.jpg');
  });

  it('gives every character back, whatever byte the number of its glyph has', async () => {
    // More glyphs than one byte numbers: among them those whose bytes are parentheses, a backslash and line ends.
    const all = Array.from({ length: 700 }, (_, index) => String.fromCodePoint(0x21 + index)).filter(
      (character) => /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(character) && shape(character, 'regular').missing.length === 0,
    );
    expect(all.length).toBeGreaterThan(300);
    const words = all.map((character) => character + character);
    const made = await makePdf(
      sheetOf([{ type: 'prose', paragraphs: [{ kind: 'paragraph', text: words.join(' ') }] }]),
    );
    const document = await openPdf(made.bytes);
    const texts = await Promise.all(
      Array.from({ length: made.pages }, async (_, page) => pageText(document, page + 1)),
    );
    // The reading program gives the Greek letter for the sign of a millionth.
    const asRead = (text: string): string => text.normalize('NFC').replaceAll('\u00b5', '\u03bc');
    const found = new Set(asRead(texts.join(' ')).split(/\s+/));
    expect(words.filter((word) => !found.has(asRead(word)))).toEqual([]);
  });
  it('prints a character that no font has as its code point, and tells', async () => {
    const made = await makePdf(
      sheetOf([
        { type: 'prose', paragraphs: [{ kind: 'paragraph', text: 'Carburettor by 日 and ⚙ and Ω ≤ Łódź ключ' }] },
      ]),
    );
    expect(made.missingCharacters).toEqual(['日']);
    const text = await pageText(await openPdf(made.bytes), 1);
    expect(text).toContain('Carburettor by U+65E5 and ⚙ and Ω ≤ Łódź ключ');
  });

  it('carries attached files with their dates', async () => {
    const made = await makePdf(sheetOf([]), {
      attach: [{ name: 'job.md', description: 'the record', type: 'text/markdown', bytes: Buffer.from('# Job') }],
    });
    const attachments: Record<string, { content: Uint8Array }> = await (await openPdf(made.bytes)).getAttachments();
    expect(Buffer.from(attachments['job.md']?.content ?? []).toString()).toBe('# Job');
  });

  it('gives the same bytes twice, and beside another', async () => {
    const hash = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');
    const [again, other] = await Promise.all([makePdf(sheet, { photo: shelf }), makePdf(sheetOf(longHistory(6)))]);
    expect(hash(again.bytes)).toBe(hash(whole.bytes));
    expect(other.pages).toBeGreaterThan(5);
  });

  it('hands out its bytes while pages are still being made', async () => {
    const sizes: number[] = [];
    const made = await makePdf(sheetOf(longHistory(80)), { out: (chunk) => void sizes.push(chunk.length) });
    expect(made.pages).toBeGreaterThan(80);
    expect(sizes.length).toBeGreaterThan(3);
  });
});

describe('links in a history', () => {
  it('lead to the heading they name, byte by byte in order', async () => {
    const ids = ['b', 'Ä-record', 'a', 'Z', '2024-05-04'];
    const blocks: Block[] = ids.flatMap((id): readonly Block[] => [
      { type: 'heading', level: 2, id, text: 'Record ' + id },
      {
        type: 'prose',
        paragraphs: [
          {
            kind: 'paragraph',
            text: [
              { kind: 'link', text: 'to a', to: 'job:a' },
              ' ',
              { kind: 'link', text: 'outside', to: 'https://example.org' },
            ],
          },
        ],
      },
    ]);
    const made = await makePdf(sheetOf(blocks));
    const document = await openPdf(made.bytes);
    const links = await (await document.getPage(1)).getAnnotations();
    expect(links).toHaveLength(ids.length);
    const names = await document.getDestinations();
    expect(Object.keys(names)).toHaveLength(ids.length + 1);
    expect(made.bytes.toString('latin1')).not.toContain('/URI');
  });
});
