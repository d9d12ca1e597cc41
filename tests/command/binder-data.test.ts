// data/binder.json: it fits its schema, carries units and origins, leads to every working it names, and does not depend on the order of files.
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { binderData, binderSchema, build, readContent, readDay } from '../../src/build.ts';
import { readContentFolder, readMachineFolder } from '../../src/disk.ts';

const content = readContent(readContentFolder());
const machines = ['demo-bike', 'tests/fixtures/tern-350'];

function dataOf(path: string, order: 'as read' | 'backwards' = 'as read'): unknown {
  const folder = readMachineFolder(path).value;
  const today = readDay('2026-11-14');
  if (folder === undefined || !today.ok) throw new Error('no machine in ' + path);
  const files = order === 'as read' ? folder.files : folder.files.toReversed();
  const { assets, shared } = folder;
  const made = build({ files, assets, shared, content, before: [], today: today.value }).value;
  if (made === undefined) throw new Error('no binder of ' + path);
  // As it is written: what JSON leaves out is left out.
  return JSON.parse(JSON.stringify(binderData(made.book)));
}

/** Every object in a value. */
function objectsIn(value: unknown): readonly object[] {
  if (typeof value !== 'object' || value === null) return [];
  return [value, ...Object.values(value).flatMap(objectsIn)];
}

describe.each(machines)('the data of %s', (path) => {
  const data = dataOf(path);

  test('fits its schema, in which nothing else may stand', () => {
    const validate = new Ajv({ allErrors: true }).compile(JSON.parse(JSON.stringify(binderSchema)));
    validate(data);
    expect(validate.errors ?? []).toEqual([]);
    const odd = { ...Object(data), colour: 'red' };
    expect(validate(odd)).toBe(false);
  });

  test('gives every figure a unit, decimals and an origin, and every working that is named', () => {
    const all = objectsIn(data);
    const figures = all.filter((each) => 'origin' in each);
    expect(figures.length).toBeGreaterThan(20);
    for (const figure of figures) {
      expect(figure).toMatchObject({
        value: expect.any(Number),
        unit: expect.any(String),
        decimals: expect.any(Number),
      });
    }
    const named = new Set(all.flatMap((each) => ('working' in each ? [String(each.working)] : [])));
    const given = new Set(all.flatMap((each) => ('calculation' in each && 'id' in each ? [String(each.id)] : [])));
    expect(named.size).toBeGreaterThan(0);
    expect([...named].filter((id) => !given.has(id))).toEqual([]);
  });

  test('is the same whatever the order of the files', () => {
    expect(JSON.stringify(dataOf(path, 'backwards'))).toBe(JSON.stringify(data));
  });
});
