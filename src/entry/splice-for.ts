// Where in the YAML text an edit goes: one splice, that touches no other value, no comment and no order of keys.
import type { Node, Pair, Scalar, YAMLMap, YAMLSeq } from 'yaml';
import { parseWithPlaces, yamlPackage } from '../source/slow-parser.ts';
import { flowText, scalarText } from './flow-text.ts';
import type { RecordEdit } from './record-edit.ts';
import { spliceOut } from './splice-out.ts';
import { isBranch, type Tree } from '../source/tree.ts';

/** `remove` characters at `at` give way to `insert`. */
export interface Splice {
  readonly at: number;
  readonly remove: number;
  readonly insert: string;
}

/** An edit that puts something in. */
type Putting = Exclude<RecordEdit, { readonly kind: 'remove' }>;

/** The splice for an edit of `yaml`; undefined where the text is written in a way that this does not know. */
export function spliceFor(yaml: string, edit: RecordEdit): Splice | undefined {
  const yamls = yamlPackage();
  const top: unknown = parseWithPlaces(yaml).document.contents;
  if (edit.kind === 'remove') {
    const at = pairOf(walk(top, edit.path), edit.key);
    return at !== undefined && yamls.isSeq(at.value) ? spliceOut(yaml, at, at.value, edit.index) : undefined;
  }
  if (top === null && edit.path.length === 0) return { at: yaml.length, remove: 0, insert: `${lineOf(edit)}\n` };
  const map = walk(top, edit.path);
  if (!yamls.isMap(map)) return undefined;
  const pair = pairOf(map, edit.key);
  if (pair === undefined) return newKey(yaml, map, edit);
  const { value } = pair;
  if (isEmpty(value)) return afterColon(yaml, pair, edit);
  if (edit.kind === 'set') return yamls.isScalar(value) ? replaced(value, edit.value) : undefined;
  if (yamls.isScalar(value)) return replaced(value, [edit.item]);
  return yamls.isSeq(value) ? added(yaml, value, edit.item) : undefined;
}

function pairOf(map: unknown, key: string): Pair<unknown, unknown> | undefined {
  return yamlPackage().isMap(map) ? map.items.find((one) => keyOf(one) === key) : undefined;
}

function walk(top: unknown, path: RecordEdit['path']): unknown {
  const yamls = yamlPackage();
  return path.reduce<unknown>((node, step) => {
    if (yamls.isMap(node)) return node.items.find((one) => keyOf(one) === String(step))?.value;
    return yamls.isSeq(node) ? node.items[Number(step)] : undefined;
  }, top);
}

function keyOf(pair: Pair<unknown, unknown>): string {
  return yamlPackage().isScalar(pair.key) ? String(pair.key.value) : '';
}

function isEmpty(value: unknown): boolean {
  if (value === null || value === undefined) return true;
  const yamls = yamlPackage();
  return yamls.isScalar(value) && value.type === 'PLAIN' && value.source === '';
}

/** A block scalar ends a line further down than its text; it is not replaced here. */
function replaced(value: Scalar, by: Tree): Splice | undefined {
  if (value.type === 'BLOCK_FOLDED' || value.type === 'BLOCK_LITERAL') return undefined;
  const range = rangeOf(value);
  return range === undefined ? undefined : { at: range[0], remove: range[1] - range[0], insert: flowText(by) };
}

function afterColon(yaml: string, pair: Pair<unknown, unknown>, edit: Putting): Splice | undefined {
  const key = yamlPackage().isNode(pair.key) ? rangeOf(pair.key) : undefined;
  const colon = key === undefined ? -1 : yaml.indexOf(':', key[1]);
  if (key === undefined || colon < 0 || yaml.slice(key[1], colon).trim() !== '') return undefined;
  return { at: colon + 1, remove: 0, insert: ` ${valueOf(edit)}` };
}

function valueOf(edit: Putting): string {
  return edit.kind === 'set' ? flowText(edit.value) : flowText([edit.item]);
}

