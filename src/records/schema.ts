// JSON Schema of each kind of record, for editors that complete and check while one writes. Made from the same descriptions as the readers.
import { z } from 'zod';
import { contentKinds } from './content-kinds/list.ts';
import { recordKinds } from './kinds/list.ts';
import type { ToldKind } from './kinds/record-kind.ts';
import type { Told, ToldField } from './shapes/shape.ts';

/** An editor's YAML reads `8` as a number and `yes` as text or truth; a record means the text either way. */
const scalar = z.union([z.string(), z.number(), z.boolean()]);
const yesNo = z.union([z.enum(['yes', 'no']), z.boolean()]);

/** One schema for each kind, in the order of the shelves; JSON Schema 2020-12. */
export function recordSchemas(): readonly { readonly id: string; readonly files: string; readonly schema: object }[] {
  return [...recordKinds, ...contentKinds].map((kind) => ({
    id: kind.id,
    files: kind.files,
    schema: schemaOf(kind),
  }));
}

/** The JSON Schema of one kind. */
export function schemaOf(kind: ToldKind): object {
  const type = typeOf(kind.shape.told).meta({ title: `Splitpin: ${kind.files}`, description: kind.purpose });
  return z.toJSONSchema(type, { io: 'input' });
}

function typeOf(told: Told): z.ZodType {
  switch (told.kind) {
    case 'text':
      return maybePrivate(scalar, told.written);
    case 'choice':
      return maybePrivate(wordOf(told.words), undefined);
    case 'list':
      return z.array(typeOf(told.of));
    case 'map':
      return z.record(z.string(), z.union([typeOf(told.of), z.null()])).describe(told.keys);
    case 'either':
      return z.union(told.of.map(typeOf));
    case 'record':
      return z.strictObject(Object.fromEntries(told.fields.map((field) => [field.key, fieldType(field)])));
  }
}

function fieldType(field: ToldField): z.ZodType {
  const example = field.example === undefined ? {} : { examples: [field.example] };
  const about = { description: field.says, ...example };
  const type = typeOf(field.value);
  if (field.needed) return type.meta(about);
  return z
    .union([type, z.literal('?'), z.literal('none'), z.null()])
    .optional()
    .meta(about);
}

function wordOf(words: readonly string[]): z.ZodType {
  if (words.includes('yes')) return words.includes('?') ? z.union([yesNo, z.literal('?')]) : yesNo;
  const word = z.enum(words);
  const numeric = words.filter((one) => /^\d+$/u.test(one)).map(Number);
  return numeric.length === 0 ? word : z.union([word, z.literal(numeric)]);
}

function maybePrivate(type: z.ZodType, written: string | undefined): z.ZodType {
  const plain = written === undefined ? type : type.describe(written);
  return z.union([plain, z.strictObject({ value: type, private: yesNo })]);
}
