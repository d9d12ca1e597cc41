// JSON Schemas for editors: files that lie hidden in the machine folder, and the line at the head of a record that names one.
import { recordSchemas } from '../records/schema.ts';

/** Hidden from the reader of records, as everything is whose name begins with a point. */
const place = '.schema';

/** Kinds that a person writes in a machine folder; `job` is for the keys at the head of a job record. */
const kinds = ['machine', 'maker', 'instruments', 'job'] as const;

/** The schemas by their path in the machine folder, each with its last line ended. */
export function editorSchemas(): Readonly<Record<string, string>> {
  const known = new Map(recordSchemas().map(({ id, schema }) => [id, schema]));
  return Object.fromEntries(
    kinds.flatMap((kind) => {
      const schema = known.get(kind);
      return schema === undefined ? [] : [[`${place}/${kind}.json`, JSON.stringify(schema, null, 1) + '\n']];
    }),
  );
}

/** The comment by which YAML editors find the schema of a record; undefined for a file that has none. */
export function schemaLine(file: string): string | undefined {
  const kind = kindOf(file);
  const up = '../'.repeat(file.split('/').length - 1);
  return kind === undefined ? undefined : `# yaml-language-server: $schema=${up}${place}/${kind}.json`;
}

function kindOf(file: string): (typeof kinds)[number] | undefined {
  if (file === 'machine.yaml') return 'machine';
  if (file === 'instruments.yaml') return 'instruments';
  if (/^maker\/.+\.ya?ml$/u.test(file)) return 'maker';
  return /^jobs\/.+\.md$/u.test(file) ? 'job' : undefined;
}
