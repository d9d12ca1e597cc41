// Line and column of a place, found on demand: only errors and shown origins need them.
import type { Node, Pair } from 'yaml';
import type { Place } from '../problem/problem.ts';
import { cleanText } from './clean-text.ts';
import { splitFile } from './document.ts';
import type { Split } from './front-matter.ts';
import { quickPlaces, type Placed } from './quick-places.ts';
import { parseWithPlaces, yamlPackage } from './slow-parser.ts';

/** 1-based line and column in the text as an editor shows it, and how many characters to point at (at least 1, on one line). */
export interface Position {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

/** Finds a place in the text of its file. A key that is not there gives the deepest thing that is. */
export function locate(text: string, place: Place): Position {
  const parts = partsOf(text, place.file);
  const { lines, split } = parts;
  const toLineEnd = (line: number, column: number): number =>
    Math.max((lines[line - 1] ?? '').trimEnd().length - column + 1, 1);
  if (place.line !== undefined) {
    const column = place.column ?? 1;
    return { line: place.line, column, length: toLineEnd(place.line, column) };
  }
  if (place.path.length === 0 || 'code' in split) return { line: 1, column: 1, length: toLineEnd(1, 1) };
  parts.top ??= topOf(split.yaml);
  const range = 'quick' in parts.top ? quickRange(parts.top.quick, place) : slowRange(parts.top.slow, place);
  if (range === undefined) return { line: 1, column: 1, length: toLineEnd(1, 1) };
  const start = lineAndColumn(range[0], parts.starts, split);
  const line = start.line + split.yamlLine - 1;
  const length = Math.min(Math.max(range[1] - range[0], 1), toLineEnd(line, start.column));
  return { line, column: start.column, length };
}

interface Parts {
  readonly text: string;
  readonly file: string;
  readonly lines: readonly string[];
  /** Offset of each line in the cleaned text. */
  readonly starts: readonly number[];
  readonly split: ReturnType<typeof splitFile>;
  top?: Top;
}
type Top = { readonly quick: Placed } | { readonly slow: Node | null };

/** A file with ten thousand mistakes is taken apart once, not ten thousand times: places are asked for file by file. */
let latest: Parts | undefined;

function partsOf(text: string, file: string): Parts {
  if (latest?.text === text && latest.file === file) return latest;
  const clean = cleanText(text);
  const lines = clean.split('\n');
  const starts: number[] = [];
  let start = 0;
  for (const line of lines) {
    starts.push(start);
    start += line.length + 1;
  }
  latest = { text, file, lines, starts, split: splitFile(file, clean) };
  return latest;
}

function topOf(yaml: string): Top {
  const quick = quickPlaces(yaml);
  return quick === undefined ? { slow: parseWithPlaces(yaml).document.contents } : { quick };
}

/** 1-based line and column of an offset in the YAML of a file, whose lines begin at `starts` of the whole. */
function lineAndColumn(offset: number, starts: readonly number[], split: Split): { line: number; column: number } {
  const before = starts[split.yamlLine - 1] ?? 0;
  let [low, high] = [split.yamlLine - 1, starts.length];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((starts[middle] ?? 0) - before <= offset) low = middle;
    else high = middle;
  }
  return { line: low - split.yamlLine + 2, column: offset - ((starts[low] ?? 0) - before) + 1 };
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
