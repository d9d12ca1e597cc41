// Input made to wear a reader out. Each of these once took minutes or hours; a reader that does so again never comes to the end of its test.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { prose } from '../../src/compose/prose.ts';
import { cleaned } from '../../src/layout/words.ts';
import { photoNames } from '../../src/photos/photo-names.ts';
import { formatReport } from '../../src/problem/report.ts';
import { readDaySpan } from '../../src/quantity/day-arithmetic.ts';
import { readMoney } from '../../src/quantity/money-arithmetic.ts';
import { readNumber } from '../../src/quantity/read-number.ts';
import { readAnyQuantity, readQuantity } from '../../src/quantity/read-quantity.ts';
import { readRange } from '../../src/quantity/read-range.ts';
import { readRecords } from '../../src/records/read.ts';
import { locate } from '../../src/source/locate.ts';
import { job, machineFiles, manualAssets } from './folder.ts';

const many = 500_000;

describe('half a megabyte in one line', () => {
  test.each(['a', 'a*b*'])('of spaces, after %s', (start) => {
    const [paragraph] = prose(`${start}${' '.repeat(many)}b`);
    expect(JSON.stringify(paragraph)).toHaveLength(JSON.stringify(prose(`${start} b`)[0]).length + many - 1);
  });

  test('of spaces, where a sheet cuts text into words', () => {
    expect(cleaned(`ő${' '.repeat(many)}b`)).toHaveLength(many + 2);
    expect(cleaned(`ő${' '.repeat(many)}\n${' '.repeat(many)}b`)).toBe('ő b');
  });

  test.each(['*', '_', '`a', '[', '![', '<', '&amp;', '~~a', '[a](', '- ', '> ', '|a', '\\', '# ', '0', '.'])(
    'of %s, as a text',
    (sign) => {
      expect(prose(`x${sign.repeat(20_000)}`).length).toBeGreaterThan(0);
    },
  );

  const readers = {
    number: readNumber,
    value: readAnyQuantity,
    torque: (text: string) => readQuantity(text, 'torque'),
    range: (text: string) => readRange(text, 'length'),
    money: readMoney,
    day: readDaySpan,
  };
  test.each(Object.entries(readers))('where a %s is expected', (_what, read) => {
    for (const piece of ['1', ' 1', '1 ', '1.', '1,', '+1', '-', '1-', '½', 'to ', 'not ', 'max ', '1:', ' - 1', 'a']) {
      expect([piece, read(`1${piece.repeat(many / piece.length)} mm`).ok]).toEqual([piece, false]);
    }
  });

  test('as a value of a record is told with its place', () => {
    const file = job('a', [`next: ${'x'.repeat(2001)}`, `time: ${'0'.repeat(many)} h`]);
    const { problems } = readRecords([...machineFiles, file], manualAssets);
    expect(problems.map(({ code, at }) => [code, locate(file.text, at).line])).toEqual([
      ['value-too-long', 6],
      ['value-too-long', 7],
    ]);
    expect(readRecords([...machineFiles, job('a', [`next: ${'x'.repeat(2000)}`])], manualAssets).problems).toEqual([]);
  });
});

describe('ten thousand', () => {
  test('mistakes in one record are all told, each with its own line', () => {
    const file = job(
      'a',
      Array.from({ length: 10_000 }, (_, index) => `x${String(index)}: y`),
    );
    const { problems } = readRecords([...machineFiles, file], manualAssets);
    const report = formatReport(problems, () => file.text, locate, { colour: false });
    const places = report.split('\n').filter((line) => line.startsWith('jobs/a.md:'));
    expect(places).toHaveLength(10_000);
    expect(places[9_999]).toContain('jobs/a.md:10005:1 key-unknown: “x9999”');
  });

  test('readings of one item are read', () => {
    const lines = Array.from({ length: 10_000 }, (_, index) => `  - {item: bore, found: 50.${String(index)} mm}`);
    const { value, problems } = readRecords([...machineFiles, job('a', ['readings:', ...lines])], manualAssets);
    expect(problems).toEqual([]);
    expect(value?.jobs[0]?.readings).toHaveLength(10_000);
  });
});

test('a span of three dates is refused, not read without the third', () => {
  expect(readDaySpan('2024-05-04 to 2024-05-05 to 2024-05-06').ok).toBe(false);
  expect(readDaySpan('2024-05-04 to 2024-05-05').ok).toBe(true);
});

test('no two pictures get one name, whatever they are called', () => {
  const name = fc
    .array(fc.constantFrom('a', '.', '.jpg', '.jpeg', '.png', '.JPG', 'documents/', ' '), {
      minLength: 1,
      maxLength: 5,
    })
    .map((pieces) => pieces.join(''));
  const file = fc.tuple(fc.constantFrom('photos/', 'documents/'), name).map(([folder, rest]) => folder + rest);
  fc.assert(
    fc.property(file, file, (one, other) => {
      if (one === other) return;
      const names = [photoNames(one), photoNames(other)].flatMap(({ large, small }) => [large, small]);
      expect(new Set(names).size).toBe(4);
    }),
    {
      numRuns: 3000,
      examples: [
        ['photos/a', 'photos/a.jpg'],
        ['photos/a.png', 'photos/a.png.jpg'],
        ['photos/documents/a.jpg', 'documents/a.jpg'],
      ],
    },
  );
});
