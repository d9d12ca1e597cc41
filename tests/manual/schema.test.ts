// The JSON Schemas say what the readers say: good records pass, and what a reader refuses by its shape a schema refuses too.
import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { CORE_SCHEMA, FAILSAFE_SCHEMA, load, type Schema } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { recordSchemas } from '../../src/records/schema.ts';
import { readDocument } from '../../src/source/document.ts';
import { formatExamples } from './manual-folder.ts';

const ajv = new Ajv2020({ allErrors: true, strict: false });
const schemas = recordSchemas();
const checks = new Map(schemas.map(({ id, schema }) => [id, ajv.compile(schema)]));

function faults(kind: string, data: unknown): readonly string[] {
  const check = checks.get(kind);
  if (check === undefined) throw new Error(`no schema for ${kind}`);
  check(data);
  return (check.errors ?? []).map((error) => `${error.instancePath} ${error.message ?? ''}`);
}

/** As an editor reads it (numbers and truths) and as we do (text). */
const readings: readonly Schema[] = [CORE_SCHEMA, FAILSAFE_SCHEMA];

function kindOf(file: string): string {
  const found = schemas.find(({ files }) => new RegExp(`^${files.replace('*', '.+')}$`, 'u').test(file));
  if (found === undefined) throw new Error(`no kind for ${file}`);
  return found.id;
}

describe('JSON Schemas', () => {
  test('there is one for every kind, and it says what each key is for', () => {
    expect(schemas.map(({ id }) => id)).toContain('machine');
    for (const { schema } of schemas) expect(JSON.stringify(schema)).toContain('description');
  });

  test('every example of the page of formats passes', () => {
    const examples = formatExamples().filter(({ text }) => text.startsWith('---') || !text.startsWith('It '));
    expect(examples.length).toBeGreaterThanOrEqual(12);
    for (const { file, text } of examples) {
      const document = readDocument({ file, text }).value;
      expect({ file, faults: faults(kindOf(file), document?.data) }).toEqual({ file, faults: [] });
    }
  });

  test('the demo machine and its makers’ files pass, read either way', () => {
    const folder = new URL('../../demo-bike/', import.meta.url);
    const makers = readdirSync(new URL('maker/', folder)).map((name) => `maker/${name}`);
    expect(makers.length).toBeGreaterThan(0);
    for (const file of ['machine.yaml', 'instruments.yaml', ...makers]) {
      const text = readFileSync(new URL(file, folder), 'utf8');
      for (const schema of readings)
        expect({ file, faults: faults(kindOf(file), load(text, { schema })) }).toEqual({ file, faults: [] });
    }
  });

  test('an unknown key, a missing key and a wrong word are refused', () => {
    expect(faults('instruments', { splitpin: 1, instruments: [{ id: 'a', name: 'b', colour: 'red' }] })).not.toEqual(
      [],
    );
    expect(faults('instruments', { splitpin: 1, instruments: [{ id: 'a' }] })).not.toEqual([]);
    expect(faults('instruments', { splitpin: 2 })).not.toEqual([]);
    expect(faults('instruments', { splitpin: 1 })).toEqual([]);
  });
});
