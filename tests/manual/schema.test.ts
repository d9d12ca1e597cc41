// The JSON Schemas say what the readers say: good records pass, and what a reader refuses by its shape a schema refuses too.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { CORE_SCHEMA, FAILSAFE_SCHEMA, load, type Schema } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { editorSchemas, schemaLine } from '../../src/command/editor-schemas.ts';
import { readMachineFolder } from '../../src/disk.ts';
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

  test.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125', 'tests/fixtures/from-the-manual'])(
    'every record of %s passes',
    (name) => {
      const read = readMachineFolder(fileURLToPath(new URL(`../../${name}`, import.meta.url))).value;
      const records = (read?.files ?? []).filter(
        ({ file }) => schemaLine(file) !== undefined || file.startsWith('jobs/'),
      );
      expect(records.length).toBeGreaterThan(3);
      for (const { file, text } of records)
        expect({ file, faults: faults(kindOf(file), readDocument({ file, text }).value?.data) }).toEqual({
          file,
          faults: [],
        });
    },
  );

  test('editors are given the schemas of what a person writes, and each names what it is for', () => {
    const given = Object.entries(editorSchemas());
    expect(given.map(([file]) => file)).toContain('.schema/machine.json');
    for (const [, text] of given) {
      expect(text).toContain('"description"');
      expect(text).toContain('"examples"');
    }
    expect(schemaLine('maker/book.yaml')).toBe('# yaml-language-server: $schema=../.schema/maker.json');
    expect(schemaLine('story.md')).toBeUndefined();
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
