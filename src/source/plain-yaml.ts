// Front matter as people mostly write it, read line by line: keys, lists one step in, and lists or groups in brackets on one line. Four times as fast as
// a whole parser; whatever is not surely read the same by that one is left to it (a property test holds the two equal).
import { flowAt } from './plain-flow.ts';
import { plainScalar } from './plain-scalar.ts';
import type { Branch, Tree } from './tree.ts';

/** Where the reading stands: the next line that says something. */
interface Reader {
  readonly lines: string[];
  at: number;
}

/** Tabs, line ends of other systems, and characters that a parser may refuse: not ours. */
const unusual = /[^\n -~\u00a0-\u2027\u2030-\ud7ff]/u;
const keyed = /^([A-Za-z][\w()./ -]*):(?: +(.*))?$/;

/** The tree of `text`; undefined where the text is not plain, which says nothing about whether it is right. */
export function plainYaml(text: string): Branch | undefined {
  if (unusual.test(text)) return undefined;
  const reader: Reader = { lines: text.split('\n'), at: -1 };
  next(reader);
  if (indentOf(reader) !== 0) return undefined;
  const tree = mapAt(reader, 0);
  return reader.at < reader.lines.length ? undefined : tree;
}

/** On to the next line that is neither empty nor a remark. */
function next(reader: Reader): void {
  const { lines } = reader;
  do reader.at += 1;
  while (reader.at < lines.length && /^ *(?:#[^[{]*)?$/.test(lines[reader.at] ?? ''));
}

/** Spaces before the line; -1 at the end. */
function indentOf({ lines, at }: Reader): number {
  const line = lines[at];
  if (line === undefined) return -1;
  let indent = 0;
  while (line.charCodeAt(indent) === 0x20) indent += 1;
  return indent;
}

function mapAt(reader: Reader, indent: number): Branch | undefined {
  const branch: Record<string, Tree> = {};
  for (let here = indent; here === indent; here = indentOf(reader)) {
    const match = keyed.exec((reader.lines[reader.at] ?? '').slice(indent));
    const key = match?.[1];
    if (key === undefined || key.endsWith(' ') || Object.hasOwn(branch, key)) return undefined;
    next(reader);
    const said = match?.[2] ?? '';
    const value = said === '' ? blockBelow(reader, indent) : valueOf(reader, said, indent);
    if (value === undefined) return undefined;
    branch[key] = value;
  }
  // Deeper than its neighbours: a line that belongs to something else.
  return indentOf(reader) > indent ? undefined : branch;
}

/** What stands below a key without a value: a group or a list further in, a list in the same column, or nothing. */
function blockBelow(reader: Reader, indent: number): Tree | undefined {
  const inner = indentOf(reader);
  const isList = (reader.lines[reader.at] ?? '').startsWith('- ', inner);
  if (inner < indent || (inner === indent && !isList)) return null;
  return isList ? listAt(reader, inner) : mapAt(reader, inner);
}

function listAt(reader: Reader, indent: number): readonly Tree[] | undefined {
  const list: Tree[] = [];
  for (let here = indent; here === indent; here = indentOf(reader)) {
    const line = reader.lines[reader.at] ?? '';
    if (!line.startsWith('- ', indent)) return list;
    const item = itemOf(reader, line.slice(indent + 2), indent);
    if (item === undefined) return undefined;
    list.push(item);
  }
  return indentOf(reader) > indent ? undefined : list;
}

function itemOf(reader: Reader, said: string, indent: number): Tree | undefined {
  const rest = said.replace(/^ +/, '');
  if (rest === '') return undefined;
  if (!keyed.test(rest)) {
    next(reader);
    return valueOf(reader, rest, indent);
  }
  // A group begun beside the dash: its other keys stand below its first.
  const column = indent + 2 + said.length - rest.length;
  reader.lines[reader.at] = ' '.repeat(column) + rest;
  return mapAt(reader, column);
}

/** A value beside its key or dash; a line further in would be its second, and that is not plain. */
function valueOf(reader: Reader, said: string, indent: number): Tree | undefined {
  if (indentOf(reader) > indent) return undefined;
  const first = said.charCodeAt(0);
  return first === 0x5b || first === 0x7b ? flowAt(said) : plainScalar(said);
}
