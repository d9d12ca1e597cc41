// Line and column of a place, found on demand: only errors and shown origins need them.
import type { Node, Pair } from 'yaml';
import type { Place } from '../problem/problem.ts';
import { cleanText } from './clean-text.ts';
import { splitFile } from './document.ts';
import { quickPlaces, type Placed } from './quick-places.ts';
import { parseWithPlaces, yamlPackage } from './slow-parser.ts';
import { lineAndColumn } from './yaml-tree.ts';

/** 1-based line and column in the text as an editor shows it, and how many characters to point at (at least 1, on one line). */
export interface Position {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

/** Finds a place in the text of its file. A key that is not there gives the deepest thing that is. */
export function locate(text: string, place: Place): Position {
  const clean = cleanText(text);
  const lines = clean.split('\n');
  const toLineEnd = (line: number, column: number): number =>
    Math.max((lines[line - 1] ?? '').trimEnd().length - column + 1, 1);
  if (place.line !== undefined) {
    const column = place.column ?? 1;
    return { line: place.line, column, length: toLineEnd(place.line, column) };
  }
  const split = splitFile(place.file, clean);
  if (place.path.length === 0 || 'code' in split) return { line: 1, column: 1, length: toLineEnd(1, 1) };
  const quick = quickPlaces(split.yaml);
  const range =
    quick === undefined ? slowRange(parseWithPlaces(split.yaml).document.contents, place) : quickRange(quick, place);
  if (range === undefined) return { line: 1, column: 1, length: toLineEnd(1, 1) };
  const start = lineAndColumn(split.yaml, range[0]);
  const line = start.line + split.yamlLine - 1;
  const length = Math.min(Math.max(range[1] - range[0], 1), toLineEnd(line, start.column));
  return { line, column: start.column, length };
}

type Range = readonly [number, number];

/** The place by the fast parser, whose tree is `top`; a property test holds it to what `slowRange` says. */
export function quickRange(top: Placed, place: Place): Range | undefined {
  let node: Placed | undefined = top;
  let best: Range | undefined;
  for (const [depth, step] of place.path.entries()) {
    const entry: ReturnType<Placed['entries']['get']> = node.entries.get(String(step));
    const next: Placed | undefined = entry === undefined ? node.items[Number(step)] : entry.value;
    if (entry !== undefined) best = [entry.key.start, entry.key.end];
    if (entry !== undefined && place.atKey === true && depth === place.path.length - 1) return best;
    if (next === undefined) return best;
    // An empty value has no characters to point at; its key has.
    if (next.end > next.start) best = [next.start, next.end];
    node = next;
  }
  return best;
}

/** The place by the parser that knows all of YAML. */
export function slowRange(top: Node | null, place: Place): Range | undefined {
  const yaml = yamlPackage();
  let node: unknown = top;
  let best: Range | undefined;
  for (const [depth, step] of place.path.entries()) {
    if (yaml.isMap(node)) {
      const pair = node.items.find((item) => keyText(item) === String(step));
      if (pair === undefined) return best;
      const last = depth === place.path.length - 1;
      if (yaml.isNode(pair.key)) best = rangeOf(pair.key) ?? best;
      if (last && place.atKey === true) return best;
      node = pair.value;
    } else if (yaml.isSeq(node)) {
      node = node.items[Number(step)];
    } else {
      return best;
    }
    // An empty value has no characters to point at; its key has.
    const range = yaml.isNode(node) ? rangeOf(node) : undefined;
    if (range !== undefined && range[1] > range[0]) best = range;
  }
  return best;
}

function keyText(pair: Pair<unknown, unknown>): string {
  const yaml = yamlPackage();
  return yaml.isScalar(pair.key) ? String(pair.key.value) : '';
}

function rangeOf(node: Node): Range | undefined {
  return node.range === null || node.range === undefined ? undefined : [node.range[0], node.range[1]];
}
