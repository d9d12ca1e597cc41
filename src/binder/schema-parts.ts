// The building blocks of the JSON Schema of data/binder.json.

export type Schema = {
  readonly [key: string]: Schema | readonly Schema[] | readonly string[] | string | number | boolean;
};

export const text: Schema = { type: 'string' };
export const day: Schema = { type: 'string', pattern: String.raw`^\d{4}-\d{2}-\d{2}$` };
export const number: Schema = { type: 'number' };
export const whole: Schema = { type: 'integer' };
export const flag: Schema = { type: 'boolean' };

/** A part that is described once, under `$defs`. */
export function ref(name: string): Schema {
  return { $ref: `#/definitions/${name}` };
}

export function list(items: Schema): Schema {
  return { type: 'array', items };
}

export function oneOf(...words: readonly string[]): Schema {
  return { enum: words };
}

export function either(...schemas: readonly Schema[]): Schema {
  return { anyOf: schemas };
}

const coveredArea = object({
  left: ref('measure'),
  top: ref('measure'),
  width: ref('measure'),
  height: ref('measure'),
});

/** Lines of a job; `cover` are the parts of a picture that are black in the buyer's copy. */
export const jobLine = {
  photo: object(
    { file: text, caption: text, private: flag, at: ref('place') },
    { before: flag, cover: list(coveredArea) },
  ),
  correction: object(
    { record: text, item: text, was: text, is: text, why: text, at: ref('place') },
    { position: text },
  ),
} as const;

/** Any key, each with the same kind of value. */
export function byName(value: Schema): Schema {
  return { type: 'object', additionalProperties: value };
}

/** An object of exactly these keys; the second group may be absent. */
export function object(
  required: Readonly<Record<string, Schema>>,
  optional: Readonly<Record<string, Schema>> = {},
): Schema {
  return {
    type: 'object',
    properties: { ...required, ...optional },
    required: Object.keys(required),
    additionalProperties: false,
  };
}
