// What is wrong with YAML, in the owner's words and with its place: broken text, and what records may not use.
import type { Document, LineCounter } from 'yaml';
import type { ProblemCode } from '../problem/codes.ts';
import type { Problem } from '../problem/problem.ts';
import { markUnknown, unmarkUnknown } from './bare-unknown.ts';
import { leftOpen } from './left-open.ts';
import { parseWithPlaces, yamlPackage } from './slow-parser.ts';
import { isTree, type Tree } from './tree.ts';
import { mayBeOdd, type YamlReading } from './yaml-tree.ts';

interface Fault {
  readonly code: ProblemCode;
  readonly offset: number;
  readonly message: string;
  readonly hint: string;
}

const sayings: Readonly<Record<string, readonly [message: string, hint: string]>> = {
  BAD_INDENT: [
    'This line is not indented like the lines it belongs to.',
    'Keys of one group begin in the same column. If they do, look for a bracket or quote left open in the line above.',
  ],
  BLOCK_AS_IMPLICIT_KEY: [
    'There are two colons in this line, so it reads as a key inside a value.',
    'Put text with a colon in it in quotes: "a: b".',
  ],
  BAD_SCALAR_START: ['A value cannot begin with this character.', 'Put the value in quotes.'],
  MISSING_CHAR: [
    'A quote, bracket or brace is opened and never closed.',
    'Look from here upwards for the open one; close it, or put the text in quotes.',
  ],
  MULTILINE_IMPLICIT_KEY: [
    'This line is neither `key: value` nor part of the value before it.',
    'Put a colon and a space after the key, or indent the line under its key.',
  ],
};
/** Noticed lines after the quote, bracket or brace that was left open. */
const isOfSomethingOpen: ReadonlySet<string> = new Set(['BAD_INDENT', 'MISSING_CHAR']);
const neverClosed = [
  'This quote, bracket or brace is opened and never closed.',
  'Close it; if it belongs to the text, put the whole text in quotes.',
] as const;
const otherwise = [
  'The text here cannot be read as keys and values.',
  'Write `key: value`, one a line; put text with : # [ ] { } or quotes in it in quotes.',
] as const;

/** The problems of YAML text that begins on `firstLine` of `file`. `first` is what the fast reader said of it. */
export function yamlProblems(text: string, file: string, firstLine: number, first: YamlReading): readonly Problem[] {
  if (!first.ok && first.reason === 'too deep') {
    const at = { file, path: [], line: first.line + firstLine - 1, column: first.column };
    const hint = 'A value in a record is at most a few lists and groups deep.';
    return [
      { code: 'yaml-too-deep', severity: 'problem', at, message: 'Lists or groups are nested too deeply.', hint },
    ];
  }
  const { document, lines } = parseWithPlaces(text);
  const faults = [...brokenText(text, document.errors), ...forbidden(text, document)].sort(
    (a, b) => a.offset - b.offset,
  );
  if (faults.length === 0 && !first.ok) {
    const second = /\n---/u.exec(text);
    if (second !== null && first.reason.includes('single document')) {
      const at = { file, path: [], line: text.slice(0, second.index).split('\n').length + firstLine, column: 1 };
      const hint = 'Take the line `---` away.';
      return [
        {
          code: 'yaml-broken',
          severity: 'problem',
          at,
          message: 'A second document begins here; a file holds one.',
          hint,
        },
      ];
    }
    const at = { file, path: [], line: first.line + firstLine - 1, column: first.column };
    return [{ code: 'yaml-broken', severity: 'problem', at, message: otherwise[0], hint: otherwise[1] }];
  }
  return faults.map((fault) => placed(fault, lines, file, firstLine));
}

function placed({ code, offset, message, hint }: Fault, lines: LineCounter, file: string, firstLine: number): Problem {
  const { line, col } = lines.linePos(offset);
  const at = { file, path: [], line: line + firstLine - 1, column: Math.max(col, 1) };
  return { code, severity: 'problem', at, message, hint };
}

