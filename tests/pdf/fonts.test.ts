// The shipped fonts: renamed as their licences ask, with the characters that records need, and telling look-alikes apart.
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { openFont, shape, widthOf } from '../../src/pdf/faces.ts';

const folder = fileURLToPath(new URL('../../src/pdf/fonts/', import.meta.url));
const faces = ['regular', 'strong', 'em'] as const;

describe('shipped fonts', () => {
  it('carry our name and keep the notices of their makers', () => {
    for (const face of [...faces, 'signs'] as const) {
      const font = openFont(face);
      expect(font.postscriptName).toMatch(/^Splitpin(Sans|Signs)-/);
    }
    expect(readFileSync(folder + 'LICENCE-OFL.txt', 'utf8')).toContain('Reserved Font Name');
    expect(readFileSync(folder + 'LICENCE-DejaVu.txt', 'utf8')).toContain('Bitstream Vera Fonts Copyright');
    for (const file of ['sans-regular', 'sans-semibold', 'sans-italic', 'signs']) {
      expect(existsSync(folder + 'splitpin-' + file + '.ttf')).toBe(true);
      expect(readFileSync(folder + 'splitpin-' + file + '.woff2').toString('latin1', 0, 4)).toBe('wOF2');
    }
  });

  it('have every character that a workshop writes', () => {
    const needed = 'ABCXYZabcxyz0123456789.,:;!?()[]/+-–−×±≤≥≈≠°µΩ½¼¾⅛²³·…€£$“”‘’é ö ü ß ł Ł ő č Ж я α ∅ ⌀ → ⚠ ✓';
    for (const face of faces) {
      expect(shape(needed.replaceAll(' ', '\u00a0'), face).missing).toEqual([]);
    }
  });

  it('take signs from the second font and keep text in the first', () => {
    expect(shape('a⌀b', 'regular').runs.map((run) => run.font)).toEqual(['regular', 'signs', 'regular']);
    expect(shape('M8×1.25', 'strong').runs.map((run) => run.font)).toEqual(['strong']);
  });

  it('have figures of one width, so that columns of numbers stand', () => {
    for (const face of faces) {
      const widths = Array.from('0123456789').map((digit) => widthOf(digit, face));
      expect(new Set(widths).size).toBe(1);
    }
  });

  it('measure a text as the sum of its words and spaces', () => {
    const parts = widthOf('Cylinder', 'regular') + widthOf(' ', 'regular') + widthOf('head', 'regular');
    expect(widthOf('Cylinder head', 'regular')).toBeCloseTo(parts, 9);
  });

  it('name what no font has', () => {
    const shaped = shape('日x', 'regular');
    expect(shaped.missing).toEqual(['日']);
    expect(shaped.em).toBeCloseTo(widthOf('U+65E5x', 'regular'), 6);
  });
});
