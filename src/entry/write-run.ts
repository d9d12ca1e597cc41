// A run typed in: its minutes; and services that were done.
import type { Blank } from './blank.ts';
import { add, linesOf, remark, textIn, textsOf, type Draft } from './draft.ts';
import { saysYes } from './write-work.ts';

/** Heads of the columns of the run log by their number; the last is the note and needs no name before it. */
const heads: readonly string[] = ['', 'minute', 'choke', 'throttle', 'feel and sound', 'smoke', 'leak', ''];

/** One line of the run log. A minute that lies before one that stands there already is kept as words: minutes only go up. */
export function writeMinute(
  draft: Draft,
  blank: Blank,
  minute: string,
  columns: readonly { readonly column: number; readonly words: string }[],
): void {
  const saw = columns
    .map(({ column, words }) => ((heads[column] ?? '') === '' ? words : `${heads[column] ?? ''}: ${words}`))
    .join('; ');
  const lines = linesOf(draft, 'run log');
  if (lines.some(([, line]) => textIn(line, 'minute') === minute && textIn(line, 'saw') === saw)) return;
  const last = Number(lines.at(-1)?.[1]['minute'] ?? -1);
  if (last > Number(minute)) remark(draft, blank, blank.id, saw);
  else add(draft, blank, 'run log', { minute, saw }, saw);
}

/** A service that was ticked. */
export function writeService(draft: Draft, blank: Blank, service: string, said: string): void {
  if (!saysYes(draft, blank, said)) return;
  if (!textsOf(draft, 'services').includes(service)) add(draft, blank, 'services', service, 'done');
}
