// A file as data and body: Markdown with front matter, or YAML from top to bottom.
import type { Outcome, Problem } from '../problem/problem.ts';
import { markUnknown } from './bare-unknown.ts';
import { cleanText, unreadableText } from './clean-text.ts';
import { conflictMarker } from './conflict-markers.ts';
import type { SourceFile } from './files.ts';
import { splitFrontMatter, type Split } from './front-matter.ts';
import { isBranch, type Branch } from './tree.ts';
import { oddProblems, yamlProblems } from './yaml-problems.ts';
import { mayBeAnchor, mayBeOdd, yamlTree } from './yaml-tree.ts';

export type { Branch, Tree } from './tree.ts';

export interface Document {
  readonly file: string;
  readonly data: Branch;
  /** Markdown, as written; empty for a YAML file. */
  readonly body: string;
  /** 1-based line on which the body begins. */
  readonly bodyLine: number;
}

/** Reads one file; `undefined` with at least one problem when its data cannot be read. */
export function readDocument(source: SourceFile): Outcome<Document | undefined> {
  const unreadable = unreadableText(source) ?? conflictMarker(source);
  if (unreadable !== undefined) return { value: undefined, problems: [unreadable] };
  const split = splitFile(source.file, cleanText(source.text));
  if ('code' in split) return { value: undefined, problems: [split] };
  const reading = yamlTree(split.yaml);
  if (!reading.ok)
    return { value: undefined, problems: yamlProblems(split.yaml, source.file, split.yamlLine, reading) };
  if (mayBeAnchor.test(split.yaml) || mayBeOdd.test(markUnknown(split.yaml))) {
    const problems = oddProblems(split.yaml, source.file, split.yamlLine, reading.tree);
    if (problems.length > 0) return { value: undefined, problems };
  }
  const data = reading.tree ?? {};
  if (!isBranch(data)) return { value: undefined, problems: [notKeys(source.file, split.yamlLine)] };
  return { value: { file: source.file, data, body: split.body, bodyLine: split.bodyLine }, problems: [] };
}

/** How a file divides: by its ending, `.yaml` is data throughout. */
export function splitFile(file: string, text: string): Split | Problem {
  if (!/\.ya?ml$/iu.test(file)) return splitFrontMatter(text, file);
  return { yaml: text, yamlLine: 1, body: '', bodyLine: text.split('\n').length };
}

function notKeys(file: string, line: number): Problem {
  return {
    code: 'front-matter-not-keys',
    severity: 'problem',
    at: { file, path: [], line, column: 1 },
    message: 'What stands here is a list or a piece of text, not keys with values.',
    hint: 'Write `key: value`, one a line.',
  };
}