/** A new list of maps begins one item a line, as a person would write it. */
function lineOf(edit: Putting, indent = ''): string {
  const key = scalarText(edit.key);
  if (edit.kind === 'add' && (edit.oneALine === true || isBranch(edit.item)))
    return `${key}:\n${indent}  - ${flowText(edit.item)}`;
  return `${key}: ${valueOf(edit)}`;
}

function newKey(yaml: string, map: YAMLMap, edit: Putting): Splice | undefined {
  const last = map.items.at(-1);
  if (map.flow === true) {
    const insert = `${scalarText(edit.key)}: ${valueOf(edit)}`;
    if (last === undefined) return { at: (map.range?.[0] ?? 0) + 1, remove: 0, insert };
    const end = endOfPair(yaml, last);
    return end === undefined ? undefined : { at: end, remove: 0, insert: `, ${insert}` };
  }
  const first = map.items[0]?.key;
  const start = yamlPackage().isNode(first) ? rangeOf(first)?.[0] : undefined;
  if (start === undefined) return undefined;
  const indent = ' '.repeat(start - lineStart(yaml, start));
  const at = edit.path.length === 0 ? yaml.length : lineAfter(yaml, lastPlace(map));
  return at === undefined ? undefined : newLine(yaml, at, indent + lineOf(edit, indent));
}

/** In a list: after its last item, on the same line in brackets, on a line of its own otherwise. */
function added(yaml: string, list: YAMLSeq, item: Tree): Splice | undefined {
  const text = flowText(item);
  const last = list.items.at(-1);
  if (list.flow === true) {
    if (last === undefined) return { at: (list.range?.[0] ?? 0) + 1, remove: 0, insert: text };
    const end = lastPlace(last);
    return end === undefined ? undefined : { at: end, remove: 0, insert: `, ${text}` };
  }
  const start = list.range?.[0];
  const at = lineAfter(yaml, lastPlace(list));
  if (start === undefined || at === undefined || yaml.charAt(start) !== '-') return undefined;
  return newLine(yaml, at, `${' '.repeat(start - lineStart(yaml, start))}- ${text}`);
}

function endOfPair(yaml: string, pair: Pair<unknown, unknown>): number | undefined {
  if (!isEmpty(pair.value)) return lastPlace(pair.value);
  const key = lastPlace(pair.key);
  if (key === undefined) return undefined;
  const colon = /^\s*:/u.exec(yaml.slice(key));
  return key + (colon?.[0].length ?? 0);
}

/** Where the last character of a node stands, past it; of a block, that of what stands last in it. */
function lastPlace(node: unknown): number | undefined {
  const yamls = yamlPackage();
  if (yamls.isCollection(node) && node.flow !== true) {
    const last: unknown = node.items.at(-1);
    if (!yamls.isPair(last)) return last === undefined ? undefined : lastPlace(last);
    return isEmpty(last.value) ? lastPlace(last.key) : lastPlace(last.value);
  }
  return yamls.isNode(node) ? rangeOf(node)?.[1] : undefined;
}

function rangeOf(node: Node): readonly [number, number] | undefined {
  return node.range === null || node.range === undefined ? undefined : [node.range[0], node.range[1]];
}

function lineStart(text: string, at: number): number {
  return text.lastIndexOf('\n', at - 1) + 1;
}

/** The beginning of the line after a place; a block scalar ends there already. */
function lineAfter(text: string, at: number | undefined): number | undefined {
  if (at === undefined) return undefined;
  if (at > 0 && text.charAt(at - 1) === '\n') return at;
  const end = text.indexOf('\n', at);
  return end < 0 ? text.length : end + 1;
}

function newLine(text: string, at: number, line: string): Splice {
  const begin = at > 0 && text.charAt(at - 1) !== '\n' ? '\n' : '';
  return { at, remove: 0, insert: `${begin}${line}\n` };
}