/** One broken place makes a parser stumble on, so only the first of these is told; tabs and double keys are all told. */
function brokenText(
  text: string,
  errors: readonly { readonly code: string; readonly pos: readonly [number, number] }[],
): readonly Fault[] {
  const tabs = errors.filter((e) => e.code === 'TAB_AS_INDENT');
  const twice = errors.filter((e) => e.code === 'DUPLICATE_KEY');
  const rest = errors.filter(
    (e) => !tabs.includes(e) && !twice.includes(e) && e.code !== 'TAG_RESOLVE_FAILED' && e.code !== 'BAD_ALIAS',
  );
  return [
    ...tabs.map((e) => ({
      code: 'yaml-tab' as const,
      offset: e.pos[0],
      message: 'A tab is used to indent; tabs count differently in every editor.',
      hint: 'Use spaces, two a step.',
    })),
    ...twice.map((e) => ({
      code: 'yaml-key-twice' as const,
      offset: e.pos[0],
      message: 'This key is written twice in one group; which one counts cannot be known.',
      hint: 'Keep one of the two.',
    })),
    ...(tabs.length > 0 ? [] : rest.slice(0, 1)).map((e) => {
      const opened = isOfSomethingOpen.has(e.code) ? leftOpen(text, e.pos[0]) : undefined;
      const [message, hint] = opened === undefined ? (sayings[e.code] ?? otherwise) : neverClosed;
      return { code: 'yaml-broken' as const, offset: opened ?? e.pos[0], message, hint };
    }),
  ];
}

/** Anchors, aliases and tags: YAML allows them, a record has no use for them, and they hide what a value is. */
function forbidden(text: string, document: Document): readonly Fault[] {
  const faults: Fault[] = [];
  const add = (code: ProblemCode, mark: string, end: number, what: string): void => {
    let offset = Math.max(text.lastIndexOf(mark, end), 0);
    // `!!binary` has two of them.
    while (text[offset - 1] === mark) offset -= 1;
    faults.push({
      code,
      offset,
      message: what,
      hint: `Write the value itself; if the text begins with ${mark}, put it in quotes.`,
    });
  };
  yamlPackage().visit(document, {
    Alias: (_key, node) =>
      add('yaml-alias', '*', node.range?.[0] ?? 0, 'An alias (*name) stands here; records do not use them.'),
    Node: (_key, node) => {
      const end = node.range?.[0] ?? 0;
      if ('anchor' in node && node.anchor !== undefined) {
        add('yaml-anchor', '&', end, 'An anchor (&name) stands here; records do not use them.');
      }
      if (node.tag !== undefined) add('yaml-tag', '!', end, 'A tag (!name) stands here; records do not use them.');
    },
  });
  return faults;
}

/** For text that the fast reader took, but that may hold what records do not use: the problems, if it does. */
export function oddProblems(text: string, file: string, firstLine: number, tree: Tree): readonly Problem[] {
  const { document, lines } = parseWithPlaces(text);
  const faults = forbidden(text, document);
  if (faults.length > 0) return faults.map((fault) => placed(fault, lines, file, firstLine));
  if (document.errors.length === 0 && sameTree(tree, seen(document))) return [];
  const offset = mayBeOdd.exec(markUnknown(text))?.index ?? 0;
  const hint = 'Put a question mark, a colon or a hyphen that belongs to a text in quotes.';
  const message = 'What stands here can be read in two ways.';
  return [placed({ code: 'yaml-broken', offset, message, hint }, lines, file, firstLine)];
}

function seen(document: Document): Tree {
  const tree: unknown = document.toJS({ maxAliasCount: 0 }) ?? null;
  return isTree(tree) ? unmarkUnknown(tree) : null;
}

/** An empty value is `null` to one parser and an empty text to the other. */
function sameTree(a: Tree, b: Tree): boolean {
  if (a === null || b === null || typeof a === 'string' || typeof b === 'string') return (a ?? '') === (b ?? '');
  const [mine, theirs] = [Object.entries(a), new Map(Object.entries(b))];
  return (
    mine.length === theirs.size &&
    mine.every(([key, value]) => theirs.has(key) && sameTree(value, theirs.get(key) ?? null))
  );
}
