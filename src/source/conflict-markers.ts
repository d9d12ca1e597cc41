// Marks that a merge leaves in a text where two versions could not be joined: both stand there, and nobody has chosen yet.
import type { Problem } from '../problem/problem.ts';
import type { SourceFile } from './files.ts';

const begins = /^<{7}(?: |$)/mu;
const ends = /^>{7}(?: |$)/mu;

/** The first such place; undefined where there is none. A line of marks alone, without its other end, is somebody’s drawing. */
export function conflictMarker({ file, text }: SourceFile): Problem | undefined {
  if (!text.includes('<<<<<<<') || !text.includes('>>>>>>>')) return undefined;
  const clean = text.replaceAll(/\r\n?/gu, '\n');
  const first = clean.search(begins);
  if (first < 0 || !ends.test(clean.slice(first))) return undefined;
  return {
    code: 'conflict-marker',
    severity: 'problem',
    at: { file, path: [], line: clean.slice(0, first).split('\n').length, column: 1 },
    message: 'Two versions of this file were merged and still stand one below the other.',
    hint: 'Keep what is true of each, and take away the lines that begin with <<<<<<<, ======= and >>>>>>>.',
  };
}
