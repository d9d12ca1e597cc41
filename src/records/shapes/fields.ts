// Groups of keys: each field says what it is for; keys that nobody knows are refused, and everything wrong is told at once.
import type { Place } from '../../problem/problem.ts';
import { isBranch, type Branch, type Tree } from '../../source/tree.ts';
import { nearest } from '../nearest.ts';
import { cutAtComma } from './cut-at-comma.ts';
import { placeOf, refuse, type Desk, type Spot } from './desk.ts';
import { proposed } from './proposed.ts';
import { lookedThrough, readInside, type Shape, type ToldField } from './shape.ts';

type Presence = 'needed' | 'optional' | 'filled in';

export interface Field<T, P extends Presence = Presence> {
  readonly shape: Shape<T>;
  readonly presence: P;
  readonly says: string;
  readonly example?: string;
  /** Key in the file; without it, the name with spaces for capitals (`wayRound` is `way round`). */
  readonly key?: string;
  /** What counts when the key is not there. */
  readonly otherwise?: T;
}

export type Fields = Readonly<Record<string, Field<unknown>>>;
type Says = Pick<Field<unknown>, 'example' | 'key'>;

/** A key that must be there. */
export function need<T>(shape: Shape<T>, says: string, more: Says = {}): Field<T, 'needed'> {
  return { shape, presence: 'needed', says, ...more };
}
/** A key that may be left out, or be `?` or empty: then the value is absent. */
export function may<T>(shape: Shape<T>, says: string, more: Says = {}): Field<T, 'optional'> {
  return { shape, presence: 'optional', says, ...more };
}
/** A key that may be left out: then `otherwise` counts. */
export function or<T>(shape: Shape<T>, otherwise: T, says: string, more: Says = {}): Field<T, 'filled in'> {
  return { shape, presence: 'filled in', otherwise, says, ...more };
}

type ValueOf<F> = F extends Field<infer T> ? T : never;
type OptionalNames<F extends Fields> = {
  [K in keyof F]: F[K] extends Field<unknown, 'optional'> ? K : never;
}[keyof F];
/** What a group of fields gives. */
export type Out<F extends Fields> = { readonly [K in Exclude<keyof F, OptionalNames<F>>]: ValueOf<F[K]> } & {
  readonly [K in OptionalNames<F>]?: ValueOf<F[K]>;
};

/** A group of fields by what is asked of them; `F` tells whose they are. */
interface Group<F extends Fields = Fields> {
  readonly fields: F;
  /** Names that are there in every group that was read. */
  readonly always: readonly string[];
  readonly byKey: ReadonlyMap<string, readonly [name: string, field: Field<unknown>]>;
  readonly needed: readonly (readonly [name: string, key: string, field: Field<unknown>])[];
  readonly filled: readonly (readonly [name: string, field: Field<unknown>])[];
  readonly told: readonly ToldField[];
}

/** A group of keys. */
export function group<const F extends Fields>(fields: F): Shape<Out<F>> {
  const keys = groupOf(fields);
  return {
    read: (tree, spot, desk) => {
      const found: Record<string, unknown> = {};
      return fill(found, keys, tree, spot, desk) && isFilled(found, keys) ? found : undefined;
    },
    told: { kind: 'record', fields: keys.told },
  };
}

/** The keys of a whole file: what could be read is given even when some of it was refused. */
export function wholeFile<const F extends Fields>(fields: F): Shape<Out<F>> {
  const keys = groupOf(fields);
  return {
    read: (tree, spot, desk) => {
      const found: Record<string, unknown> = {};
      fill(found, keys, tree, spot, desk);
      return isFilled(found, keys) ? found : undefined;
    },
    told: { kind: 'record', fields: keys.told },
  };
}

/** A group of keys that keeps its place, so that what follows from it can point back. */
export function entry<const F extends Fields>(fields: F): Shape<Out<F> & { readonly at: Place }> {
  const keys = groupOf(fields);
  return {
    read: (tree, spot, desk) => {
      const found: Record<string, unknown> & { readonly at: Place } = { at: placeOf(desk, spot) };
      return fill(found, keys, tree, spot, desk) && isFilled(found, keys) ? found : undefined;
    },
    told: { kind: 'record', fields: keys.told },
  };
}

/** Every field that is always there is there; each was read by its own shape. */
function isFilled<T extends object, F extends Fields>(found: T, { always }: Group<F>): found is T & Out<F> {
  for (const name of always) if (!Object.hasOwn(found, name)) return false;
  return true;
}

