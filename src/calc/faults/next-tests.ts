// The next tests: free looks first, then what tells most for its effort and hazard; what is held is named and not offered.
import { fits } from './contradictions.ts';
import type { Evidence } from './evidence.ts';
import { expectedOf, knownFrom } from './information.ts';
import { engineRuns, engineStuck, outcomeOf, refParts, testOf, type OddsTable, type OddsTest } from './odds-table.ts';

export interface RankedTest {
  readonly id: string;
  /** Expected information in nats, weighted by what was seen. */
  readonly tells: number;
  readonly effort: number;
  /** `tells` over `effort`. */
  readonly worth: number;
  readonly expected: readonly { readonly outcome: string; readonly chance: number }[];
}

export interface HeldTest extends RankedTest {
  readonly held: readonly string[];
  /** The number it would stand at among those that are offered: 1 is the first. */
  readonly place: number;
}

export interface ApartTest extends RankedTest {
  readonly apart: string;
}

export interface NextTests {
  /** Looks that cost nothing and were not yet done, the one that tells most first. */
  readonly looks: readonly RankedTest[];
  readonly next: readonly RankedTest[];
  readonly held: readonly HeldTest[];
  /** What cannot be tried with the engine as far apart as it is, the one that tells most first. */
  readonly apart: readonly ApartTest[];
  /** What would hold tests that are offered, had the engine not been turned or run already: still to be looked at. */
  readonly behind: readonly (readonly string[])[];
}

/** Less than this tells nothing. */
const nothing = 1e-9;

/** Ranks all tests that were not done. Equal ones stand in the order of the table. `turned`: the engine has been turned since it stood. */
export function nextTests(evidence: Evidence, turned = false): NextTests {
  const { table, seen } = evidence;
  const done = new Set([...seen].map((ref) => refParts(ref).test));
  const running = runs(table, [...seen]);
  const ran = seenRunning(table, [...seen]);
  const known = knownFrom(evidence, ran);
  const isBehind = (test: OddsTest): boolean =>
    test.heldUntil === 'turned' ? turned : test.heldUntil === 'run' && ran;
  const heldBy = (test: OddsTest): readonly string[] => (isBehind(test) ? [] : test.held);
  const open = table.tests
    .filter((test) => !test.notice && !done.has(test.id) && isOpen(table, test, seen, done, running, ran))
    .map((test) => ({ test, rank: rankOf(known, test) }))
    .filter(({ test, rank }) => test.free || rank.tells > nothing);
  const apart = open
    .flatMap(({ test, rank }) => (test.apart === undefined ? [] : [{ ...rank, apart: test.apart }]))
    .sort((a, b) => b.worth - a.worth);
  const ranked = open.filter(({ test }) => test.apart === undefined);
  const free = ranked
    .filter(({ test }) => test.free && heldBy(test).length === 0)
    .sort((a, b) => b.rank.worth - a.rank.worth);
  const rest = ranked.filter(({ test }) => !test.free).sort((a, b) => b.rank.worth - a.rank.worth);
  const next = rest.filter(({ test }) => heldBy(test).length === 0).map(({ rank }) => rank);
  const held = [...ranked.filter(({ test }) => test.free && heldBy(test).length > 0), ...rest]
    .filter(({ test }) => heldBy(test).length > 0)
    .map(({ test, rank }) => ({
      ...rank,
      held: heldBy(test),
      place: 1 + next.filter((one) => one.worth >= rank.worth).length,
    }));
  const offered = [...free, ...rest].filter(({ test }) => test.held.length > 0 && isBehind(test));
  const behind = new Map(offered.map(({ test }) => [test.held[0] ?? '', test.held]));
  return { looks: free.map(({ rank }) => rank), next, held, apart, behind: [...behind.values()] };
}

function rankOf(known: ReturnType<typeof knownFrom>, test: OddsTest): RankedTest {
  const expected = expectedOf(known, test);
  const tells = expected.reduce((sum, one) => sum + one.chance * one.tells, 0);
  return { id: test.id, tells, effort: test.effort, worth: tells / test.effort, expected };
}

/** What it waits for has been seen; what comes before it has been done; an engine runs where one must, and is dead where it must be. */
function isOpen(
  table: OddsTable,
  test: OddsTest,
  seen: ReadonlySet<string>,
  done: ReadonlySet<string>,
  running: boolean,
  ran: boolean,
): boolean {
  if (test.running && !running) return false;
  if (ran && isOfDeadEngine(table, test)) return false;
  if (test.turning && seen.has(engineStuck) && !test.when.includes(engineStuck)) return false;
  if (test.unless.some((ref) => seen.has(ref))) return false;
  if (test.when.length > 0 && !test.when.some((ref) => seen.has(ref))) return false;
  return test.after.every((id) => done.has(id) || testOf(table, id) === undefined);
}

/** The engine runs when something seen says so, or when it is taken to run and nothing speaks against it. */
export function runs(table: OddsTable, seen: readonly string[]): boolean {
  return seenRunning(table, seen) || (table.runs && fits(table, engineRuns, seen));
}

function seenRunning(table: OddsTable, seen: readonly string[]): boolean {
  return seen.some((ref) => outcomeOf(table, ref)?.running === true);
}

/** Whether one of these says that the engine has been turned. */
export function saysTurned(table: OddsTable, refs: readonly string[]): boolean {
  return refs.some((ref) => {
    const outcome = outcomeOf(table, ref);
    const test = testOf(table, refParts(ref).test);
    return outcome !== undefined && (test?.turns === true || outcome.running === true);
  });
}

/** A test none of whose outcomes can be had of an engine that runs. */
function isOfDeadEngine(table: OddsTable, test: OddsTest): boolean {
  return test.outcomes.every(({ id }) => !fits(table, `${test.id}=${id}`, [engineRuns]));
}
