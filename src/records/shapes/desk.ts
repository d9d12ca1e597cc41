// The desk on which one file is read: where its problems are collected, and how a value's place is kept cheaply.
import type { ProblemCode } from '../../problem/codes.ts';
import type { Place, Problem } from '../../problem/problem.ts';
import type { Dimension } from '../../quantity/quantity.ts';

export interface Desk {
  readonly file: string;
  readonly problems: Problem[];
  /** Places of values marked `private`. */
  readonly kept: Place[];
  /** The kind of quantity that a limit, a setting or another known item is measured in. */
  readonly dimensionOf: (item: string) => Dimension | undefined;
}

/** One key on the way to a value; the whole way is spelled out only where a place is needed. `undefined` is the top. */
export interface Spot {
  readonly up: Spot | undefined;
  readonly key: string | number;
}

/** A fresh desk for a file. */
export function deskFor(file: string, dimensionOf: Desk['dimensionOf'] = () => undefined): Desk {
  return { file, problems: [], kept: [], dimensionOf };
}

/** The place of a spot, with all its keys from the top. */
export function placeOf(desk: Desk, spot: Spot | undefined): Place {
  return { file: desk.file, path: wayTo(spot).path };
}

/** Ways that were spelled out before: `readings`, 0, `found` is the way to a value in thousands of records, and one list serves them all. */
interface Way {
  readonly path: readonly (string | number)[];
  /** Ways that go on from here, once there are any. */
  on?: Map<string | number, Way>;
}

const top: Way = { path: [] };

/** Whoever writes thousands of keys of his own gets a list for each place of them. */
const mostWays = 5000;
let ways = 0;

function wayTo(spot: Spot | undefined): Way {
  if (spot === undefined) return top;
  const up = wayTo(spot.up);
  const before = up.on?.get(spot.key);
  if (before !== undefined) return before;
  const way: Way = { path: [...up.path, spot.key] };
  if (ways >= mostWays) return way;
  ways += 1;
  up.on ??= new Map();
  up.on.set(spot.key, way);
  return way;
}

/**
 * Puts a problem on the desk; gives `undefined`, so that a reader can return it. `at key` points at the key, not the value;
 * `at top` gives a problem of the whole file its first line.
 */
export function refuse(
  desk: Desk,
  spot: Spot | undefined,
  code: ProblemCode,
  message: string,
  hint?: string,
  where?: 'at key' | 'at top',
): undefined {
  const place = placeOf(desk, spot);
  const atKey = where === 'at key' ? { atKey: true } : {};
  const first = where === 'at top' && spot === undefined ? { line: 1, column: 1 } : {};
  const said = hint === undefined ? {} : { hint };
  desk.problems.push({ code, severity: 'problem', at: { ...place, ...atKey, ...first }, message, ...said });
  return undefined;
}
