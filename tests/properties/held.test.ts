// Hold points of the program's own content, whatever the records: later work that touches nothing un-proves nothing, undoing proves
// nothing, and no result hangs on the order of files. Counted lots that went back piece by piece are not off any more.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binderData, build, dueCalendar, readContent, type Binder } from '../../src/build.ts';
import { readContentFolder } from '../../src/disk.ts';
import { day } from '../views/binder.ts';
import { machineFile, makerFile, record } from '../views/small-folder.ts';

const content = readContent(readContentFolder());
const allChecks = content.value.holdPoints.flatMap((point) => point.checks);
const maker = makerFile(`fasteners:
  - {id: rear-spindle-nut, name: Rear spindle nut, of: rear wheel, thread: M14x1.5, count: 1, disturbs: [chain]}
settings:
  - {id: points-gap, name: Points gap, value: 0.35 mm, disturbs: [ignition-timing]}`);
type Files = Readonly<Record<string, string>>;

function made(given: Files, turned = false): Binder {
  const named = Object.entries({ 'machine.yaml': machineFile, 'maker/book.yaml': maker, ...given });
  const files = named.map(([file, text]) => ({ file, text }));
  const { value } = build({
    files: turned ? files.toReversed() : files,
    assets: [],
    shared: [],
    content,
    before: [],
    today: day('2026-07-01'),
  });
  if (value === undefined) throw new Error('no machine could be read');
  return value;
}
const provedOf = ({ book }: Binder): ReadonlySet<string> =>
  new Set(book.holds.flatMap((hold) => hold.checks.filter((one) => one.state === 'proved').map((one) => one.check.id)));
const clearOf = ({ book }: Binder): readonly string[] =>
  book.holds.filter((hold) => hold.clear).map((hold) => hold.point.id);

/** Everything ticked in one record, or as much as is drawn. */
const ticks = fc.oneof(fc.constant(allChecks.map(({ id }) => id)), fc.subarray(allChecks.map(({ id }) => id)));
const ticked = (ids: readonly string[]): Files => ({
  'jobs/2026-06-01-ticked.md': record(
    `title: Ticked\ndate: 2026-06-01\nkind: setting up\nstate: done\nchecks: [${ids.join(', ')}]`,
  ),
});
const many = (records: readonly string[], month = '06'): Files =>
  Object.fromEntries(
    records.map((lines, index) => {
      const date = `2026-${month}-${String(10 + (index % 15))}`;
      return [
        `jobs/${date}-r${String(index)}.md`,
        record(`title: R${String(index)}\ndate: ${date}\nstate: done\n${lines}`),
      ];
    }),
  );

// What is left off is no longer unrelated: a check asks that nothing is.
const beside = fc.constantFrom(
  'kind: paperwork\nmoney: [{paid: 4.00 GBP, for: stamps}]',
  'kind: cleaning\nwork: [{removed: tank badge}, {refitted: tank badge}]',
  'kind: repair\nwork: [{opened: tool roll}, {closed: tool roll}]',
  'kind: measuring\nreadings: [{item: horn note, found: 430}]',
  'kind: repair\nfindings: [{id: badge-dull, saw: badge dull}]',
);
const undoing = fc.oneof(
  fc
    .constantFrom(...new Set(allChecks.flatMap((check) => check.undoneBy).filter((word) => !word.includes('-'))))
    .map((thing) => `kind: strip\nwork: [{removed: ${thing}}]`),
  fc.constantFrom(...content.value.procedures.keys()).map((id) => `kind: strip\nprocedures: [${id}]`),
  fc.constantFrom(
    'kind: lay-up',
    'kind: strip\nwork: [{loosened: rear-spindle-nut}]',
    'kind: setting up\nreadings: [{item: points-gap, found: 0.5 mm, left: 0.35 mm}]',
  ),
);

describe('whatever the records', () => {
  it('work that touches no check un-proves none', () => {
    fc.assert(
      fc.property(ticks, fc.array(beside, { maxLength: 8 }), (ids, records) => {
        const before = provedOf(made(ticked(ids)));
        const after = provedOf(made({ ...ticked(ids), ...many(records) }));
        expect([...before].filter((id) => !after.has(id))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
  it('work that undoes clears no hold point and proves no check', () => {
    let undone = 0;
    fc.assert(
      fc.property(ticks, fc.array(undoing, { minLength: 1, maxLength: 6 }), (ids, records) => {
        const [before, after] = [made(ticked(ids)), made({ ...ticked(ids), ...many(records) })];
        const proved = provedOf(before);
        expect([...provedOf(after)].filter((id) => !proved.has(id))).toEqual([]);
        expect(clearOf(after).filter((id) => !clearOf(before).includes(id))).toEqual([]);
        undone += proved.size - provedOf(after).size;
      }),
      { numRuns: 40 },
    );
    // Else nothing was undone at all, and the property said nothing.
    expect(undone).toBeGreaterThan(20);
  });
  it('files in another order give the same data and the same calendar', () => {
    fc.assert(
      fc.property(ticks, fc.array(fc.oneof(beside, undoing), { maxLength: 10 }), (ids, records) => {
        const files = { ...ticked(ids), ...many(records), ...many(records.toReversed(), '05') };
        const [one, other] = [made(files), made(files, true)];
        expect(JSON.stringify(binderData(other.book))).toBe(JSON.stringify(binderData(one.book)));
        expect(dueCalendar(other.book)).toBe(dueCalendar(one.book));
      }),
      { numRuns: 15 },
    );
  });
  it('a counted lot that went back piece by piece is not off; one piece short, one is', () => {
    const pieces = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(pieces, fc.boolean(), (list, short) => {
        const count = list.reduce((sum, one) => sum + one, 0) + (short ? 1 : 0);
        const off = `kind: strip\nwork: [{removed: cover screws, count: ${String(count)}, bag: 3}]`;
        const on = list.map(
          (one) => `kind: assembly\nwork: [{refitted: cover screws, count: ${String(one)}, from bag: 3}]`,
        );
        const { off: left } = made({ ...many([off], '05'), ...many(on) }).book;
        expect(left.open.map((line) => line.remaining ?? line.entry.count)).toEqual(short ? [1] : []);
        expect(left.bags.every((bag) => bag.emptied)).toBe(!short);
      }),
      { numRuns: 40 },
    );
  });
});
