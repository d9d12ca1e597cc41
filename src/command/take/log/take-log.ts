// `take` of a log in columns: shown as it would be understood, written when the person says so, never twice.
import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { recordsIn } from '../records-in.ts';
import { count } from '../../count.ts';
import { exitCodes, type ExitCode } from '../../exit-codes.ts';
import { reportProblems } from '../../report-problems.ts';
import { dayFor } from '../../surroundings.ts';
import { writeFault } from '../../write-fault.ts';
import type { TakeReader, TakeWork } from '../reader.ts';
import { confirmed, said } from '../said.ts';
import { wouldBe } from '../would-be.ts';
import { writeNew } from '../write-new.ts';
import { decodeText } from './decode-text.ts';
import { entriesOf, type Entries } from './entries.ts';
import { mannerOf } from './manner.ts';
import { entryPrint, printsIn, recordsOf, type LogRecord } from './records.ts';
import { rowsOf, separators, separatorsOf, type Row, type Separator } from './rows.ts';
import { mannerLines, oddLines, recordLines } from './shown.ts';

/** A log of a lifetime has some thousand rows; what is larger is no log. */
const mostBytes = 10_000_000;

export const logReader: TakeReader = {
  reads: 'an old log in columns (CSV: date, odometer, text, cost)',
  knows: (path, _, folder) => !folder && /\.(?:csv|tsv|tab|txt)$/iu.test(path),
  take: takeLog,
};

async function takeLog(work: TakeWork): Promise<ExitCode> {
  const { terminal } = work.around;
  const name = basename(work.from);
  const rows = await readRows(work, name);
  const machine = recordsIn(work.machine);
  if (rows === undefined) return exitCodes.problems;
  if (machine === undefined) {
    terminal.tell('The machine itself cannot be read: splitpin check says why.');
    return exitCodes.problems;
  }
  const today = dayFor(work.options.today, work.around);
  const manner = await mannerOf(rows, machine.machine, today, work);
  if (manner === undefined) return exitCodes.usage;
  const read = entriesOf(manner.rows, manner);
  for (const line of [`${name}: ${count(manner.rows.length, 'row')}`, ...mannerLines(manner), ...oddLines(name, read)])
    terminal.say(line);
  if (!(await mayLeaveOut(read, name, work))) return exitCodes.usage;
  const known = printsIn(machine.files.map((file) => file.text));
  const fresh = read.entries.filter((entry) => !known.has(entryPrint(entry)));
  const again = read.entries.length - fresh.length;
  if (again > 0)
    terminal.say(
      `${count(again, 'row is', 'rows are')} in the records already and ${again === 1 ? 'is' : 'are'} not taken again.`,
    );
  if (fresh.length === 0) {
    terminal.say('Nothing is new; nothing was written.');
    return exitCodes.fine;
  }
  const per = work.options.said['per'] === 'day' ? 'day' : 'row';
  const kind = work.options.said['kind'] ?? 'service';
  const taken = new Set(machine.files.map((file) => file.file));
  const records = recordsOf(fresh, { per, kind, from: name, taken });
  return lookAndWrite(records, { per, kind }, today, work);
}

async function lookAndWrite(
  records: readonly LogRecord[],
  how: { readonly per: string; readonly kind: string },
  today: string,
  work: TakeWork,
): Promise<ExitCode> {
  const { terminal } = work.around;
  const seen = wouldBe(work.machine, today, records);
  if (seen === undefined) return exitCodes.problems;
  for (const line of recordLines(records, how.per, how.kind)) terminal.say(line);
  if (seen.problems.length > 0) {
    await reportProblems(seen.problems, seen.textOf, terminal);
    terminal.tell(
      'Nothing was written: the records could not be read with these. Each record names its line of the log.',
    );
    if (seen.problems.some((problem) => problem.code.startsWith('odometer-') || problem.code.startsWith('clock-')))
      terminal.tell('With --how unit="in words" what the clock read is kept in the words and not counted with.');
    return exitCodes.problems;
  }
  if (!(await confirmed(work, `Write ${count(records.length, 'record')}?`))) {
    terminal.say('Nothing was written.');
    return exitCodes.fine;
  }
  try {
    writeNew(
      work.machine,
      records.map(({ file, text }) => ({ file, bytes: text })),
    );
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    terminal.tell(told);
    return exitCodes.writing;
  }
  terminal.say(`${count(records.length, 'record')} written.`);
  return exitCodes.fine;
}

async function readRows(work: TakeWork, name: string): Promise<readonly Row[] | undefined> {
  const { terminal } = work.around;
  if (statSync(work.from).size > mostBytes) return refused(work, `${name} is larger than a log can be (10 MB).`);
  const decoded = decodeText(readFileSync(work.from));
  if (decoded === undefined) return refused(work, `${name} is not a text. Save it as CSV.`);
  const separator = await separatorOf(decoded.text, work);
  if (separator === undefined) return undefined;
  const read = rowsOf(decoded.text, separator);
  if (!read.ok) return refused(work, `${name}:${String(read.line)}: ${read.why}. Nothing was taken.`);
  if (read.rows.length === 0) return refused(work, `${name} has no rows.`);
  terminal.say(
    `${name} is ${decoded.encoding}, its columns are parted by ${separator === 'tab' ? 'tabs' : `${separator}s`}.`,
  );
  return read.rows;
}

async function separatorOf(text: string, work: TakeWork): Promise<Separator | undefined> {
  const names = Object.keys(separators).filter((name): name is Separator => name in separators);
  const possible = separatorsOf(text);
  const [first] = possible;
  if (work.options.said['separator'] === undefined && first !== undefined) return first;
  // A broken quote keeps every way of cutting from being tried: then the sign that stands most often in the first line will say where it is.
  const head = text.split(/[\r\n]/u)[0] ?? '';
  const counted = names.toSorted((a, b) => head.split(separators[b]).length - head.split(separators[a]).length);
  if (work.options.said['separator'] === undefined && counted[0] !== undefined && head.includes(separators[counted[0]]))
    return counted[0];
  const answer = await said(work, { name: 'separator', asks: 'Which sign parts the columns?', choices: names });
  return names.find((name) => name === answer);
}

/** Rows without a day stop the taking unless the person says that they may be left out. */
async function mayLeaveOut({ undated }: Entries, name: string, work: TakeWork): Promise<boolean> {
  const { terminal } = work.around;
  if (undated.length === 0) return true;
  for (const { line, text } of undated)
    terminal.tell(`${name}:${String(line)}: ${text === '' ? 'no date' : `“${text}” is no date like the others`}`);
  const asks = `${count(undated.length, 'row has', 'rows have')} no date that can be read. What with them?`;
  return (await said(work, { name: 'undated', asks, choices: ['stop', 'leave-out'] })) === 'leave-out';
}

function refused(work: TakeWork, why: string): undefined {
  work.around.terminal.tell(why);
  return undefined;
}
