// From the tables of a machine to plain odds and factors: what the ranking computes with.
import type { OddsTable, Says } from '../../calc/faults/odds-table.ts';
import {
  afterCure,
  afterMoving,
  hazardMinutes,
  minutesPerMoney,
  minutesToBegin,
  startingOdds,
  strengths,
} from '../../calc/faults/weights.ts';
import type { FaultCause, FaultTables, FaultTest, Strengths } from '../../records/fault-model.ts';
import type { Book } from '../book.ts';
import { firstNotOn, notOnText } from '../not-on-it.ts';
import type { WorkedOn } from './worked-on.ts';

/** The point that an engine which has been turned is past. */
const beforeTurning = 'before-turning';
/** The point that an engine which runs is past. */
const beforeFirstKick = 'before-live-kick';
/** Signs that nobody sees without turning the engine. */
const turnedSigns: ReadonlySet<string> = new Set([
  'engine',
  'kick',
  'prime',
  'compression-hot',
  'points-arcing',
  'oil-return',
]);

export type StoodOrRan = 'long stored' | 'lately running';

/** The table of odds. `worked` says what the records have worked on since. */
export function oddsOfMachine(faults: FaultTables, book: Book, standing: StoodOrRan, worked: WorkedOn): OddsTable {
  return {
    causes: faults.causes.map((cause) => causeOf(cause, standing, worked)),
    tests: faults.tests.map((test) => ({
      id: test.id,
      looksAt: test.looksAt ?? test.id,
      effort: effortOf(test),
      free: test.free,
      notice: test.notice,
      running: test.running,
      turning: test.point !== undefined,
      when: test.when,
      unless: test.unless,
      after: test.after,
      turns: test.point === beforeTurning || turnedSigns.has(test.id),
      ...(test.point === beforeTurning ? { heldUntil: 'turned' } : {}),
      ...(test.point === beforeFirstKick ? { heldUntil: 'run' } : {}),
      held: heldBy(book, test.point),
      ...apartFor(book, test),
      outcomes: test.outcomes.map((one) => ({
        id: one.saw,
        share: one.usual / 100,
        says: saysOf(one),
        notWith: one.notWith,
        ...(one.running ? { running: true } : {}),
      })),
    })),
    together: faults.together.map((row) => ({ saw: row.saw, says: saysOf(row) })),
    runs: standing === 'lately running',
  };
}

function causeOf(cause: FaultCause, standing: StoodOrRan, worked: WorkedOn): OddsTable['causes'][number] {
  const word = standing === 'long stored' ? cause.longStored : cause.latelyRunning;
  const cured = worked.cured.get(cause.id);
  const moved = worked.moved.get(cause.id);
  const known = [
    ...(cured === undefined ? [] : [{ why: cured, times: afterCure }]),
    ...(moved === undefined ? [] : [{ why: moved, times: afterMoving }]),
  ];
  const odds = known.reduce((product, { times }) => product * times, startingOdds[standing][word]);
  return { id: cause.id, odds, ...(known.length === 0 ? {} : { known }) };
}

function saysOf(given: Strengths): readonly Says[] {
  const says = (causes: readonly string[], times: number): readonly Says[] => causes.map((cause) => ({ cause, times }));
  return [
    ...says(given.shows, strengths.shows),
    ...says(given.stronglyFor, strengths.stronglyFor),
    ...says(given.for, strengths.for),
    ...says(given.against, strengths.against),
    ...says(given.stronglyAgainst, strengths.stronglyAgainst),
    ...says(given.excludes, strengths.excludes),
  ];
}

function effortOf({ minutes, money, hazard }: FaultTest): number {
  const dangers = hazard.reduce((sum, one) => sum + (hazardMinutes[one] ?? 0), 0);
  return minutesToBegin + minutes + money * minutesPerMoney + dangers;
}

/** A test that needs a thing fitted waits until it is back on. */
function apartFor(book: Book, { fitted }: FaultTest): Pick<OddsTable['tests'][number], 'apart'> {
  const line = firstNotOn(book, fitted);
  return line === undefined ? {} : { apart: notOnText(line) };
}

/** Why a test has to wait: its hold point is held, and neither clear nor released by a person. */
function heldBy(book: Book, point: string | undefined): readonly string[] {
  const state = book.holds.find((hold) => hold.point.id === point);
  if (state === undefined || state.clear || state.released !== undefined) return [];
  return [state.point.title, ...(state.because ?? [])];
}
