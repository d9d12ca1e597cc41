// CSV as RFC 4180 has it, and no cell that a spreadsheet would compute; manifests and paths as they are written and read.
import { expect, test } from 'vitest';
import fc from 'fast-check';
import { parse } from 'csv-parse/sync';
import { csvText } from '../../src/handover/csv-table.ts';
import { manifestText, readManifest } from '../../src/handover/package-manifest.ts';
import { patternOf } from '../../src/handover/private-value.ts';

test.each(['=1+1', '+44', '-3 °C', '@SUM(A1)', '\t=1', '\r=1', ' =1', "=cmd|' /C calc'!A0"])(
  '%j is made harmless',
  (text) => {
    expect(csvText(['a'], [[text]])).toMatch(/^a\r\n"?'/u);
  },
);

test('any table comes back as it was, but for the mark before a formula', () => {
  const cells = fc.array(fc.string(), { minLength: 2, maxLength: 2 });
  fc.assert(
    fc.property(fc.array(cells, { minLength: 1 }), (rows) => {
      const read: unknown = parse(csvText(['one', 'two'], rows), {
        relaxColumnCount: false,
        skipEmptyLines: false,
        recordDelimiter: '\r\n',
      });
      const wanted = [['one', 'two'], ...rows].map((row) =>
        row.map((cell) => (/^\s*[=+\-@\t\r|%]/u.test(cell) ? `'${cell}` : cell)),
      );
      expect(read).toEqual(wanted);
    }),
  );
});

test('any path goes through a manifest and back', () => {
  const path = fc
    .string({ minLength: 1 })
    .filter((text) => text.trim() === text && !/^\*|^\.\//u.test(text) && !/[\u0085\u2028\u2029]/u.test(text));
  fc.assert(
    fc.property(path, (text) => {
      const line = { hash: 'a'.repeat(64), path: `data/${text}` };
      expect(readManifest(manifestText([line]))).toEqual({ lines: [line], wrong: [] });
    }),
  );
});

test.each([
  ['Tom', 'met Tom there', true],
  ['Tom', 'TOM', true],
  ['Tom', 'the tom tom drum', false],
  ['Tom', 'Tomorrow', false],
  ['K412', 'key k-412', true],
  ['K412', 'XK412', false],
  ['01234 567890', '(01234) 56-78 90', true],
  ['01234 567890', '9012345678901', false],
  ['Ольга', 'от ОЛЬГА', true],
  ['山田', '山田さん', true],
  ['José Ñ', 'jose\u0301 n\u0303'.normalize('NFC'), true],
  ['...', 'anything', false],
])('%s in %j: %s', (value, text, found) => {
  expect(patternOf(value)?.test(text) === true).toBe(found);
});
