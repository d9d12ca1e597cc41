// What the compiled program carries of content/ is what the folder says: the same data, the very units of the list.
import { expect, test } from 'vitest';
import { readContentFolder } from '../../src/disk.ts';
import { units } from '../../src/quantity/units.ts';
import { packContent, unpackContent } from '../../src/records/packed-content.ts';
import { readContent } from '../../src/records/read-content.ts';

/** Every unit object in a value, wherever it stands. */
function unitsIn(value: unknown): readonly object[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('symbol' in value && 'factor' in value) return [value];
  const inner: readonly unknown[] = value instanceof Map ? [...value.values()] : Object.values(value);
  return inner.flatMap(unitsIn);
}

test('content that is packed and unpacked is the same content', () => {
  const { value, problems } = readContent(readContentFolder());
  expect(problems).toEqual([]);
  const again = unpackContent(packContent(value));
  expect(again).toEqual(value);
  const listed = new Set<object>(Object.values(units).flat());
  const found = unitsIn(again);
  expect(found.length).toBeGreaterThan(0);
  expect(found.filter((unit) => !listed.has(unit))).toEqual([]);
});

test('a text that names a unit that there is not is refused', () => {
  expect(() => unpackContent('{"x":{"$unit":["torque","cubit"]}}')).toThrow('unit');
});
