// The same words are the same value: hundreds of records say `0.05 mm`, and one reading of it, which is never changed, serves them all.
import type { Dimension, Read, Written } from '../../quantity/quantity.ts';
import { readAnyQuantity, readQuantity } from '../../quantity/read-quantity.ts';
import type { Value } from '../model.ts';

/** Whoever writes so many different values has few of them twice; what is kept begins anew. */
const most = 2000;

const known = new Map<Dimension | undefined, Map<string, Read<Value>>>();

/** Reads one value as `readQuantity` does, or as `readAnyQuantity` where the kind of quantity is not known beforehand. */
export function readOnce(words: string, dimension: Dimension | undefined): Read<Value> {
  const ofKind = known.get(dimension) ?? new Map<string, Read<Value>>();
  const before = ofKind.get(words);
  if (before !== undefined) return before;
  const read: Read<Written> = dimension === undefined ? readAnyQuantity(words) : readQuantity(words, dimension);
  if (!read.ok) return read;
  const value = { ok: true, value: { kind: 'read', written: read.value } } as const;
  if (ofKind.size >= most) ofKind.clear();
  known.set(dimension, ofKind.set(words, value));
  return value;
}
