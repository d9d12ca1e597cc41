// The report a person reads: every problem with file:line:column, the owner's own line, carets, and what to write instead.
import type { Place, Problem } from './problem.ts';

export interface Spot {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

export interface ReportOptions {
  readonly colour: boolean;
}

type TextOf = (file: string) => string | undefined;
type Locate = (text: string, place: Place) => Spot;
type LinesOf = (text: string) => readonly string[];

interface Found {
  readonly problem: Problem;
  readonly spot: Spot | undefined;
  readonly text: string | undefined;
}

/** Longest piece of the owner's line that is shown; the rest is cut with an ellipsis. */
const widest = 100;

// Control characters, those that turn the direction of writing or hide, and the sign of a character lost in reading.
const unseen = /[\p{Cc}\p{Cf}\u2028\u2029\uFFFD]/gu;

/** Text from a record made harmless for a terminal: a tab becomes a space, other unseen characters their code point. */
export function shown(text: string): string {
  return text.replaceAll('\t', ' ').replace(unseen, (character) => {
    const code = character.codePointAt(0) ?? 0;
    return '<U+' + code.toString(16).toUpperCase().padStart(4, '0') + '>';
  });
}

/** Longest message or hint; a record can put a whole page into one. */
const longest = 600;

function said(text: string): string {
  return shown(text.length > longest ? text.slice(0, longest) + '…' : text);
}

/** Columns that a shown text takes on a terminal, where East Asian wide characters take two and marks none. */
function columnsOf(text: string): number {
  let columns = 0;
  for (const character of text) {
    if (/\p{Mn}/u.test(character)) continue;
    columns +=
      /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Extended_Pictographic}/u.test(
        character,
      )
        ? 2
        : 1;
  }
  return columns;
}

function paint(text: string, code: string, options: ReportOptions): string {
  return options.colour ? '\u001b[' + code + 'm' + text + '\u001b[0m' : text;
}

function find(problem: Problem, textOf: TextOf, locate: Locate): Found {
  const text = textOf(problem.at.file);
  if (text === undefined) return { problem, text, spot: knownSpot(problem.at) };
  if (problem.at.path.length === 0 && problem.at.line === undefined) return { problem, text, spot: undefined };
  return { problem, text, spot: locate(text, problem.at) };
}

function knownSpot(place: Place): Spot | undefined {
  if (place.line === undefined) return undefined;
  return { line: place.line, column: place.column ?? 1, length: 1 };
}

function byPlace(a: Found, b: Found): number {
  const files = a.problem.at.file;
  if (files !== b.problem.at.file) return files < b.problem.at.file ? -1 : 1;
  const line = (a.spot?.line ?? 0) - (b.spot?.line ?? 0);
  if (line !== 0) return line;
  const column = (a.spot?.column ?? 0) - (b.spot?.column ?? 0);
  if (column !== 0) return column;
  if (a.problem.code === b.problem.code) return 0;
  return a.problem.code < b.problem.code ? -1 : 1;
}

function where(file: string, spot: Spot | undefined): string {
  const name = shown(file);
  return spot === undefined ? name : [name, spot.line, spot.column].join(':');
}

/** The owner's own line with carets under the value; a long line is shown from a little before it. */
function frame(lines: readonly string[], spot: Spot, options: ReportOptions): readonly string[] {
  const line = lines[spot.line - 1];
  if (line === undefined) return [];
  const at = Math.min(spot.column - 1, line.length);
  const start = line.length <= widest ? 0 : Math.max(0, at - 30);
  const before = (start > 0 ? '…' : '') + shown(line.slice(start, at));
  const marked = shown(line.slice(at, Math.min(at + Math.max(1, spot.length), start + widest)));
  const after = shown(line.slice(at + Math.max(1, spot.length), start + widest));
  const cut = start + widest < line.length ? '…' : '';
  const gutter = String(spot.line).padStart(5) + ' | ';
  const carets = '^'.repeat(Math.max(1, columnsOf(marked)));
  return [
    gutter + before + marked + after + cut,
    ' '.repeat(5) + ' | ' + ' '.repeat(columnsOf(before)) + paint(carets, '31', options),
  ];
}

function linesOf(text: string): readonly string[] {
  return text.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
}

/** The lines of each text, taken apart once however many problems there are in it. */
function linesKept(): LinesOf {
  const kept = new Map<string, readonly string[]>();
  return (text) => {
    const lines = kept.get(text) ?? linesOf(text);
    kept.set(text, lines);
    return lines;
  };
}

function entry(found: Found, textOf: TextOf, linesIn: LinesOf, locate: Locate, options: ReportOptions): string {
  const { problem, spot, text } = found;
  const grade = problem.severity === 'query' ? ' (query)' : '';
  const head =
    paint(where(problem.at.file, spot), '1', options) + ' ' + problem.code + grade + ': ' + said(problem.message);
  const lines = [head, ...(text === undefined || spot === undefined ? [] : frame(linesIn(text), spot, options))];
  if (problem.hint !== undefined) lines.push('      ' + said(problem.hint));
  for (const other of problem.also ?? []) {
    const otherText = textOf(other.at.file);
    const otherSpot =
      otherText === undefined || other.at.path.length === 0 ? knownSpot(other.at) : locate(otherText, other.at);
    lines.push('      see ' + where(other.at.file, otherSpot) + ': ' + said(other.message));
  }
  return lines.join('\n');
}

/**
 * All problems as text, sorted by file, line, column and code; the same problem at the same place once. `textOf` gives the
 * text of a file (undefined when it could not be read), `locate` the line and column of a place in it. Empty without
 * problems.
 */
export function formatReport(
  problems: readonly Problem[],
  textOf: TextOf,
  locate: Locate,
  options: ReportOptions,
): string {
  const found = problems.map((problem) => find(problem, textOf, locate)).toSorted(byPlace);
  const linesIn = linesKept();
  const entries = found.map((one) => entry(one, textOf, linesIn, locate, options));
  return [...new Set(entries)].join('\n\n');
}
