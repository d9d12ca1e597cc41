// What was seen, weighed: for every cause the product of what speaks for and against it, and where each part comes from.
import { outcomeOf, refParts, testOf, type OddsTable, type OddsTest, type Says } from './odds-table.ts';

/** The strongest for and the strongest against that tests looking at one thing give a cause. */
export interface Pull {
  readonly up: number;
  readonly down: number;
  readonly upFrom?: string;
  readonly downFrom?: string;
}

export interface Evidence {
  readonly table: OddsTable;
  readonly seen: ReadonlySet<string>;
  /** What is looked at → cause → pull. */
  readonly pulls: ReadonlyMap<string, ReadonlyMap<string, Pull>>;
  /** Rows of `together` that are complete. */
  readonly rows: ReadonlySet<number>;
  /** Cause → product of everything; causes that nothing speaks of are absent. */
  readonly times: ReadonlyMap<string, number>;
  /** Whether anything seen speaks for any cause. */
  readonly speaks: boolean;
}

export const noPull: Pull = { up: 1, down: 1 };

/** A pull with one more outcome in it. The order of outcomes does not matter. */
export function pulled(pull: Pull, times: number, from: string): Pull {
  if (times > pull.up) return { ...pull, up: times, upFrom: from };
  if (times < pull.down) return { ...pull, down: times, downFrom: from };
  return pull;
}

/** What an outcome would multiply the product of a pull by; undefined where that product is 0. */
export function moved({ up, down }: Pull, times: number): number | undefined {
  const product = up * down;
  if (product <= 0) return undefined;
  if (times > up) return (times * down) / product;
  return times < down ? (up * times) / product : 1;
}

/** Weighs a set of `test=outcome`. Linear in what they say; independent of their order. */
export function weigh(table: OddsTable, refs: readonly string[]): Evidence {
  const seen = new Set([...refs].sort(byText));
  const pulls = new Map<string, Map<string, Pull>>();
  for (const ref of seen) {
    const test = testOf(table, refParts(ref).test);
    if (test !== undefined) addTo(pulls, test, outcomeOf(table, ref)?.says ?? [], ref);
  }
  const rows = new Set(table.together.flatMap((row, index) => (row.saw.every((ref) => seen.has(ref)) ? [index] : [])));
  const times = new Map<string, number>();
  const multiply = (cause: string, by: number): Map<string, number> => times.set(cause, (times.get(cause) ?? 1) * by);
  for (const byCause of pulls.values()) for (const [cause, { up, down }] of byCause) multiply(cause, up * down);
  for (const index of rows) for (const { cause, times: by } of table.together[index]?.says ?? []) multiply(cause, by);
  const speaks = table.causes.some(({ id }) => (times.get(id) ?? 1) > 1);
  return { table, seen, pulls, rows, times, speaks };
}

function addTo(pulls: Map<string, Map<string, Pull>>, test: OddsTest, says: readonly Says[], ref: string): void {
  const byCause = pulls.get(test.looksAt) ?? new Map<string, Pull>();
  pulls.set(test.looksAt, byCause);
  for (const { cause, times } of says) byCause.set(cause, pulled(byCause.get(cause) ?? noPull, times, ref));
}

export interface Part {
  /** `test=outcome`, or several joined with ` + `. */
  readonly from: string;
  readonly times: number;
}

/** What speaks for and against one cause, the strongest first. Their product is what its odds were multiplied by. */
export function partsOf(evidence: Evidence, cause: string): readonly Part[] {
  const single = [...evidence.pulls.values()].flatMap((byCause): readonly Part[] => {
    const pull = byCause.get(cause);
    if (pull === undefined) return [];
    return [
      ...(pull.upFrom === undefined ? [] : [{ from: pull.upFrom, times: pull.up }]),
      ...(pull.downFrom === undefined ? [] : [{ from: pull.downFrom, times: pull.down }]),
    ];
  });
  const rows = [...evidence.rows].flatMap((index): readonly Part[] => {
    const row = evidence.table.together[index];
    const says = row?.says.find((one) => one.cause === cause);
    return row === undefined || says === undefined ? [] : [{ from: row.saw.join(' + '), times: says.times }];
  });
  return [...single, ...rows].sort((a, b) => force(b) - force(a) || byText(a.from, b.from));
}

function force({ times }: Part): number {
  return times === 0 ? Infinity : Math.abs(Math.log(times));
}

/** Plain text order; a page may run in a browser that cannot sort a copy by itself. */
export function byText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
