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
  return { file: desk.file, path: pathTo(spot) };
}

/** Places stay as long as the record does, and there are dozens in each: a list that grew would keep room for sixteen keys. */
function pathTo(spot: Spot | undefined): readonly (string | number)[] {
  if (spot === undefined) return [];
  const { up, key } = spot;
  if (up === undefined) return [key];
  if (up.up === undefined) return [up.key, key];
  if (up.up.up === undefined) return [up.up.key, up.key, key];
  return [...pathTo(up), key];
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
