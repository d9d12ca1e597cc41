// The search for a fault as plain data, with every number of its working, for other programs.
import { chanceOf } from '../../calc/faults/cause-odds.ts';
import type { Book } from '../book.ts';
import type { Diagnosis, LeadingCause, NextTest, Seen } from './diagnosis.ts';
import { refOf } from './seen-on-record.ts';

/** Weights are judgement; whoever shows a number says so. */
const weights = 'judgement: odds and factors were not counted';

/** Everything that `splitpin next --json` says. */
export function nextData(book: Book, found: Diagnosis): Readonly<Record<string, unknown>> {
  return {
    machine: book.records.machine.name,
    day: book.today,
    standing: found.standing,
    weights,
    seen: found.seen.map(seenData),
    impossible: found.impossible.map((pair) => pair.map(seenData)),
    groups: found.groups.map(({ group, causes }) => ({ group, causes: causes.map(causeData) })),
    looks: found.looks.map(testData),
    next: found.next.map(testData),
    behind: found.behind.map(([point, ...open]) => ({ point, open })),
    apart: found.apart.map((one) => ({ ...testData(one), because: one.apart })),
    held: found.held.map((held) => ({ ...testData(held), place: held.place, because: held.held })),
  };
}

function seenData(seen: Seen): Readonly<Record<string, unknown>> {
  const { test, outcome, record } = seen;
  return {
    saw: refOf(seen),
    mark: test.mark,
    words: `${test.test}: ${outcome?.words ?? 'told nothing'}`,
    ...(record === undefined ? { from: 'asked' } : { from: record.job?.id, day: record.day, said: record.words }),
    ...(outcome?.stop === true ? { stop: outcome.means ?? 'not to be run so' } : {}),
  };
}

function causeData(one: LeadingCause): Readonly<Record<string, unknown>> {
  return {
    id: one.id,
    mark: one.cause.mark,
    cause: one.cause.cause,
    strength: one.word,
    odds: one.now,
    oddsBefore: one.before,
    chance: chanceOf(one.now),
    because: one.parts,
    known: one.known,
    cure: one.cause.cure,
  };
}

function testData({ test, tells, effort, worth, expected }: NextTest): Readonly<Record<string, unknown>> {
  return {
    id: test.id,
    mark: test.mark,
    test: test.test,
    how: test.how,
    minutes: test.minutes,
    money: test.money,
    hazard: test.hazard,
    holdPoint: test.point,
    cautions: [test.caution, ...test.cautions].filter((one) => one !== undefined),
    outcomes: test.outcomes.map(({ saw, words }) => ({ saw, words })),
    tells,
    effort,
    worth,
    expected,
  };
}
