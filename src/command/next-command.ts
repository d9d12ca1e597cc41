// `next`: from what was seen to the next test, at the terminal or as plain data.
import { askNext, listNext, stops, type Binder } from '../build.ts';
import { count } from './count.ts';
import type { NextOptions } from './describe-next.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { oneMachine } from './one-machine.ts';
import { readMachine } from './read-machine.ts';
import { reportProblems } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';

/** Runs `splitpin next` on one machine. */
export async function nextCommand(folder: string, options: NextOptions, around: Surroundings): Promise<ExitCode> {
  const { terminal } = around;
  const path = oneMachine(folder, around);
  if (typeof path === 'number') return path;
  const read = readMachine(path, dayFor(options.today, around), { siteOnly: true });
  const wrong = stops(read.problems);
  if (read.binder === undefined) {
    await reportProblems(wrong, read.textOf, terminal);
    return exitCodes.problems;
  }
  if (wrong.length > 0) {
    terminal.tell(count(wrong.length, 'problem') + ' in the records; what is there was left out. See splitpin check.');
  }
  return options.list === true ? sayList(read.binder, options, around) : sayNext(read.binder, options, around);
}

function sayList({ book }: Binder, options: NextOptions, { terminal }: Surroundings): ExitCode {
  const { lines, data } = listNext(book);
  if (options.json === true) terminal.say(JSON.stringify(data, null, 2));
  else for (const line of lines) terminal.say(line);
  return exitCodes.fine;
}

function sayNext({ book }: Binder, options: NextOptions, { terminal }: Surroundings): ExitCode {
  const answer = askNext(book, {
    saw: options.saw ?? [],
    looked: options.looked === true,
    working: options.working === true,
    ...standingOf(options),
  });
  for (const { message, near } of answer.refused) {
    terminal.tell('outcome-unknown: ' + message);
    terminal.tell('  ' + (near.length === 0 ? 'splitpin next <folder> --list lists all.' : near.join(', ')));
  }
  if (answer.refused.length > 0) return exitCodes.usage;
  if (options.json === true) terminal.say(JSON.stringify(answer.data, null, 2));
  else for (const line of answer.lines) terminal.say(line);
  return answer.impossible ? exitCodes.problems : exitCodes.fine;
}

function standingOf({ longStored, latelyRunning }: NextOptions): { standing?: 'long stored' | 'lately running' } {
  if (longStored === true) return { standing: 'long stored' };
  return latelyRunning === true ? { standing: 'lately running' } : {};
}
