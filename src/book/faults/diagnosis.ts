// The search for a fault: what is seen, the odds of each cause by group, the next tests, and what cannot all be so.
import { causeOdds, type CauseOdds } from '../../calc/faults/cause-odds.ts';
import { contradictions, fits } from '../../calc/faults/contradictions.ts';
import { weigh, type Evidence } from '../../calc/faults/evidence.ts';
import { nextTests, saysTurned, type ApartTest, type HeldTest, type RankedTest } from '../../calc/faults/next-tests.ts';
import { silent, type OddsTable } from '../../calc/faults/odds-table.ts';
import { addMonths } from '../../quantity/day-arithmetic.ts';
import {
  faultGroups,
  type FaultCause,
  type FaultGroup,
  type FaultTables,
  type FaultTest,
} from '../../records/fault-model.ts';
import type { Book } from '../book.ts';
import { hasHappened, inOrder } from '../in-order.ts';
import type { NamedOutcome } from './fault-names.ts';
import { machineFaults } from './machine-faults.ts';
import { asItStands } from './once-off.ts';
import { oddsOfMachine, type StoodOrRan } from './odds-of-machine.ts';
import { refOf, seenOnRecord, type SeenOnRecord } from './seen-on-record.ts';
import { workedOn } from './worked-on.ts';

export interface Asked {
  /** Seen now, besides the records; it goes before what they say of the same test. */
  readonly saw?: readonly NamedOutcome[];
  /** Free looks are taken as done, and told nothing. */
  readonly looked?: boolean;
  /** Instead of what the records say. */
  readonly standing?: StoodOrRan;
}

export type Seen = NamedOutcome & { readonly record?: SeenOnRecord };

export interface LeadingCause extends CauseOdds {
  readonly cause: FaultCause;
  readonly known: readonly { readonly why: string; readonly times: number }[];
}
export type NextTest = RankedTest & { readonly test: FaultTest };
export type NextHeld = HeldTest & { readonly test: FaultTest };
export type NextApart = ApartTest & { readonly test: FaultTest };

export interface Diagnosis {
  readonly standing: StoodOrRan;
  readonly faults: FaultTables;
  readonly table: OddsTable;
  readonly evidence: Evidence;
  readonly seen: readonly Seen[];
  /** Outcomes that cannot all be so; nothing is ranked while there are any. */
  readonly impossible: readonly (readonly [Seen, Seen])[];
  readonly groups: readonly { readonly group: FaultGroup; readonly causes: readonly LeadingCause[] }[];
  readonly looks: readonly NextTest[];
  readonly next: readonly NextTest[];
  readonly held: readonly NextHeld[];
  /** What the machine is too far apart for. */
  readonly apart: readonly NextApart[];
  /** Hold points that the engine is past, and that are not clear: title, then what is open. */
  readonly behind: readonly (readonly string[])[];
}

/** A year without a run is standing; what was seen or done longer ago than two years says nothing of today. Judgement. */
const ranWithin = 12;
const saysFor = 24;

/** Everything the sheet, the page and the command say. Pure. */
export function diagnose(book: Book, asked: Asked = {}): Diagnosis {
  const faults = asItStands(book, machineFaults(book.content, book.records.machine.features));
  const jobs = inOrder(book.records.jobs).filter(hasHappened);
  const from = addMonths(book.today, -saysFor);
  const worked = workedOn(faults.causes, jobs, from, (thing) => called(book, thing));
  const standing = asked.standing ?? standingOf(book);
  const now = (asked.saw ?? []).map((one): Seen => one);
  const looked = asked.looked === true ? faults.tests.filter((test) => test.free).map((test): Seen => ({ test })) : [];
  const records = seenOnRecord(book, faults, jobs, worked, from);
  const table = oddsOfMachine(faults, book, standing, worked);
  const seen = together(table, now, looked, records);
  const impossible = pairsOf(table, seen);
  const evidence = weigh(table, seen.map(refOf));
  const ranked =
    impossible.length > 0
      ? { looks: [], next: [], held: [], apart: [], behind: [] }
      : nextTests(evidence, table.runs || saysTurned(table, now.map(refOf)));
  return {
    standing,
    faults,
    table,
    evidence,
    seen,
    impossible,
    groups: impossible.length > 0 ? [] : groupsOf(faults, table, evidence),
    looks: named(faults, ranked.looks),
    next: named(faults, ranked.next),
    held: named(faults, ranked.held),
    apart: named(faults, ranked.apart),
    behind: ranked.behind,
  };
}

