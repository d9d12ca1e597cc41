// A list or a group in brackets on one line, as people write them: `[owner, helper]`, `{item: ring gap, found: 0.35 mm}`.
import { plainScalar, quotedAt, withoutSpaces } from './plain-scalar.ts';
import type { Tree } from './tree.ts';

/** Deeper than anybody writes by hand on one line. */
const deepest = 8;

interface Reader {
  readonly text: string;
  at: number;
}

const name = /[A-Za-z][\w()./ -]*: +/y;
const signs: ReadonlySet<number> = new Set([',', '[', ']', '{', '}'].map((sign) => sign.charCodeAt(0)));

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
  const said = wordAt(reader.text, reader.at);
  // Our mark for what is not known is seen only with a space or the bracket before it.
  if (withoutSpaces(said) === '?' && !/[ []/.test(reader.text[reader.at - 1] ?? '')) return undefined;
  reader.at += said.length;
  return plainScalar(said);
}

/** Up to the next sign; there are thousands of values, and what a pattern finds would be made for each. */
function wordAt(text: string, from: number): string {
  let end = from;
  while (end < text.length && !signs.has(text.charCodeAt(end))) end += 1;
  return text.slice(from, end);
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

/** A key with its colon and the spaces after it; undefined where none is, or where a space stands before the colon. */
function keyAt(reader: Reader): string | undefined {
  const { text, at } = reader;
  name.lastIndex = at;
  if (!name.test(text)) return undefined;
  reader.at = name.lastIndex;
  let colon = reader.at - 1;
  while (text.charCodeAt(colon) === 0x20) colon -= 1;
  return text.charCodeAt(colon - 1) === 0x20 ? undefined : text.slice(at, colon);
}

function groupAt(reader: Reader, depth: number): Tree | undefined {
  const group: Record<string, Tree> = {};
  if (isEmpty(reader, '}')) return group;
  for (;;) {
    const key = keyAt(reader);
    if (key === undefined || Object.hasOwn(group, key)) return undefined;
    const value = valueAt(reader, depth + 1);
    if (value === undefined) return undefined;
    group[key] = value;
    const more = goesOn(reader, '}');
    if (more !== true) return more === false ? group : undefined;
  }
}
