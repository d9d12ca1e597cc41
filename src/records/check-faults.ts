// The fault tables against themselves: names that lead nowhere, weights that cannot be, tests that wait for each other in a ring.
import type { Place, Problem } from '../problem/problem.ts';
import { ringIn, ringProblem } from './check-order.ts';
import type { Content } from './content-model.ts';
import type { FaultOutcome, FaultTables, FaultTest, Strengths } from './fault-model.ts';
import { below, unknownReference } from './reference.ts';

/** In the file's own words, for the place of a name. */
const strengthKeys = [
  ['shows', 'shows'],
  ['stronglyFor', 'strongly for'],
  ['for', 'for'],
  ['against', 'against'],
  ['stronglyAgainst', 'strongly against'],
  ['excludes', 'excludes'],
] as const;

/** All problems of the tables, in the order of their entries. */
export function checkFaults(content: Content): readonly Problem[] {
  const { faults } = content;
  if (faults === undefined) return [];
  const causes = new Set(faults.causes.map((cause) => cause.id));
  const seen = new Set(faults.tests.flatMap((test) => test.outcomes.map(({ saw }) => `${test.id}=${saw}`)));
  const points = new Set(content.holdPoints.map((point) => point.id));
  const checks = new Set(content.holdPoints.flatMap((point) => point.checks.map((check) => check.id)));
  const strengths = (given: Strengths, at: Place): readonly Problem[] => [
    ...unknownCauses(given, at, causes),
    ...bothWays(given, at),
  ];
  const outcomes = (test: FaultTest): readonly Problem[] =>
    test.outcomes.flatMap((one) => [
      ...strengths(one, one.at),
      ...unknown(one.notWith, below(one.at, 'not with'), 'test and outcome', seen),
      ...unknown(one.checks, below(one.at, 'checks'), 'check', checks),
    ]);
  return [
    ...faults.tests.flatMap((test) => [
      ...outcomes(test),
      ...sharesOf(test),
      ...namesTwice(test),
      ...unknown(test.when, below(test.at, 'when'), 'test and outcome', seen),
      ...unknown(test.unless, below(test.at, 'unless'), 'test and outcome', seen),
      ...(test.point === undefined || points.has(test.point)
        ? []
        : [unknownReference(test.point, below(test.at, 'point'), 'hold point', points)]),
    ]),
    ...faults.together.flatMap((row) => [
      ...strengths(row, row.at),
      ...unknown(row.saw, below(row.at, 'saw'), 'test and outcome', seen),
    ]),
    ...afterEachOther(faults),
  ];
}

/** Cautions that the tables cite, with their places. */
export function cautionsOfFaults(
  faults: FaultTables | undefined,
): readonly { readonly caution: string; readonly at: Place }[] {
  if (faults === undefined) return [];
  const one = ({ caution, at }: { readonly caution?: string; readonly at: Place }) =>
    caution === undefined ? [] : [{ caution, at: below(at, 'caution') }];
  return [
    ...faults.tests.flatMap((test) => [
      ...one(test),
      ...test.cautions.map((caution, index) => ({ caution, at: below(test.at, 'cautions', index) })),
      ...test.outcomes.flatMap(one),
    ]),
    ...faults.together.flatMap(one),
  ];
}

function unknown(words: readonly string[], at: Place, what: string, names: ReadonlySet<string>): readonly Problem[] {
  return words.flatMap((word, i) => (names.has(word) ? [] : [unknownReference(word, below(at, i), what, names)]));
}

function unknownCauses(given: Strengths, at: Place, causes: ReadonlySet<string>): readonly Problem[] {
  return strengthKeys.flatMap(([name, key]) => unknown(given[name], below(at, key), 'cause', causes));
}

/** One outcome speaks for a cause in one strength only. */
function bothWays(given: Strengths, at: Place): readonly Problem[] {
  const first = new Map<string, string>();
  return strengthKeys.flatMap(([name, key]) =>
    given[name].flatMap((cause, index): readonly Problem[] => {
      const earlier = first.get(cause);
      first.set(cause, key);
      if (earlier === undefined) return [];
      return [
        impossible(
          below(at, key, index),
          `“${cause}” stands under “${earlier}” and under “${key}” of one outcome.`,
          'Leave it where it belongs; what is silent about a cause does not name it.',
        ),
      ];
    }),
  );
}

/** Sound engines cannot show the outcomes of one test more often than they are tried. Outcomes for different machines do not add up. */
function sharesOf(test: FaultTest): readonly Problem[] {
  const shares = new Map<string, FaultOutcome>();
  for (const outcome of test.outcomes) if (!shares.has(outcome.saw)) shares.set(outcome.saw, outcome);
  const sum = [...shares.values()].reduce((total, one) => total + one.usual, 0);
  if (sum > 0 && sum <= 100.5) return [];
  const message =
    sum === 0
      ? `No engine would show any outcome of “${test.id}”.`
      : `Of a hundred sound engines, the outcomes of “${test.id}” count more than a hundred.`;
  return [impossible(below(test.at, 'outcomes'), message, 'Let `usual` of its outcomes sum to 100 or less.')];
}

/** An outcome given twice must be for different machines. */
function namesTwice(test: FaultTest): readonly Problem[] {
  const first = new Map<string, FaultOutcome>();
  return test.outcomes.flatMap((outcome): readonly Problem[] => {
    const earlier = first.get(outcome.saw);
    first.set(outcome.saw, outcome);
    if (earlier === undefined || JSON.stringify(earlier.applies) !== JSON.stringify(outcome.applies)) return [];
    return [
      {
        code: 'id-twice',
        severity: 'problem',
        at: below(outcome.at, 'saw'),
        message: `“${test.id}” has the outcome “${outcome.saw}” already, for the same machines.`,
        hint: 'Give one of the two another name.',
        also: [{ at: below(earlier.at, 'saw'), message: 'It is used here first.' }],
      },
    ];
  });
}

function afterEachOther({ tests }: FaultTables): readonly Problem[] {
  const ids = new Set(tests.map((test) => test.id));
  const unknownTests = tests.flatMap((test) => unknown(test.after, below(test.at, 'after'), 'test', ids));
  const edges = tests.flatMap((test) =>
    test.after.map((before, index) => ({
      before,
      after: test.id,
      why: '',
      at: { file: test.at.file, path: [...test.at.path.slice(0), 'after', index] },
    })),
  );
  const ring = ringIn(edges);
  if (ring === undefined) return unknownTests;
  const problem = ringProblem(ring);
  return [
    ...unknownTests,
    { ...problem, at: ring.at(-1)?.at ?? problem.at, hint: 'Take away the `after` that is not so.' },
  ];
}

function impossible(at: Place, message: string, hint: string): Problem {
  return { code: 'fault-weights-impossible', severity: 'problem', at, message, hint };
}
