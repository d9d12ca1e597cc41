// The computation itself: against every set of causes listed one by one, in any order, with what excludes and what contradicts.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { causeOdds, wordOf } from '../../src/calc/faults/cause-odds.ts';
import { contradictions } from '../../src/calc/faults/contradictions.ts';
import { weigh } from '../../src/calc/faults/evidence.ts';
import { expectedOf, knownFrom } from '../../src/calc/faults/information.ts';
import { nextTests } from '../../src/calc/faults/next-tests.ts';
import type { OddsOutcome, OddsTable, OddsTest } from '../../src/calc/faults/odds-table.ts';

const plain = {
  effort: 5,
  free: false,
  notice: false,
  running: false,
  turning: false,
  turns: false,
  when: [],
  unless: [],
  after: [],
  held: [],
};

const causes = ['a', 'b', 'c', 'd'] as const;

const outcome = (id: string) =>
  fc.record({
    id: fc.constant(id),
    share: fc.double({ min: 0.05, max: 1, noNaN: true }),
    says: fc.uniqueArray(
      fc.record({ cause: fc.constantFrom(...causes), times: fc.constantFrom(0, 1 / 8, 1 / 3, 3, 8, 50) }),
      { selector: ({ cause }) => cause, maxLength: 4 },
    ),
    notWith: fc.constant<readonly string[]>([]),
  });
const look = (id: string): fc.Arbitrary<OddsTest> =>
  fc
    .tuple(outcome('x'), outcome('y'), outcome('z'))
    .map((outcomes: readonly OddsOutcome[]) => ({ ...plain, id, looksAt: id, outcomes }));
const table: fc.Arbitrary<OddsTable> = fc.record({
  causes: fc
    .tuple(...causes.map(() => fc.double({ min: 0.02, max: 1.5, noNaN: true })))
    .map((odds) => causes.map((id, index) => ({ id, odds: odds[index] ?? 1 }))),
  tests: fc.tuple(look('one'), look('two'), look('three')),
  together: fc.constant([{ saw: ['one=x', 'two=y'], says: [{ cause: 'a', times: 3 }] }]),
  runs: fc.constant(true),
});

const factor = (one: OddsOutcome | undefined, cause: string): number =>
  one?.says.find((says) => says.cause === cause)?.times ?? 1;
const find = (of: OddsTable, ref: string): OddsOutcome | undefined => {
  const [id, saw] = ref.split('=');
  return of.tests.find((one) => one.id === id)?.outcomes.find((one) => one.id === saw);
};

/** Weight of every set of causes after what was seen: listed, multiplied, nothing clever. */
function sets(of: OddsTable, seen: readonly string[]): readonly { set: ReadonlySet<string>; weight: number }[] {
  const rows = of.together.filter((row) => row.saw.every((ref) => seen.includes(ref)));
  return Array.from({ length: 2 ** causes.length }, (_, bits) => {
    const set = new Set(causes.filter((_cause, index) => (bits & (2 ** index)) !== 0));
    let weight = 1;
    for (const cause of set) {
      weight *= of.causes.find((one) => one.id === cause)?.odds ?? 0;
      for (const ref of seen) weight *= factor(find(of, ref), cause);
      for (const row of rows) weight *= row.says.find((says) => says.cause === cause)?.times ?? 1;
    }
    return { set, weight };
  });
}

const chanceIn = (all: ReturnType<typeof sets>, cause: string): number => {
  const whole = all.reduce((sum, { weight }) => sum + weight, 0);
  return all.filter(({ set }) => set.has(cause)).reduce((sum, { weight }) => sum + weight, 0) / whole;
};

