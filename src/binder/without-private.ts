// The binder's data as they may travel inside a printed history: without what its owner marked as private.
import type { Place } from '../problem/problem.ts';
import type { Plain } from './plain.ts';

type Data = Readonly<Record<string, Plain>>;

/**
 * Leaves out every number, photo or paper that carries the mark itself, and the list of private words. Undefined where a single value inside a record carries it:
 * what was worked out from such a value stands in many places, and leaving some of them out would be a promise not kept.
 */
export function withoutPrivate(data: Data, kept: readonly Place[]): Data | undefined {
  if (kept.length > 0) return undefined;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, opened(value)]));
}

function opened(value: Plain): Plain {
  if (isList(value)) return value.filter((each) => !isPrivate(each)).map(opened);
  if (!isBranch(value)) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]) =>
      isPrivate(inner) || key === 'privateWords' ? [] : [[key, opened(inner)]],
    ),
  );
}

function isPrivate(value: Plain): boolean {
  return isBranch(value) && value['private'] === true;
}

function isList(value: Plain): value is readonly Plain[] {
  return Array.isArray(value);
}

function isBranch(value: Plain): value is { readonly [key: string]: Plain } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
