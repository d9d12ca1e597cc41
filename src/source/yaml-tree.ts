// YAML text to a tree, fast: js-yaml with its failsafe schema, so that `12.50`, `0123` and `1:48` keep their text.
import { FAILSAFE_SCHEMA, YAMLException, load } from 'js-yaml';
import { markUnknown, unmarkUnknown } from './bare-unknown.ts';
import { plainYaml } from './plain-yaml.ts';
import { isTree, type Tree } from './tree.ts';

/** What a first reading gave: the tree, or the reader's complaint (placed properly by yaml-problems.ts). */
export type YamlReading =
  | { readonly ok: true; readonly tree: Tree }
  | { readonly ok: false; readonly reason: string; readonly line: number; readonly column: number };

/** No record nests deeper by hand; a parser given thousands of brackets can take the whole process with it. */
const deepest = 40;

/** Reads YAML; never throws for what a file contains. Line and column of a complaint are 1-based within `text`. */
export function yamlTree(text: string): YamlReading {
  const plain = plainYaml(text);
  return plain === undefined ? wholeYamlTree(text) : { ok: true, tree: plain };
}

/** The same by the whole parser, whatever the text is like. */
export function wholeYamlTree(text: string): YamlReading {
  const deep = tooDeep(text);
  if (deep !== undefined) return { ok: false, reason: 'too deep', ...deep };
  try {
    const marked = markUnknown(text);
    const tree = load(marked, { schema: FAILSAFE_SCHEMA }) ?? null;
    if (isTree(tree)) return { ok: true, tree: marked === text ? tree : unmarkUnknown(tree) };
  } catch (error) {
    if (error instanceof RangeError) return { ok: false, reason: 'too deep', line: 1, column: 1 };
    if (!(error instanceof YAMLException)) throw error;
    const mark = error.mark ?? { line: 0, column: 0 };
    return { ok: false, reason: error.reason, line: (mark.line ?? 0) + 1, column: (mark.column ?? 0) + 1 };
  }
  throw new Error('the YAML reader gave something that is not text, list or map');
}

/** Anchors, aliases and tags begin so; whether they are any, the slow parser says. */
export const mayBeAnchor = /(?:^|[\s,[{:?-])[&*!]\S/u;
/** An empty key, a key that begins with a question mark, a list begun inside a list on one line: parsers do not read these alike. */
export const mayBeOdd = /(?:^|[\n,[{-])[ \t]*(?:\?(?=\s|$)|:(?=\s|$))|-[ \t]+-(?=\s|$)/u;

function tooDeep(text: string): { line: number; column: number } | undefined {
  let depth = 0;
  for (let i = 0; i < text.length; i += 1) {
    const c = text.charCodeAt(i);
    if (c === 0x5b || c === 0x7b) depth += 1;
    else if ((c === 0x5d || c === 0x7d) && depth > 0) depth -= 1;
    else if (c === 0x0a && depth === 0) continue;
    if (depth > deepest) return lineAndColumn(text, i);
  }
  return undefined;
}

/** 1-based line and column of an offset. */
export function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset);
  return { line: before.split('\n').length, column: offset - before.lastIndexOf('\n') };
}