function fill(found: Record<string, unknown>, keys: Group, tree: Tree, spot: Spot | undefined, desk: Desk): boolean {
  if (!isBranch(tree)) {
    const names = [...keys.byKey.keys()];
    const first = keys.needed[0]?.[1] ?? names[0] ?? '';
    const better = proposed({ kind: 'record', fields: keys.told }, tree) ?? `{${first}: …}`;
    const hint = `Write ${better}. Keys here: ${names.slice(0, 8).join(', ')}.`;
    refuse(desk, spot, 'value-not-keys', 'Keys with values are expected here.', hint);
    return false;
  }
  const before = desk.problems.length;
  const cut = cutAtComma(tree, spot, desk);
  for (const key of Object.keys(tree)) {
    if (cut.has(key)) continue;
    const known = keys.byKey.get(key);
    if (known === undefined) unknownKey(desk, { up: spot, key }, tree[key] ?? null, keys);
    else readField(found, known[0], known[1], tree[key] ?? null, { up: spot, key }, desk);
  }
  for (const [name, key, field] of keys.needed) if (!Object.hasOwn(found, name)) missing(desk, spot, tree, key, field);
  for (const [name, field] of keys.filled) if (!Object.hasOwn(found, name)) found[name] = field.otherwise;
  return desk.problems.length === before;
}

function readField(
  found: Record<string, unknown>,
  name: string,
  field: Field<unknown>,
  tree: Tree,
  spot: Spot,
  desk: Desk,
): void {
  const unknown = lookedThrough(tree) === '?' && field.shape.takesUnknown === undefined;
  const empty = tree === null || tree === '' || unknown;
  if (empty && field.presence !== 'needed' && !(tree === null && field.shape.takesUnknown === true)) return;
  const value = readInside(field.shape, tree, spot, desk);
  if (value !== undefined) found[name] = value;
}

function missing(desk: Desk, spot: Spot | undefined, tree: Branch, key: string, field: Field<unknown>): void {
  const example = field.example === undefined ? '' : ` For example \`${key}: ${field.example}\`.`;
  if (!Object.hasOwn(tree, key)) {
    refuse(
      desk,
      spot,
      'key-missing',
      `“${key}” is missing: ${field.says}.`,
      `Add the key “${key}”.${example}`,
      'at top',
    );
  } else if (tree[key] === '?') {
    refuse(
      desk,
      { up: spot, key },
      'value-needed',
      `“${key}” cannot stay unknown: ${field.says}.`,
      `Look, and write it.${example}`,
    );
  } else if (['', 'none', null].some((nothing) => nothing === tree[key]) && !isRefused(desk, { up: spot, key })) {
    refuse(
      desk,
      { up: spot, key },
      'value-missing',
      `Nothing is written after “${key}”.`,
      `Write ${field.says}.${example}`,
    );
  }
}

/** Its own shape has said already what is wrong with it. */
function isRefused(desk: Desk, spot: Spot): boolean {
  const path = placeOf(desk, spot).path.join('/');
  return desk.problems.some((problem) => problem.at.path.join('/') === path);
}

function unknownKey(desk: Desk, spot: Spot, value: Tree, keys: Group): void {
  const names = [...keys.byKey.keys()];
  const near = nearest(String(spot.key), names);
  // `saw: grey smoke, clearing` in braces: YAML ends the value at the comma.
  // `left: 0,35 mm` in braces does so too, and there no quotes are wanted but a point.
  const cutOff = /^\d/u.test(String(spot.key))
    ? 'In braces a comma ends the value: write decimals with a point, and thousands with a space.'
    : 'If it belongs to the text before the comma, put that text in quotes.';
  const known = value === null ? cutOff : `Keys here: ${names.join(', ')}.`;
  const hint = near.length > 0 ? `Did you mean ${near.map((name) => `“${name}”`).join(' or ')}?` : known;
  refuse(desk, spot, 'key-unknown', `“${spot.key}” is not a key that belongs here.`, hint, 'at key');
}

function groupOf<F extends Fields>(fields: F): Group<F> {
  const list = Object.entries(fields).map(([name, field]) => [name, field.key ?? spaced(name), field] as const);
  return {
    fields,
    always: list.filter(([, , field]) => field.presence !== 'optional').map(([name]) => name),
    byKey: new Map(list.map(([name, key, field]) => [key, [name, field]])),
    needed: list.filter(([, , field]) => field.presence === 'needed'),
    filled: list.filter(([, , field]) => field.presence === 'filled in').map(([name, , field]) => [name, field]),
    told: list.map(([, key, field]) => ({
      key,
      needed: field.presence === 'needed',
      says: field.says,
      ...(field.example === undefined ? {} : { example: field.example }),
      value: field.shape.told,
    })),
  };
}

function spaced(name: string): string {
  return name.replaceAll(/[A-Z]/gu, (capital) => ` ${capital.toLowerCase()}`);
}
