// The fault tables of content: names that lead somewhere, every observation of the trade can be written, and what a machine adds or has wrong.
import { describe, expect, test } from 'vitest';
import { build, readContent } from '../../src/build.ts';
import { readContentFolder } from '../../src/disk.ts';
import { diagnose } from '../../src/book/faults/diagnosis.ts';
import { locate } from '../../src/source/locate.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { machineFile } from '../evenings/evening.ts';
import { fourBattery, fourElectronic, machineFor, named, twoBattery, twoElectronic, twoStroke } from './cards.ts';

const content = readContent(readContentFolder());
const faults = content.value.faults ?? { causes: [], tests: [], together: [] };

describe('the tables', () => {
  test('have the causes and tests of the trade, without a problem', () => {
    expect(content.problems).toEqual([]);
    expect(faults.causes.length).toBeGreaterThanOrEqual(48);
    expect(faults.tests.filter((one) => !one.notice).length).toBeGreaterThanOrEqual(36);
    const marks = (some: readonly { readonly mark?: string }[]) => new Set(some.flatMap(({ mark }) => mark ?? []));
    const causes = marks(faults.causes);
    for (const [letter, last] of [
      ['F', 12],
      ['E', 16],
      ['C', 9],
      ['K', 5],
      ['X', 2],
      ['W', 3],
    ] as const)
      for (let number = 1; number <= last; number += 1) expect(causes).toContain(`${letter}${String(number)}`);
    const tests = marks(faults.tests);
    for (let number = 1; number <= 35; number += 1) expect(tests).toContain(`T${String(number).padStart(2, '0')}`);
  });
  test('an other name never stands for two tests, nor within a test for two outcomes', () => {
    const names = faults.tests.flatMap((one) => [...new Set(one.also)]);
    const ids = new Set(faults.tests.map(({ id }) => id));
    const twice = names.filter((name, index) => names.indexOf(name) !== index && !ids.has(name));
    expect(twice).toEqual([]);
    for (const features of [twoStroke, fourBattery, fourElectronic]) {
      for (const one of diagnose(machineFor(features)).faults.tests) {
        const words = one.outcomes.flatMap((outcome) => [outcome.saw, ...outcome.also]);
        expect(
          words.filter((word, index) => words.indexOf(word) !== index),
          one.id,
        ).toEqual([]);
      }
    }
  });
  test('every cause can be seen or excluded by some outcome, and every test says how it is done', () => {
    const spoken = new Set(
      faults.tests.flatMap(({ outcomes }) => outcomes.flatMap((one) => [...one.shows, ...one.stronglyFor])),
    );
    expect(faults.causes.filter(({ id }) => !spoken.has(id)).map(({ id }) => id)).toEqual([]);
    expect(faults.tests.filter((one) => !one.notice && one.how === undefined).map(({ id }) => id)).toEqual([]);
  });
  test('nothing of points on an electronic machine, nothing of valves on a two-stroke', () => {
    const electronic = diagnose(machineFor(twoElectronic)).faults;
    expect(electronic.causes.map(({ id }) => id)).not.toContain('condenser-bad');
    expect(electronic.tests.map(({ id }) => id)).not.toContain('tappets');
    expect(diagnose(machineFor(twoBattery)).faults.tests.map(({ id }) => id)).not.toContain('cut-out-wire');
  });
});

/** Rows of the matrix of the trade as somebody would type them, on a two-stroke or a four-stroke. */
const two = [
  'engine=will-not-turn',
  'kick=very-light',
  'T04=strong',
  'T15=rises',
  'T06=none',
  'T07=none',
  'T07=jumps',
  'T08=returns',
  'spark=yellow',
  'spark=intermittent',
  'arcing=heavy',
  'T32=spark-gone',
  'T03=recovers',
  'plug=dry',
  'plug=wet',
  'plug=oily',
  'plug=white',
  'plug=black',
  'T10=fires-and-dies',
  'T10=no-fire',
  'T13=helps',
  'T13=worse',
  'idle=none',
  'throttle=bogs',
  'fades=recovers',
  'idle=hangs',
  'smoke=white-blue',
  'T25=falls',
  'smoke=first-minutes',
  'smoke=black',
  'kick=kick-back',
  'throttle=four-stroking',
  'hot-start=hard',
  'noise=rattle',
  'noise=knock',
  'wheels=drag',
  'gear=lurches',
  'kick=slips',
  'silencer=same',
  'throttle=flat-middle',
];
const four = [
  'T15=same',
  'plug=oily',
  'smoke=blue-at-start',
  'smoke=blue-under-load',
  'backfire=carburettor',
  'backfire=overrun',
  'compression-hot=poor-hot',
  'noise=tick',
  'lamps=dim',
  'lamps=blow',
  'oil-return=none',
  'T09=low',
  'T16=tight',
  'T26=inlet',
  'T26=exhaust',
  'T26=breather',
  'T28=no-advance',
];

