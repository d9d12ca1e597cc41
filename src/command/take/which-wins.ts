// A form of another version of its record: where the two differ a person says which wins, beforehand or when asked.
import type { Carried } from '../sheet-form.ts';
import { ways, type Way } from './answered-record.ts';
import type { Matched } from './match-answers.ts';
import type { TakeWork } from './reader.ts';
import { said } from './said.ts';

/** Which wins; undefined when that was not said, and then nothing is taken. */
export async function whichWins(
  carried: Carried,
  now: { readonly record: string; readonly asked: string },
  matched: Matched,
  work: TakeWork,
): Promise<Way | undefined> {
  const { terminal } = work.around;
  if (carried.record === now.record) return 'form';
  const { parted } = matched;
  if (parted.length + matched.fresh.length === 0) return 'form';
  if (carried.asked === now.asked && parted.length === 0) {
    terminal.say('The record was changed since; nothing of that is against what is written here.');
    return 'form';
  }
  terminal.say(
    parted.length > 0
      ? 'The record was changed since this was made, and says otherwise by now:'
      : 'The record was changed since this was made: its sheet asks other things by now.',
  );
  for (const { blank, value } of parted)
    terminal.say(`  ${blank.asks}: the record says ${blank.given ?? 'nothing any more'}, here stands ${value}`);
  const answer = await said(work, { name: 'wins', asks: 'Which wins where they differ?', choices: ways });
  return ways.find((one) => one === answer);
}
