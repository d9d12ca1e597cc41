// `fill`: what was written on the sheets of a job is typed into its record, blank by blank, in the printed order.
import { readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { stops } from '../build.ts';
import type { Answer } from '../entry/answer.ts';
import { judgeAnswer } from '../entry/judge-answer.ts';
import type { Asker } from './asker.ts';
import { count } from './count.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { oneMachine } from './one-machine.ts';
import { answerLines, answersList, answersOf } from './fill/answers-file.ts';
import { ask } from './fill/ask.ts';
import { closingQuestions } from './fill/closing.ts';
import { countOpen, openBlanks } from './fill/open-blanks.ts';
import { openJob } from './fill/open-job.ts';
import { wholeRows } from './fill/whole-rows.ts';
import { questionsFor, type Question } from './fill/questions.ts';
import { blanksIn, keep, sessionFor, type Session } from './fill/session.ts';
import type { Options } from './program.ts';
import { readMachine } from './read-machine.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import { writeFault } from './write-fault.ts';
import { sweepHalves } from './write-whole.ts';

export interface FillOptions extends Options {
  /** File of answers; nothing is asked. */
  readonly answers?: string;
  /** Print the blanks as a file of answers, and ask nothing. */
  readonly list?: boolean;
  /** Ask again what the record says already; another answer takes its place. */
  readonly again?: boolean;
  readonly hand?: string;
  /** Names of sheets of the machine whose blanks go into this record. */
  readonly sheet?: readonly string[];
}

/** Runs `splitpin fill`. */
export async function fillCommand(
  folder: string,
  wanted: string | undefined,
  options: FillOptions,
  around: Surroundings,
  asker: Asker,
): Promise<ExitCode> {
  const { terminal } = around;
  const machine = oneMachine(folder, around);
  if (typeof machine === 'number') return machine;
  sweepHalves(join(machine, 'jobs'));
  const today = dayFor(options.today, around);
  const read = readMachine(machine, today, {});
  const job = openJob(read, wanted, terminal);
  if (job === undefined) return exitCodes.usage;
  const session = sessionFor(read, job, { machine, today, hand: options.hand }, options.sheet);
  if (session === undefined) {
    terminal.tell(`${job} has no sheet${options.sheet === undefined ? '' : ' of that name'} to be filled in.`);
    return exitCodes.usage;
  }
  const blanks = blanksIn(session);
  if (options.list === true) {
    for (const line of answersList(blanks, session.job.id)) terminal.say(line);
    return exitCodes.fine;
  }
  const work: Work = { session, options, around, asker, folder };
  return options.answers === undefined ? askAll(work) : fromFile(work, resolve(around.folder, options.answers));
}

interface Work {
  readonly session: Session;
  readonly options: FillOptions;
  readonly around: Surroundings;
  readonly asker: Asker;
  /** As it was named on the command line. */
  readonly folder: string;
}

function fromFile(work: Work, path: string): ExitCode {
  const { session, around } = work;
  const text = readText(path);
  if (text === undefined) {
    around.terminal.tell(`The file of answers cannot be opened: ${path}`);
    return exitCodes.usage;
  }
  const { answers, strange } = answersOf(text, blanksIn(session), session.job.id);
  for (const line of strange) around.terminal.tell(`No blank of this job: ${line}`);
  const doubts = doubtsOf(work, answers);
  const done = put(work, answers);
  if (done.code !== exitCodes.fine) return done.code;
  for (const doubt of doubts) around.terminal.tell(doubt);
  tellEnd(work, done.written);
  return strange.length > 0 || done.refused > 0 ? exitCodes.problems : exitCodes.fine;
}

/** What looks like a slip, or lies past its limit: written all the same, and said. What cannot be read is refused elsewhere. */
function doubtsOf({ session }: Work, answers: readonly Answer[]): readonly string[] {
  const blanks = new Map(blanksIn(session).map((blank) => [blank.id, blank]));
  return answers.flatMap(({ blank: id, value }) => {
    const blank = blanks.get(id);
    if (blank === undefined) return [];
    return judgeAnswer(session.book, session.job, blank, value)
      .filter(({ code }) => code !== 'unreadable')
      .map(({ text }) => `   ${blank.asks}: ${value}: ${text}`);
  });
}

function readText(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

async function askAll(work: Work): Promise<ExitCode> {
  const { session, options, around, asker } = work;
  const { terminal } = around;
  const blanks = blanksIn(session);
  const open = options.again === true ? blanks : openBlanks(blanks);
  terminal.tell(`${session.job.title}: ${count(countOpen(blanks), 'blank')} to go.`);
  terminal.tell(
    'Enter leaves one for later, s the rest of its list · ? not known · - not done · a note after ; · q stops. Each is written down at once.',
  );
  const asking = { session, asker, terminal, shown: new Set<string>(), printed: new Set(blanks.map(({ id }) => id)) };
  let [written, refused] = [0, 0];
  let skipped: string | undefined;
  for (const question of [...questionsFor(open), ...closingQuestions(session)]) {
    if (skipped !== undefined && tableOf(question) === skipped) continue;
    let heard = await ask(question, asking);
    let done = heard.answers.length === 0 ? nothingPut : put(work, heard.answers);
    while (
      asker.atTerminal &&
      question.kind === 'one' &&
      done.refused > 0 &&
      done.code === exitCodes.fine &&
      !heard.stop
    ) {
      heard = await ask(question, asking);
      done = heard.answers.length === 0 ? nothingPut : put(work, heard.answers);
    }
    written += done.written;
    refused += done.refused + (heard.refused === undefined ? 0 : 1);
    if (done.code !== exitCodes.fine) return done.code;
    if (heard.stop) break;
    if (heard.skip === true) skipped = tableOf(question);
  }
  asker.close();
  tellEnd(work, written);
  return refused > 0 ? exitCodes.problems : exitCodes.fine;
}

/** The table of a question that is asked by itself. */
function tableOf(question: Question): string | undefined {
  if (question.kind === 'one') return question.blank.table;
  if (question.kind === 'pair') return question.found.table;
  if (question.kind === 'grades') return question.ticks[0]?.blank.table;
  return question.kind === 'torque' ? question.tick.table : undefined;
}

interface Put {
  readonly code: ExitCode;
  readonly written: number;
  readonly refused: number;
}
const nothingPut: Put = { code: exitCodes.fine, written: 0, refused: 0 };

/** Writes answers down; where that cannot be done they are kept in a file of answers, so that nothing has to be typed twice. */
function put(work: Work, answers: readonly Answer[]): Put {
  const { session, options, around } = work;
  const { terminal } = around;
  try {
    const instead = options.again === true;
    const kept = keep(session, instead ? wholeRows(blanksIn(session), answers) : answers, { instead });
    if (kept.kind === 'aside') return aside(work, answers, kept.why, exitCodes.problems);
    if (kept.metAnother)
      terminal.tell('The record was changed by another hand meanwhile; what you write goes beside it.');
    for (const { message, hint } of kept.problems)
      terminal.tell(`   ${message}${hint === undefined ? '' : ` ${hint}`}`);
    if (options.answers !== undefined)
      for (const { asks, was, becomes } of kept.changes)
        terminal.say(`${asks}: ${was === undefined ? '' : `${was} → `}${becomes}`);
    return { code: exitCodes.fine, written: kept.changes.length, refused: kept.problems.length };
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    return aside(work, answers, told, exitCodes.writing);
  }
}

function aside({ session, around }: Work, answers: readonly Answer[], why: string, code: ExitCode): Put {
  const { terminal } = around;
  terminal.tell(why);
  const lines = answerLines(answers, session.job.id);
  const path = join(around.folder, `${session.job.id}-answers.txt`);
  try {
    writeFileSync(path, lines, { flag: 'a' });
    terminal.tell(
      `What you gave last is kept in ${relative(around.folder, path)}; when the record can be written to again:`,
    );
    terminal.tell(`  splitpin fill … ${session.job.id} --answers ${relative(around.folder, path)}`);
  } catch {
    terminal.tell('What you gave last, to be given again:');
    for (const line of lines.split('\n')) terminal.tell(`  ${line}`);
  }
  return { code, written: 0, refused: answers.length };
}

function tellEnd({ session, around, folder }: Work, written: number): void {
  const { terminal } = around;
  const file = relative(around.folder, join(session.machine, session.job.file));
  terminal.say(
    written === 0
      ? `Nothing was written; ${file} is as it was.`
      : `${count(written, 'entry', 'entries')} written into ${file}.`,
  );
  const read = readMachine(session.machine, session.today, {});
  const wrong = stops(read.problems).filter(({ at }) => at.file === session.job.file);
  for (const { message } of wrong) terminal.tell(`To be put right in it: ${message}`);
  const now = sessionFor(read, session.job.id, session);
  const open = now === undefined ? 0 : countOpen(blanksIn(now));
  if (open > 0)
    terminal.say(`${count(open, 'blank')} open; go on at any time: splitpin fill ${folder} ${session.job.id}`);
  else terminal.say(`See what follows from it: splitpin check ${folder}`);
}
