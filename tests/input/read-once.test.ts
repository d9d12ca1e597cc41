// What is kept while many records are read: values and places are the same as read by themselves, however many there are.
import { describe, expect, it } from 'vitest';
import type { Dimension, Read, Written } from '../../src/quantity/quantity.ts';
import { readAnyQuantity, readQuantity } from '../../src/quantity/read-quantity.ts';
import { deskFor, placeOf, type Spot } from '../../src/records/shapes/desk.ts';
import { readOnce } from '../../src/records/shapes/read-once.ts';

/** The value as it is read by itself. */
function byItself(words: string, dimension?: Dimension): unknown {
  const read: Read<Written> = dimension === undefined ? readAnyQuantity(words) : readQuantity(words, dimension);
  return read.ok ? { ok: true, value: { kind: 'read', written: read.value } } : read;
}

const words = Array.from({ length: 2500 }, (_, index) => `${(index / 100).toFixed(2)} mm`);

describe('values read once', () => {
  it('are what is read anew, also beyond as many as are kept', () => {
    for (const one of [...words, ...words.slice(0, 50)]) {
      expect(readOnce(one, 'length')).toEqual(byItself(one, 'length'));
      expect(readOnce(one, undefined)).toEqual(byItself(one));
    }
  });

  it('are told apart by the kind of quantity that is wanted', () => {
    expect(readOnce('2 kg', 'mass')).toEqual(byItself('2 kg', 'mass'));
    expect(readOnce('2 kg', 'length').ok).toBe(false);
    expect(readOnce('2 m', 'length')).toEqual(byItself('2 m', 'length'));
    expect(readOnce('2 m', 'distance ridden')).toEqual(byItself('2 m', 'distance ridden'));
  });

  it('serve all who wrote the same, and refuse anew what cannot be read', () => {
    expect(readOnce('0.45 mm', 'length')).toBe(readOnce('0.45 mm', 'length'));
    expect(readOnce('0.45', 'length')).toEqual(byItself('0.45', 'length'));
  });
});

describe('places', () => {
  it('have all keys from the top, also where thousands of keys were seen before', () => {
    for (let index = 0; index < 6000; index += 1) {
      const entry: Spot = { up: { up: undefined, key: `own ${String(index)}` }, key: index };
      const { path } = placeOf(deskFor('jobs/a.md'), { up: entry, key: 'found' });
      expect(path).toEqual([`own ${String(index)}`, index, 'found']);
    }
    expect(placeOf(deskFor('jobs/a.md'), undefined)).toEqual({ file: 'jobs/a.md', path: [] });
  });

  it('tell a number from the same number written as a key', () => {
    const at = (key: string | number): readonly (string | number)[] =>
      placeOf(deskFor('jobs/a.md'), { up: { up: undefined, key: 'readings' }, key }).path;
    expect(at(3)).toEqual(['readings', 3]);
    expect(at('3')).toEqual(['readings', '3']);
  });
});
