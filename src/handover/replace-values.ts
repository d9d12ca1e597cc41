// Values of a record taken out by their places: each one gives way to a few letters, every other byte stays as it is.
import { cleanText } from '../source/clean-text.ts';
import type { SourceFile } from '../source/files.ts';
import { parseWithPlaces, yamlPackage } from '../source/slow-parser.ts';

/** `by` is YAML on one line, put where the value at `path` stands. */
export interface Replacement {
  readonly path: readonly (string | number)[];
  readonly by: string;
}

/** The text with the values replaced; one that cannot be found, or lies inside another, is passed over. */
export function replaceValues(record: SourceFile, replacements: readonly Replacement[]): string {
  if (replacements.length === 0) return record.text;
  const clean = cleanText(record.text);
  const { from, to } = yamlPart(clean, record.file);
  const top: unknown = parseWithPlaces(clean.slice(from, to)).document.contents;
  const found = replacements.flatMap(({ path, by }) => {
    const range = rangeAt(top, path);
    return range === undefined ? [] : [{ start: range[0] + from, end: range[1] + from, by }];
  });
  const sorted = found.toSorted((a, b) => a.start - b.start || b.end - a.end);
  const outer = sorted.filter((one, at) => !sorted.some((other, earlier) => earlier < at && one.start < other.end));
  const raw = rawOffsets(record.text);
  let text = record.text;
  for (const { start, end, by } of outer.toReversed()) {
    text = text.slice(0, raw(start)) + by + text.slice(raw(end));
  }
  return text;
}

function yamlPart(clean: string, file: string): { readonly from: number; readonly to: number } {
  if (/\.ya?ml$/iu.test(file)) return { from: 0, to: clean.length };
  if (!clean.startsWith('---')) return { from: 0, to: 0 };
  const from = clean.indexOf('\n') + 1;
  const close = clean.indexOf('\n---', from - 1);
  return { from, to: close < 0 ? clean.length : Math.max(from, close + 1) };
}

function rangeAt(top: unknown, path: readonly (string | number)[]): readonly [number, number] | undefined {
  const yaml = yamlPackage();
  const node = path.reduce<unknown>((now, step) => {
    if (yaml.isMap(now))
      return now.items.find(({ key }) => yaml.isScalar(key) && String(key.value) === String(step))?.value;
    return yaml.isSeq(now) ? now.items[Number(step)] : undefined;
  }, top);
  if (!yaml.isNode(node) || node.range === null || node.range === undefined) return undefined;
  return yaml.isCollection(node) && node.flow !== true
    ? [node.range[0], endOfBlock(node)]
    : [node.range[0], node.range[1]];
}

/** A block ends with its last value, not with the comments and empty lines after it. */
function endOfBlock(node: unknown): number {
  const yaml = yamlPackage();
  if (yaml.isCollection(node) && node.flow !== true) {
    const last: unknown = node.items.at(-1);
    return endOfBlock(yaml.isPair(last) ? (last.value ?? last.key) : last);
  }
  return yaml.isNode(node) ? (node.range?.[1] ?? 0) : 0;
}

/** Offsets of cleaned text in the text as it was saved: a byte order mark, and line ends of two characters. */
function rawOffsets(raw: string): (offset: number) => number {
  const mark = raw.charCodeAt(0) === 0xfeff ? 1 : 0;
  if (!raw.includes('\r')) return (offset) => offset + mark;
  return (offset) => {
    let at = mark;
    for (let left = offset; left > 0; left -= 1) at += raw.charAt(at) === '\r' && raw.charAt(at + 1) === '\n' ? 2 : 1;
    return at;
  };
}
