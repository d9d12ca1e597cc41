// Answers that came back are put into their record: held against it, shown, agreed to, written whole.
import { join } from 'node:path';
import { count } from '../count.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { readMachine } from '../read-machine.ts';
import { reportProblems } from '../report-problems.ts';
import { askedPrint, asking, recordPrint } from '../sheet-form.ts';
import { dayFor } from '../surroundings.ts';
import { writeFault } from '../write-fault.ts';
import { writeWhole } from '../write-whole.ts';
import { answeredRecord, saysMore, type Answered, type Before } from './answered-record.ts';
import { homeOf, readCarried } from './carried-home.ts';
import { matchAnswers, type CameBack } from './match-answers.ts';
import type { TakeWork } from './reader.ts';
import { confirmed } from './said.ts';
import { tellChanges, tellMatched } from './shown-answers.ts';
import { whichWins } from './which-wins.ts';
import { wouldBe } from './would-be.ts';

export interface Back {
  /** Name of the file that they came in. */
  readonly name: string;
  readonly carries: string | undefined;
  readonly answers: readonly CameBack[];
  /** Every blank comes back, answered or not; otherwise only answers do. */
  readonly whole: boolean;
}

/** Takes the answers. Nothing is written before it was shown and agreed to. */
export async function putAnswers(back: Back, work: TakeWork): Promise<ExitCode> {
  const { terminal } = work.around;
  const refuse = (why: string): ExitCode => {
    terminal.tell(`${back.name}: ${why}`);
    return exitCodes.problems;
  };
  const carried = readCarried(back.carries);
  if (typeof carried === 'string') return refuse(carried);
  const today = dayFor(work.options.today, work.around);
  const read = readMachine(work.machine, today, {});
  if (read.binder === undefined) return refuse('the machine itself cannot be read: splitpin check says why.');
  const home = homeOf(carried, read.binder);
  if (typeof home === 'string') return refuse(home);
  const text = read.textOf(home.file);
  if (text === undefined) return refuse(`${home.file} is gone.`);
  const { blanks } = asking(home.job, home.sheets);
  const before = { home, text, today, binder: read.binder };
  const matched = matchAnswers(blanks, back.answers, (met) => saysMore(before, met));
  terminal.say(`${back.name}: ${home.title} (${home.file})`);
  const now = { record: recordPrint(text), asked: askedPrint(blanks) };
  const way = await whichWins(carried, now, matched, work);
  if (way === undefined) return exitCodes.problems;
  tellMatched(matched, back.whole, terminal);
  return put(before, answeredRecord(before, matched, way), work);
}

async function put({ home, text, today }: Before, made: Answered, work: TakeWork): Promise<ExitCode> {
  const { terminal } = work.around;
  for (const { message, hint } of made.problems)
    terminal.tell(`  not taken: ${message}${hint === undefined ? '' : ` ${begun(hint)}`}`);
  if (made.text === text) {
    terminal.say('Nothing new is in it; nothing was written.');
    return made.problems.length > 0 ? exitCodes.problems : exitCodes.fine;
  }
  tellChanges(made.changes, made.remarks, terminal);
  const seen = wouldBe(work.machine, today, [{ file: home.file, text: made.text }]);
  if (seen === undefined || seen.problems.length > 0) {
    if (seen !== undefined) await reportProblems(seen.problems, seen.textOf, terminal);
    terminal.tell('Nothing was written: the record could not be read with these.');
    return exitCodes.problems;
  }
  if (!(await confirmed(work, `Write ${count(made.changes.length, 'change')} into ${home.file}?`))) {
    terminal.say('Nothing was written.');
    return exitCodes.fine;
  }
  return writeRecord(home.file, { was: text, becomes: made.text }, work);
}

function writeRecord(
  file: string,
  { was, becomes }: { readonly was: string; readonly becomes: string },
  work: TakeWork,
): ExitCode {
  const { terminal } = work.around;
  try {
    if (writeWhole(join(work.machine, file), becomes, was) === 'changed') {
      terminal.tell(`${file} was changed while this was being read. Nothing was written; take it again.`);
      return exitCodes.problems;
    }
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    terminal.tell(told);
    return exitCodes.writing;
  }
  terminal.say(`Written into ${file}. splitpin check looks at all of it.`);
  return exitCodes.fine;
}

/** A hint as a sentence. */
function begun(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
