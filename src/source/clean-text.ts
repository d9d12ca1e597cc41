// One kind of line end and no byte order mark, so that lines and columns are the same whoever saved the file.
import type { Problem } from '../problem/problem.ts';
import type { SourceFile } from './files.ts';

/** A record is written by hand; anything larger is a picture or a mistake. */
export const largestRecord = 1_000_000;

/** Strips the byte order mark and turns CRLF and CR into LF; line numbers stay as the editor shows them. */
export function cleanText(text: string): string {
  const start = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  return start.includes('\r') ? start.replaceAll(/\r\n?/gu, '\n') : start;
}

/** Why a file is not read at all: too big, or not text. */
export function unreadableText(source: SourceFile): Problem | undefined {
  const at = { file: source.file, path: [] };
  if (source.text.length > largestRecord) {
    return {
      code: 'record-too-large',
      severity: 'problem',
      at,
      message: 'The file is larger than a record may be (1 MB).',
      hint: 'Put pictures in photos/ and name them from the record.',
    };
  }
  if (!source.text.includes('\0') && !source.text.includes('\uFFFD')) return undefined;
  const odd = source.text.search(/[\0\uFFFD]/u);
  const before = cleanText(source.text.slice(0, odd)).split('\n');
  return {
    code: 'file-not-text',
    severity: 'problem',
    at: { ...at, line: before.length, column: (before.at(-1) ?? '').length + 1 },
    message: 'The file is not plain UTF-8 text: a character here cannot be read.',
    hint: 'Save the file again with the encoding UTF-8.',
  };
}
