// Every sheet of every machine as a file: the rules of archives and of reading aids, a sound syntax, text that is read back whole.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync, inflateSync } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { colourProfile, primaries } from '../../src/pdf/colour-profile.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { binderOf } from '../views/binder.ts';
import { fileFaults } from './file-rules.ts';
import { makePdf } from './read-pdf.ts';
import { everyBlock, sheetOf } from './sample-sheets.ts';

const folder = mkdtempSync(join(tmpdir(), 'splitpin-rules-'));
const picture = join(folder, 'head.jpg');
const photo = () => ({ path: picture, width: 80, height: 60 });
beforeAll(async () => {
  await sharp({ create: { width: 80, height: 60, channels: 3, background: '#777' } })
    .jpeg()
    .toFile(picture);
});
afterAll(() => rmSync(folder, { recursive: true }));

const qpdf = ['/usr/bin/qpdf', '/usr/local/bin/qpdf'].find((path) => existsSync(path));

async function checked(sheet: Sheet): Promise<readonly string[]> {
  const made = await makePdf(sheet, { photo });
  if (qpdf === undefined) return fileFaults(made.bytes);
  const file = join(folder, sheet.id + '.pdf');
  writeFileSync(file, made.bytes);
  const said = execFileSync(qpdf, ['--check', file], { encoding: 'utf8' });
  const sound = said.includes('No syntax or stream encoding errors') && !said.includes('WARNING');
  return [...(await fileFaults(made.bytes)), ...(sound ? [] : [said])];
}

describe.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])('the files of %s', (machine) => {
  const { sheets } = binderOf(machine, '2026-11-14');
  it.each(sheets.map((sheet) => [sheet.id, sheet] as const))('%s keeps the rules', async (_, sheet) => {
    expect(await checked(sheet)).toEqual([]);
  });
});

describe('what a file may hold', () => {
  it('keeps the rules on every paper, both sides printed, with every block and a file inside', async () => {
    for (const paper of ['a4', 'letter', 'a5', 'half-letter', 'tag', 'card'] as const) {
      const sheet = sheetOf(everyBlock, { paper, sides: 'both', foot: 'sign off', squareCode: 'pipit/SM' });
      const bytes = Buffer.from('{"format": 1}', 'utf8');
      const attach = [{ name: 'binder.json', description: 'the data', type: 'application/json', bytes }];
      expect(await fileFaults((await makePdf(sheet, { photo, attach })).bytes)).toEqual([]);
    }
  });

  it('may have any title and any words in its outline', async () => {
    const title = 'Nuts & bolts <M6> “>” ]]> \u0007 日本 \u{1f527}';
    const made = await makePdf(sheetOf([{ type: 'heading', level: 2, id: 'a', text: title }], { title }));
    expect((await fileFaults(made.bytes)).filter((fault) => !fault.includes('both titles'))).toEqual([]);
    expect(made.bytes.toString('utf8')).toContain(
      'Nuts &amp; bolts &lt;M6&gt; “&gt;” ]]&gt;  日本 \u{1f527} · Larkmoor',
    );
  });

  it('is told by its faults: a file that breaks a rule is named', async () => {
    const made = await makePdf(sheetOf(everyBlock, { foot: 'sign off' }), { photo });
    const spoilt = (from: string, to: string): Buffer =>
      Buffer.from(
        withPacks(made.bytes.toString('latin1'), (text) => text.replaceAll(from, to)),
        'latin1',
      );
    expect(await fileFaults(spoilt('/Marked true', '/Marked null'))).toContain('not kept: it is marked as tagged');
    expect(await fileFaults(spoilt('/S/Figure', '/S/Figura'))).toContain('a role that is not of the standard: Figura');
    expect((await fileFaults(spoilt('/Alt <', '/Olt <'))).length).toBeGreaterThan(0);
    expect((await fileFaults(spoilt('/Tabs/S', '/Tabs/R'))).length).toBe(made.pages);
    expect((await fileFaults(spoilt('/FontFile2 ', '/FontFile9 '))).length).toBeGreaterThan(2);
    expect((await fileFaults(spoilt('<pdfaid:part>3', '<pdfaid:part>2'))).length).toBe(1);
  });
});

/** The file with its text changed, also inside what is packed; pdf-lib goes by the objects, not by where the file says they begin. */
function withPacks(file: string, change: (text: string) => string): string {
  const pack = /(\/Type\/ObjStm\b[^>]*\/Length )\d+([^>]*>>\nstream\n)([\s\S]*?)\nendstream/g;
  return change(file).replaceAll(pack, (_whole, before: string, after: string, held: string) => {
    const text = change(inflateSync(Buffer.from(held, 'latin1')).toString('latin1'));
    const again = deflateSync(Buffer.from(text, 'latin1')).toString('latin1');
    return `${before}${String(again.length)}${after}${again}\nendstream`;
  });
}

describe('the colour space', () => {
  it('is read by a program that knows colours, which finds the same colours by it', async () => {
    const file = join(folder, 'profile.icc');
    writeFileSync(file, colourProfile());
    const colours = [200, 40, 90, 0, 0, 0, 255, 255, 255, 118, 118, 118];
    const plain = sharp(Buffer.from(colours), { raw: { width: 4, height: 1, channels: 3 } });
    const carried = await plain.withIccProfile(file).png().toBuffer();
    expect((await sharp(carried).metadata()).icc?.equals(colourProfile())).toBe(true);
    const back = await sharp(carried).withIccProfile('srgb').raw().toBuffer();
    for (const [index, value] of colours.entries()) expect(Math.abs((back[index] ?? -99) - value)).toBeLessThan(3);
  });

  it('has primaries whose sum is the white of its connection space', () => {
    const white = primaries.map((row) => row.reduce((sum, part) => sum + part, 0));
    for (const [index, part] of [0.9642, 1, 0.8249].entries()) expect(white[index]).toBeCloseTo(part, 3);
  });
});
