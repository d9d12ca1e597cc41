// What the ranking of faults computes with: plain data of one machine, which a page carries as well.

/** An outcome multiplies the odds of a cause; 0 excludes it. */
export interface Says {
  readonly cause: string;
  readonly times: number;
}

export interface OddsCause {
  readonly id: string;
  /** Odds before anything is seen, at least 0. */
  readonly odds: number;
  /** What of the records has moved them, in a few words each. */
  readonly known?: readonly { readonly why: string; readonly times: number }[];
}

export interface OddsOutcome {
  readonly id: string;
  /** Share of sound engines that show it, 0 to 1. */
  readonly share: number;
  readonly says: readonly Says[];
  readonly notWith: readonly string[];
  /** Seen on a running engine. */
  readonly running?: boolean;
}

export interface OddsTest {
  readonly id: string;
  /** Tests that look at one thing: of what they say of a cause, the strongest counts once each way. */
  readonly looksAt: string;
  /** Minutes with money and hazard counted in. */
  readonly effort: number;
  readonly free: boolean;
  readonly notice: boolean;
  readonly running: boolean;
  readonly when: readonly string[];
  /** Not offered once one of these was seen. */
  readonly unless: readonly string[];
  readonly after: readonly string[];
  /** The engine is turned for it. */
  readonly turning: boolean;
  /** Whoever has seen an outcome of it has turned the engine. */
  readonly turns: boolean;
  /** What holds it lies behind an engine that has been turned, or that runs. */
  readonly heldUntil?: 'turned' | 'run';
  /** What holds it; empty when nothing does. */
  readonly held: readonly string[];
  /** What must be fitted for it and is off, in words; absent: it can be tried as the machine stands. */
  readonly apart?: string;
  readonly outcomes: readonly OddsOutcome[];
}

export interface OddsTable {
  readonly causes: readonly OddsCause[];
  readonly tests: readonly OddsTest[];
  readonly together: readonly { readonly saw: readonly string[]; readonly says: readonly Says[] }[];
  /** Whether the engine is taken to run when nothing that was seen says otherwise. */
  readonly runs: boolean;
}

/** The outcome of a test that told nothing; every test may have it. */
export const silent = 'silent';

/** The two outcomes of the tables that decide which tests can be done at all. */
export const engineRuns = 'engine=runs';
export const engineStuck = 'engine=will-not-turn';

/** `spark=none` as its test and its outcome; without a sign of equality the outcome is empty. */
export function refParts(ref: string): { readonly test: string; readonly outcome: string } {
  const at = ref.indexOf('=');
  return at < 0 ? { test: ref, outcome: '' } : { test: ref.slice(0, at), outcome: ref.slice(at + 1) };
}

/** The outcome that a `test=outcome` names; undefined for a silent one and for names that are not in the table. */
export function outcomeOf(table: OddsTable, ref: string): OddsOutcome | undefined {
  return indexOf(table).outcomes.get(ref);
}

/** The test of an id; undefined for one that is not in the table. */
export function testOf(table: OddsTable, id: string): OddsTest | undefined {
  return indexOf(table).tests.get(id);
}

/** Numbers of the rows of `together` that hold a `test=outcome`, in their order. */
export function rowsWith(table: OddsTable, ref: string): readonly number[] {
  return indexOf(table).rows.get(ref) ?? [];
}

interface TableIndex {
  readonly tests: ReadonlyMap<string, OddsTest>;
  readonly outcomes: ReadonlyMap<string, OddsOutcome>;
  readonly rows: ReadonlyMap<string, readonly number[]>;
}

/** A table is never changed once made, and a ranking asks it some thousand times. */
const known = new WeakMap<OddsTable, TableIndex>();

function indexOf(table: OddsTable): TableIndex {
  const before = known.get(table);
  if (before !== undefined) return before;
  const outcomes = new Map<string, OddsOutcome>();
  for (const test of table.tests)
    for (const one of test.outcomes) {
      const ref = `${test.id}=${one.id}`;
      if (!outcomes.has(ref)) outcomes.set(ref, one);
    }
  const rows = new Map<string, number[]>();
  for (const [index, row] of table.together.entries())
    for (const ref of new Set(row.saw)) rows.set(ref, [...(rows.get(ref) ?? []), index]);
  const made = { tests: new Map(table.tests.map((test) => [test.id, test])), outcomes, rows };
  known.set(table, made);
  return made;
}