/** The name that the maker’s data have for an id, as on every sheet; an id of our own checks is read as words. */
function called({ limits, settings, fasteners }: Book, thing: string): string {
  const known = limits.get(thing) ?? settings.get(thing) ?? fasteners.get(thing);
  if (known !== undefined) return known.name;
  return /^[a-z0-9]+(?:-[a-z0-9]+)+$/u.test(thing) ? thing.replaceAll('-', ' ') : thing;
}

/** Seen now goes first; of the records, the newest that fits with it. What a person sees today may have changed since. */
function together(
  table: OddsTable,
  now: readonly Seen[],
  looked: readonly Seen[],
  records: readonly SeenOnRecord[],
): readonly Seen[] {
  const taken: Seen[] = [...now];
  const free = looked.filter(({ test }) => !now.some((one) => one.test.id === test.id));
  const newestFirst = records.toSorted((a, b) => (a.day < b.day ? 1 : Number(a.day > b.day) * -1));
  for (const record of newestFirst) {
    if (taken.some(({ test }) => test.id === record.test.id)) continue;
    if (!fits(table, refOf(record), taken.filter((one) => !ofOneRecord(one, record)).map(refOf))) continue;
    taken.push(
      record.outcome === undefined
        ? { test: record.test, record }
        : { test: record.test, outcome: record.outcome, record },
    );
  }
  return [...taken, ...free.filter(({ test }) => !taken.some((one) => one.test.id === test.id))];
}

/** Two tests that one record has written down are both kept: when they cannot both be so, it is said. */
function ofOneRecord({ record }: Seen, other: SeenOnRecord): boolean {
  return record?.written === true && other.written === true && record.job === other.job;
}

function pairsOf(table: OddsTable, seen: readonly Seen[]): readonly (readonly [Seen, Seen])[] {
  const byRef = new Map(seen.map((one) => [refOf(one), one]));
  return contradictions(table, seen.map(refOf)).flatMap(([one, other]) => {
    const pair = [byRef.get(one), byRef.get(other)] as const;
    return pair[0] === undefined || pair[1] === undefined ? [] : [[pair[0], pair[1]] as const];
  });
}

function groupsOf(faults: FaultTables, table: OddsTable, evidence: Evidence): Diagnosis['groups'] {
  const causes = new Map(faults.causes.map((cause) => [cause.id, cause]));
  const known = new Map(table.causes.map((cause) => [cause.id, cause.known ?? []]));
  const all = causeOdds(evidence).flatMap((odds): readonly LeadingCause[] => {
    const cause = causes.get(odds.id);
    return cause === undefined ? [] : [{ ...odds, cause, known: known.get(odds.id) ?? [] }];
  });
  return faultGroups
    .map((group) => ({ group, causes: all.filter(({ cause }) => cause.group === group) }))
    .filter((one) => one.causes.length > 0)
    .toSorted((a, b) => Number(isSpokenFor(b.causes)) - Number(isSpokenFor(a.causes)));
}

/** Groups that something seen speaks for come first. */
function isSpokenFor(causes: readonly LeadingCause[]): boolean {
  return causes.some(({ before, now }) => now > before);
}

function named<T extends { readonly id: string }>(
  faults: FaultTables,
  ranked: readonly T[],
): readonly (T & { readonly test: FaultTest })[] {
  const tests = new Map(faults.tests.map((test) => [test.id, test]));
  return ranked.flatMap((one) => {
    const test = tests.get(one.id);
    return test === undefined ? [] : [{ ...one, test }];
  });
}

/** A ride, or heat cycles, within a year of today; a first try that did not fire is no run. */
function standingOf(book: Book): StoodOrRan {
  const since = addMonths(book.today, -ranWithin);
  const ran = book.records.jobs.some(
    (job) =>
      hasHappened(job) &&
      job.date.to >= since &&
      job.date.from <= book.today &&
      (job.ride !== undefined || job.heatCycles > 0),
  );
  return ran ? 'lately running' : 'long stored';
}

/** Whether it is one of those that told nothing. */
export function toldNothing(seen: Seen): boolean {
  return seen.outcome === undefined || refOf(seen).endsWith(`=${silent}`);
}
