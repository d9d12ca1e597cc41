// A list or a group in brackets on one line, as people write them: `[owner, helper]`, `{item: ring gap, found: 0.35 mm}`.
import { plainScalar, quotedAt, withoutSpaces } from './plain-scalar.ts';
import type { Tree } from './tree.ts';

/** Deeper than anybody writes by hand on one line. */
const deepest = 8;

interface Reader {
  readonly text: string;
  at: number;
}

const name = /([A-Za-z][\w()./ -]*): +/y;
const word = /[^,[\]{}]+/y;

/** The tree of a text that begins with a bracket; undefined where it is not plain or more follows. */
export function flowAt(text: string): Tree | undefined {
  const reader = { text: withoutSpaces(text), at: 0 };
  const tree = valueAt(reader, 0);
  return reader.at === reader.text.length ? tree : undefined;
}

function valueAt(reader: Reader, depth: number): Tree | undefined {
  const opening = reader.text[reader.at];
  if (depth > deepest) return undefined;
  if (opening === '[') return listAt(reader, depth);
  if (opening === '{') return groupAt(reader, depth);
  const quote = quotedAt(reader.text, reader.at);
  if (quote !== undefined) {
    reader.at += quote.length;
    return quote.slice(1, -1);
  }
  word.lastIndex = reader.at;
  const said = word.exec(reader.text)?.[0] ?? '';
  // Our mark for what is not known is seen only with a space or the bracket before it.
  if (withoutSpaces(said) === '?' && !/[ []/.test(reader.text[reader.at - 1] ?? '')) return undefined;
  reader.at += said.length;
  return plainScalar(said);
}

/** True when another entry follows; false at the end; undefined for anything else. */
function goesOn(reader: Reader, closing: string): boolean | undefined {
  pastSpaces(reader);
  const sign = reader.text[reader.at];
  reader.at += 1;
  if (sign === closing) return false;
  pastSpaces(reader);
  return sign === ',' ? true : undefined;
}

function pastSpaces(reader: Reader): void {
  while (reader.text.charCodeAt(reader.at) === 0x20) reader.at += 1;
}

function isEmpty(reader: Reader, closing: string): boolean {
  reader.at += 1;
  pastSpaces(reader);
  if (reader.text[reader.at] !== closing) return false;
  reader.at += 1;
  return true;
}

function listAt(reader: Reader, depth: number): Tree | undefined {
  const list: Tree[] = [];
  if (isEmpty(reader, ']')) return list;
  for (;;) {
    const value = valueAt(reader, depth + 1);
    if (value === undefined) return undefined;
    list.push(value);
    const more = goesOn(reader, ']');
    if (more !== true) return more === false ? list : undefined;
  }
}

function groupAt(reader: Reader, depth: number): Tree | undefined {
  const group: Record<string, Tree> = {};
  if (isEmpty(reader, '}')) return group;
  for (;;) {
    name.lastIndex = reader.at;
    const match = name.exec(reader.text);
    const key = match?.[1];
    if (match === null || key === undefined || key.endsWith(' ') || Object.hasOwn(group, key)) return undefined;
    reader.at += match[0].length;
    const value = valueAt(reader, depth + 1);
    if (value === undefined) return undefined;
    group[key] = value;
    const more = goesOn(reader, '}');
    if (more !== true) return more === false ? group : undefined;
  }
}