describe('against every set of causes', () => {
  test('odds after what was seen', () => {
    fc.assert(
      fc.property(table, fc.subarray(['one=x', 'two=y']), (of, seen) => {
        const all = sets(of, seen);
        for (const { id, now } of causeOdds(weigh(of, seen))) expect(now / (1 + now)).toBeCloseTo(chanceIn(all, id), 9);
      }),
      { numRuns: 60 },
    );
  });

  test('how often an outcome is to be expected, and what the test tells', () => {
    fc.assert(
      fc.property(table, fc.subarray(['one=x', 'two=y']), (of, seen) => {
        const evidence = weigh(of, seen);
        // Only where no suspect is surer than an unseen one may be: there the odds are the question itself.
        fc.pre(causeOdds(evidence).every(({ now, parts }) => now <= 3 || parts.some(({ times }) => times >= 50)));
        const [, , third] = of.tests;
        if (third === undefined) throw new Error('the table has three tests');
        const now = sets(of, seen);
        const joint = third.outcomes.map((one) => ({
          one,
          all: now.map(({ set, weight }) => ({
            set,
            weight: weight * one.share * [...set].reduce((product, cause) => product * factor(one, cause), 1),
          })),
        }));
        const weightOf = (all: ReturnType<typeof sets>): number => all.reduce((sum, { weight }) => sum + weight, 0);
        const whole = joint.reduce((sum, { all }) => sum + weightOf(all), 0);
        const expected = expectedOf(knownFrom(evidence), third);
        for (const [index, { all }] of joint.entries())
          expect(expected[index]?.chance).toBeCloseTo(weightOf(all) / whole, 9);
        if (evidence.speaks) return;
        // Before anything speaks all causes count alike: the sum of mutual informations, by listing.
        const mean = (cause: string): number =>
          chanceIn(
            joint.flatMap(({ all }) => all),
            cause,
          );
        const part = (a: number, b: number): number => (a === 0 ? 0 : a * Math.log(a / b));
        const listed = joint.reduce((sum, { all }) => {
          const informed = causes.reduce((inner, cause) => {
            const [after, before] = [chanceIn(all, cause), mean(cause)];
            return inner + part(after, before) + part(1 - after, 1 - before);
          }, 0);
          return sum + (weightOf(all) / whole) * informed;
        }, 0);
        expect(expected.reduce((sum, one) => sum + one.chance * one.tells, 0)).toBeCloseTo(listed, 9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('what holds for every table', () => {
  test('the order of observations changes nothing', () => {
    fc.assert(
      fc.property(table, fc.shuffledSubarray(['one=x', 'two=y', 'three=z', 'one=y']), (of, seen) => {
        const turned = seen.toReversed();
        expect(causeOdds(weigh(of, turned))).toEqual(causeOdds(weigh(of, seen)));
        expect(nextTests(weigh(of, turned))).toEqual(nextTests(weigh(of, seen)));
        expect(contradictions(of, turned)).toEqual(contradictions(of, seen));
      }),
      { numRuns: 60 },
    );
  });
  test('what is excluded stays excluded, whatever else is seen', () => {
    fc.assert(
      fc.property(table, (of) => {
        const [first, ...rest] = of.tests;
        if (first === undefined) throw new Error('the table has tests');
        const outcomes = [{ id: 'x', share: 0.5, says: [{ cause: 'a', times: 0 }], notWith: [] }];
        const excluding = { ...of, tests: [{ ...first, outcomes }, ...rest] };
        const after = causeOdds(weigh(excluding, ['one=x', 'two=x', 'three=y'])).find(({ id }) => id === 'a');
        expect(after?.now).toBe(0);
        expect(after?.word).toBe('ruled out');
      }),
      { numRuns: 30 },
    );
  });
  test('no test tells less than nothing, and one whose outcome is certain tells nothing', () => {
    fc.assert(
      fc.property(table, (of) => {
        for (const { tells } of nextTests(weigh(of, [])).next) expect(tells).toBeGreaterThan(0);
        const [first] = of.tests;
        if (first === undefined) throw new Error('the table has tests');
        const certain = { ...first, outcomes: first.outcomes.slice(0, 1) };
        const told = expectedOf(knownFrom(weigh(of, [])), certain).reduce((sum, one) => sum + one.tells, 0);
        expect(told).toBeCloseTo(0, 12);
      }),
      { numRuns: 30 },
    );
  });
});

test('two tests that look at one thing count once', () => {
  const outcomes = [{ id: 'x', share: 0.5, says: [{ cause: 'a', times: 8 }], notWith: [] }];
  const tests = ['one', 'two'].map((id) => ({ ...plain, id, looksAt: 'spark', outcomes }));
  const of: OddsTable = { causes: [{ id: 'a', odds: 0.25 }], tests, together: [], runs: true };
  expect(causeOdds(weigh(of, ['one=x', 'two=x'])).map(({ now }) => now)).toEqual([2]);
});

test('two outcomes of one test, and two that exclude each other, are told; a silent one contradicts nothing', () => {
  const one = { ...plain, id: 'one', looksAt: 'one', outcomes: [{ id: 'x', share: 1, says: [], notWith: ['two=y'] }] };
  const two = { ...plain, id: 'two', looksAt: 'two', outcomes: [{ id: 'y', share: 1, says: [], notWith: [] }] };
  const of: OddsTable = { causes: [], tests: [one, two], together: [], runs: true };
  expect(contradictions(of, ['two=y', 'one=x'])).toEqual([['one=x', 'two=y']]);
  expect(contradictions(of, ['one=x', 'one=z'])).toEqual([['one=x', 'one=z']]);
  expect(contradictions(of, ['one=silent', 'two=y'])).toEqual([]);
});

test('odds in words', () => {
  expect([0, 0.05, 0.3, 1, 5, 20].map(wordOf)).toEqual([
    'ruled out',
    'unlikely',
    'possible',
    'likely',
    'very likely',
    'almost certain',
  ]);
});
