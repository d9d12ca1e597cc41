// All that can be named to `splitpin next`: tests and signs with their outcomes, and the causes of this machine.
import type { FaultTables, FaultTest } from '../../records/fault-model.ts';

/** As lines. */
export function faultListLines({ causes, tests }: FaultTables): readonly string[] {
  const section = (title: string, some: readonly FaultTest[]): readonly string[] => [title, ...some.flatMap(testLines)];
  return [
    'Write --saw test=outcome; in place of a name its mark or another name of it will do, and every test has the outcome',
    '`silent`: done, and told nothing.',
    '',
    ...section(
      'Signs, noticed without doing anything',
      tests.filter((test) => test.notice),
    ),
    '',
    ...section(
      'Tests',
      tests.filter((test) => !test.notice),
    ),
    '',
    'Causes',
    ...causes.map((cause) => `  ${cause.id}${marked(cause.mark)}  ${cause.cause}; ${cause.group}`),
  ];
}

function testLines(test: FaultTest): readonly string[] {
  return [
    `  ${test.id}${marked(test.mark)}  ${test.test}${others(test.also)}`,
    ...test.outcomes.map((one) => `      ${test.id}=${one.saw}  ${one.words}${others(one.also)}`),
  ];
}

function marked(mark: string | undefined): string {
  return mark === undefined ? '' : ` ${mark}`;
}

function others(also: readonly string[]): string {
  return also.length === 0 ? '' : ` (also ${also.join(', ')})`;
}

/** As plain data. */
export function faultListData({ causes, tests }: FaultTables): Readonly<Record<string, unknown>> {
  return {
    tests: tests.map(({ id, mark, also, test, notice, free, minutes, outcomes }) => ({
      id,
      mark,
      also,
      test,
      notice,
      free,
      minutes,
      outcomes: outcomes.map(({ saw, also: others, words }) => ({ saw, also: others, words })),
    })),
    causes: causes.map(({ id, mark, group, cause, longStored, latelyRunning, cure }) => ({
      id,
      mark,
      group,
      cause,
      longStored,
      latelyRunning,
      cure,
    })),
  };
}
