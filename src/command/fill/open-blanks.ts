// Blanks that still wait for an answer: of a row with several ticks none does once one of them stands.
import type { Blank } from '../../entry/blank.ts';

/** What is to be asked, in printed order. */
export function openBlanks(blanks: readonly Blank[]): readonly Blank[] {
  const answered = new Set(
    blanks.flatMap(({ grades, given }) => (grades !== undefined && given !== undefined ? [grades] : [])),
  );
  return blanks.filter(({ given, grades }) => given === undefined && (grades === undefined || !answered.has(grades)));
}

/** How many answers are missing: a row of ticks wants one, and lines for words want none. */
export function countOpen(blanks: readonly Blank[]): number {
  const wanted = openBlanks(blanks).filter((blank) => !isRoom(blank));
  return new Set(wanted.map(({ id, grades }) => grades ?? id)).size;
}

/** Room for words beside a row, and rows for what nobody foresaw. */
function isRoom({ id, kind, step, column }: Blank): boolean {
  return (kind === 'text' && (step !== undefined || column !== undefined)) || /\/(?:spare-[^/]+|honest)\//u.test(id);
}
