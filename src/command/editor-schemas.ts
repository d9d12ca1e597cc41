// JSON Schemas for editors: files that lie hidden in the machine folder, and the line at the head of a record that names one.
import { recordSchemas } from '../records/schema.ts';

/** Hidden from the reader of records, as everything is whose name begins with a point. */
const place = '.schema';

/** Which schema a file of a machine goes by; `job` is for the keys at the head of a job record. */
const kinds: readonly (readonly [kind: string, files: RegExp])[] = [
  ['machine', /^machine\.yaml$/u],
  ['maker', /^maker\/.+\.ya?ml$/u],
  ['instruments', /^instruments\.yaml$/u],
  ['wiring', /^wiring\.yaml$/u],
  ['workshop', /^workshop\.yaml$/u],
  ['job', /^jobs\/.+\.md$/u],
];

/** The schemas by their path in the machine folder. */
export function editorSchemas(): Readonly<Record<string, string>> {
  const wanted = new Set(kinds.map(([kind]) => kind));
  const found = recordSchemas().filter(({ id }) => wanted.has(id));
  return Object.fromEntries(
    found.map(({ id, schema }) => [`${place}/${id}.json`, JSON.stringify(schema, null, 1) + '\n']),
  );
}

/** The comment by which YAML editors find the schema of a record; undefined for a file that has none, and for job records, which are not YAML alone. */
export function schemaLine(file: string): string | undefined {
  const kind = kinds.find(([, files]) => files.test(file))?.[0];
  const up = '../'.repeat(file.split('/').length - 1);
  return kind === undefined || kind === 'job'
    ? undefined
    : `# yaml-language-server: $schema=${up}${place}/${kind}.json`;
}
