// Edits of a record: reading back gives what was written, and every other byte is as it was.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editRecord } from '../../src/entry/edit-record.ts';
import { afterEdit, type RecordEdit } from '../../src/entry/record-edit.ts';
import { readDocument } from '../../src/source/document.ts';

const words = fc
  .string({ unit: 'binary', maxLength: 14 })
  .filter((text) => !/[\0\uE03F\uFFFD\uD800-\uDFFF]/u.test(text));
const value = fc.oneof(
  words,
  fc.constantFrom('0.35 mm', '?', 'yes', 'no', 'none', '14 thou', '1:48', '- x', "it's", '#3'),
);

const heads = [
  'title: A\ndate: 2024-05-04\n',
  'title: A # words\n# a line\nreadings:\n  - item: bore # the bore\n    found: {left top: 50.06 mm}\n  - {item: gap, found: 1 mm}\n# end\n',
  'readings: [{item: bore}, {item: gap, }]   # two\nwork:\n- {removed: head, bag: "3"}\n\nnext: a b\n',
  'title: >-\n  folded\n  words\nreadings: none\nwork:\nticks: [a,\n  b, # c\n  ]\n',
  'work:\n  - removed: head\n    note: |\n      two\n      lines\nticks:\n  - a\n  - "b"  # c\n',
];
const ends = fc.constantFrom('\n', '\r\n', '\r');
const keys = fc.constantFrom('readings', 'work', 'ticks', 'remarks', 'next', 'title', 'a key');
const edits: fc.Arbitrary<RecordEdit> = fc.oneof(
  fc.record({
    kind: fc.constant('add' as const),
    path: fc.constant([]),
    key: keys,
    item: fc.oneof(value, fc.record({ item: value, found: value })),
  }),
  fc.record({
    kind: fc.constant('set' as const),
    path: fc.constantFrom([], ['readings', 0], ['readings', 1], ['readings', 0, 'found'], ['work', 0]),
    key: fc.constantFrom('found', 'left', 'next', 'title', 'note', 'bag'),
    value,
  }),
  fc.record({
    kind: fc.constant('remove' as const),
    path: fc.constant([]),
    key: fc.constantFrom('readings', 'work', 'ticks'),
    index: fc.nat({ max: 2 }),
  }),
);

describe('edits of a record', () => {
  test('say what was asked and change nothing else', () => {
    let done = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...heads),
        ends,
        fc.boolean(),
        fc.array(edits, { minLength: 1, maxLength: 6 }),
        (head, end, mark, list) => {
          const text = `${mark ? '\uFEFF' : ''}---\n${head}---\nBody: text\n\n`.replaceAll('\n', end);
          let now = text;
          for (const edit of list) {
            const before = readDocument({ file: 'jobs/a.md', text: now }).value;
            const made = editRecord({ file: 'jobs/a.md', text: now }, [edit]);
            if (made.problems.length > 0) {
              expect(made.value).toBe(now);
              continue;
            }
            done += 1;
            expect(readDocument({ file: 'jobs/a.md', text: made.value }).value?.data).toEqual(
              afterEdit(before?.data ?? {}, edit),
            );
            expect(
              edit.kind === 'remove' ? isLess(now, made.value) : rest(now, made.value, replaced(before?.data, edit)),
            ).toBe(true);
            now = made.value;
          }
          expect(now.endsWith(`---\nBody: text\n\n`.replaceAll('\n', end))).toBe(true);
        },
      ),
      { numRuns: 400 },
    );
    expect(done).toBeGreaterThan(400);
  });
});

/** The words that an edit puts others in the place of; empty when there were none. */
function replaced(data: unknown, edit: RecordEdit): string {
  let at = data;
  for (const key of [...edit.path, edit.key]) {
    if (typeof at !== 'object' || at === null) return '';
    at = new Map<string, unknown>(Object.entries(at)).get(String(key));
  }
  return typeof at === 'string' ? at : '';
}

/** The longer text is the shorter with one stretch put in, or one value put in another's place; no remark and no line end goes with it. */
function rest(before: string, after: string, old: string): boolean {
  let head = 0;
  while (head < before.length && before[head] === after[head]) head += 1;
  let tail = 0;
  while (tail < before.length - head && tail < after.length - head && before.at(-1 - tail) === after.at(-1 - tail))
    tail += 1;
  const gone = before.slice(head, before.length - tail);
  return !/[\r\n]/u.test(gone) && count(gone) <= count(old);
}

/** The text without one stretch, in which no remark stands; where nothing is left of a list it is `[]`. */
function isLess(before: string, after: string): boolean {
  const text = after.length > before.length ? '' : after;
  let head = 0;
  while (head < text.length && before[head] === text[head]) head += 1;
  let tail = 0;
  while (tail < text.length - head && before.at(-1 - tail) === text.at(-1 - tail)) tail += 1;
  const [gone, put] = [before.slice(head, before.length - tail), text.slice(head, text.length - tail)];
  return !/(?:^|\s)#/u.test(gone) && /^ ?\[?\]?$/u.test(put);
}

/** How many signs there are that begin a remark where they stand outside a value. */
function count(text: string): number {
  return text.split('#').length - 1;
}