test.each([
  ['a two-stroke', twoStroke, two],
  ['a four-stroke', fourBattery, four],
] as const)('every row of the trade can be written: %s', (_name, features, rows) => {
  const book = machineFor(features);
  expect(() => named(book, rows)).not.toThrow();
});

/** A machine with a file of its own in `faults/`. */
function own(text: string) {
  const day = readDay('2026-11-14');
  if (!day.ok) throw new Error('the day');
  const files = [
    { file: 'machine.yaml', text: machineFile() },
    { file: 'faults/mine.md', text },
  ];
  const made = build({ files, assets: [], shared: [], content, before: [], today: day.value });
  const places = made.problems.map((one) => {
    const at = locate(text, one.at);
    return `${one.code} ${one.at.file}:${String(at.line)}:${String(at.column)}`;
  });
  return { book: made.value?.book, problems: made.problems, places };
}

describe('a machine’s own', () => {
  test('cause and test take part', () => {
    const made = own(`---
causes:
  - {id: vent-hose-pinched, group: fuel, cause: vent hose pinched by the seat, long stored: likely, lately running: likely, cure: Hose moved}
tests:
  - {id: seat-off, test: Seat off and tried again, how: Seat off., minutes: 2, outcomes: [{saw: cured, words: Cured, usual: 2, shows: [vent-hose-pinched]}, {saw: same, words: No difference, usual: 98, against: [vent-hose-pinched]}]}
together:
  - {saw: ["fades=recovers-standing"], strongly for: [vent-hose-pinched]}
---
`);
    expect(made.problems).toEqual([]);
    const { book } = made;
    if (book === undefined) throw new Error('it can be read');
    const found = diagnose(book, { saw: named(book, ['fades=recovers-standing']), looked: true });
    const fuel = found.groups
      .find(({ group }) => group === 'fuel')
      ?.causes.slice(0, 3)
      .map(({ id }) => id);
    expect(fuel).toContain('vent-hose-pinched');
    expect(found.next.slice(0, 3).map(({ id }) => id)).toContain('seat-off');
  });
  test('an unknown cause is told where it stands', () => {
    const made = own(
      '---\ntests:\n  - {id: mine, test: Mine, outcomes: [{saw: yes-it-is, words: Yes, usual: 5, for: [condensor-bad]}]}\n---\n',
    );
    expect(made.places).toEqual(['reference-unknown faults/mine.md:3:84']);
    expect(made.problems[0]?.hint).toContain('condenser-bad');
  });
  test('shares that sum to more than a hundred cannot be, nor one below nothing', () => {
    const made = own(
      '---\ntests:\n  - {id: mine, test: Mine, outcomes: [{saw: a, words: A, usual: 70}, {saw: b, words: B, usual: 40}]}\n---\n',
    );
    expect(made.places).toEqual(['fault-weights-impossible faults/mine.md:3:38']);
    const below = own('---\ntests:\n  - {id: mine, test: Mine, outcomes: [{saw: a, words: A, usual: -5}]}\n---\n');
    expect(below.places.map((one) => one.split(' ')[0])).toEqual(['number-out-of-range']);
  });
  test('tests that wait for each other are a ring', () => {
    const made = own(`---
tests:
  - {id: first-mine, test: One, after: [second-mine], outcomes: [{saw: a, words: A, usual: 5}]}
  - {id: second-mine, test: Two, after: [first-mine], outcomes: [{saw: a, words: A, usual: 5}]}
---
`);
    expect(made.places.map((one) => one.split(' ')[0])).toEqual(['order-in-a-ring']);
    expect(made.places[0]).toContain('faults/mine.md:4:');
  });
  test('an id that is taken, an unknown outcome and an unknown hold point are told', () => {
    const made = own(`---
tests:
  - {id: spark, test: Mine, outcomes: [{saw: a, words: A, usual: 5}]}
  - {id: other, test: Other, point: before-breakfast, when: ["spark=purple"], outcomes: [{saw: a, words: A, usual: 5}]}
---
`);
    expect(made.places.map((one) => one.split(' ')[0] ?? '').toSorted((a, b) => (a < b ? -1 : 1))).toEqual([
      'id-twice',
      'reference-unknown',
      'reference-unknown',
    ]);
  });
});
