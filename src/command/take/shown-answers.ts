// What is about to be written, and what is not, in lines.
import type { Change } from '../../entry/answer.ts';
import { count } from '../count.ts';
import type { Terminal } from '../terminal.ts';
import type { Matched } from './match-answers.ts';

/** So many are named; of more, only how many. */
const named = 8;

/** What came back and is not taken, and why. */
export function tellMatched(matched: Matched, whole: boolean, terminal: Terminal): void {
  const { emptied, unknown, already, missing } = matched;
  if (already > 0) terminal.say(`  ${count(already, 'answer')} stood in the record already.`);
  tellSome(
    emptied.map(({ asks, given = '' }) => `${asks}: was emptied; the record keeps ${given}`),
    'more were emptied',
    terminal,
  );
  tellSome(
    unknown.map(
      ({ blank, value }) => `not taken: the sheet has no blank “${blank.slice(0, 80)}” (${value.slice(0, 40)})`,
    ),
    'more belong to no blank',
    terminal,
  );
  if (!whole || missing.length === 0) return;
  terminal.tell(
    `  ${count(missing.length, 'blank')} of the sheet did not come back: the fields were renamed, flattened or left out by the program that saved it:`,
  );
  tellSome(
    missing.map(({ asks }) => asks),
    'more',
    terminal,
  );
}

function tellSome(lines: readonly string[], rest: string, terminal: Terminal): void {
  for (const line of lines.slice(0, named)) terminal.tell(`  ${line}`);
  if (lines.length > named) terminal.tell(`  and ${String(lines.length - named)} ${rest}`);
}

/** Every change with its value before and after, and what there is to say of it. */
export function tellChanges(
  changes: readonly Change[],
  remarks: ReadonlyMap<string, readonly string[]>,
  terminal: Terminal,
): void {
  for (const { blank, asks, was, becomes } of changes) {
    terminal.say(`  ${asks}: ${was === undefined ? '' : `${was} → `}${becomes}`);
    for (const remark of remarks.get(blank) ?? []) terminal.say(`      ${remark}`);
  }
}
