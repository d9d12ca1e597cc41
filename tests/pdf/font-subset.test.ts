// A subset of a font: outlines are those of the font, glyphs made of others find them, and the file says a true sum of itself.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { fontPath, openFont } from '../../src/pdf/faces.ts';
import { readFontTables, subsetFont, type FontTables } from '../../src/pdf/font-subset.ts';

const folder = mkdtempSync(join(tmpdir(), 'splitpin-subset-'));
afterAll(() => rmSync(folder, { recursive: true }));

function subsetOf(text: string): {
  readonly whole: FontTables;
  readonly part: FontTables;
  readonly glyphs: readonly number[];
  readonly file: Buffer;
} {
  const whole = readFontTables(fontPath('regular'));
  const glyphs = [
    0,
    ...openFont('regular')
      .layout(text)
      .glyphs.map(({ id }) => id),
  ];
  const include = (glyph: number): number => {
    if (!glyphs.includes(glyph)) glyphs.push(glyph);
    return glyphs.indexOf(glyph);
  };
  const file = subsetFont(whole, glyphs, include);
  const path = join(folder, 'part.ttf');
  writeFileSync(path, file);
  return { whole, part: readFontTables(path), glyphs, file };
}

function outline({ tables, outlines }: FontTables, glyph: number): Buffer {
  return (tables.get('glyf') ?? Buffer.alloc(0)).subarray(outlines[glyph], outlines[glyph + 1]);
}

function metric({ tables }: FontTables, glyph: number): string {
  return (tables.get('hmtx') ?? Buffer.alloc(0)).subarray(4 * glyph, 4 * glyph + 4).toString('hex');
}

describe('a subset of a font', () => {
  it('holds the outlines and the widths of its glyphs, in the order asked', () => {
    const { whole, part, glyphs } = subsetOf('gM8 N');
    expect(part.outlines).toHaveLength(glyphs.length + 1);
    expect(part.metrics).toBe(glyphs.length);
    for (const [place, glyph] of glyphs.entries()) {
      const held = outline(part, place);
      const once = outline(whole, glyph);
      expect(held.subarray(0, once.length).equals(once)).toBe(true);
      expect(held.subarray(once.length).every((byte) => byte === 0)).toBe(true);
      expect(metric(part, place)).toBe(metric(whole, glyph));
    }
  });

  it('takes along what a glyph is made of, and names it by its new number', () => {
    const { whole, part, glyphs } = subsetOf('é');
    const made = glyphs[1] ?? 0;
    expect(outline(whole, made).readInt16BE(0)).toBeLessThan(0);
    expect(glyphs.length).toBeGreaterThan(2);
    const first = outline(part, 1).readUInt16BE(12);
    expect(glyphs[first]).toBe(outline(whole, made).readUInt16BE(12));
    expect(first).not.toBe(outline(whole, made).readUInt16BE(12));
  });

  it('sums up to what the standard says', () => {
    const { file } = subsetOf('éÅß 12');
    let sum = 0;
    for (let at = 0; at < file.length; at += 4) sum = (sum + file.readUInt32BE(at)) >>> 0;
    expect(file.length % 4).toBe(0);
    expect(sum).toBe(0xb1b0afba);
  });
});
