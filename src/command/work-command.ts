// `work`: one calculation, worked out at the bench, with values given or taken from a machine.
import {
  aboutLines,
  calculationIds,
  calculationsThatSay,
  cautionsOfCalculations,
  groupedLines,
  stops,
  workLines,
} from '../build.ts';
import type { Binder, Doubt } from '../build.ts';
import { count } from './count.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { oneMachine } from './one-machine.ts';
import { readManual } from './manual.ts';
import { likely, nearest } from './nearest.ts';
import type { Options } from './program.ts';
import { readMachine, type ReadMachine } from './read-machine.ts';
import { reportProblems } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import type { Terminal } from './terminal.ts';

/** Runs `splitpin work`. Without a calculation all are listed; without values its inputs and its example are shown. */
export async function workCommand(
  id: string | undefined,
  words: readonly string[],
  options: Options,
  around: Surroundings,
): Promise<ExitCode> {
  const { terminal } = around;
  if (id === undefined) return sayAll(groupedLines(), terminal);
  const about = aboutLines(id);
  if (about === undefined) return unknown(id, terminal);
  if (words.length === 0 && options.in === undefined) return sayAll([...cautionLines(id), ...about], terminal);
  const machine = machineFor(options, around);
  if (typeof machine === 'number') return machine;
  if (machine !== undefined && machine.binder === undefined) return cannotRead(machine, terminal);
  const ended = workFor(id, words, machine?.binder, terminal);
  if (machine !== undefined) tellLeftOut(machine, terminal);
  return ended;
}

/** What can hurt, before any figure. */
function cautionLines(id: string): readonly string[] {
  const cautions = cautionsOfCalculations(readManual().content.value, [id]);
  return cautions.map(({ grade, line }) => `${grade}: ${line}`);
}

function sayAll(lines: readonly string[], terminal: Terminal): ExitCode {
  for (const line of lines) terminal.say(line);
  return exitCodes.fine;
}

function unknown(id: string, terminal: Terminal): ExitCode {
  const near = [...new Set([...likely(id, calculationIds()), ...calculationsThatSay(id)])].slice(0, 8);
  terminal.tell(`calculation-unknown: “${id}” is not a calculation.${near.length === 0 ? '' : ' Likely ones:'}`);
  for (const name of near) terminal.tell('  ' + name);
  terminal.tell('splitpin work lists all.');
  return exitCodes.usage;
}

/** The machine of `--in`, or an exit code when the folder is not one machine. */
function machineFor(options: Options, around: Surroundings): ReadMachine | ExitCode | undefined {
  if (options.in === undefined) return undefined;
  const machine = oneMachine(options.in, around);
  return typeof machine === 'number'
    ? machine
    : readMachine(machine, dayFor(options.today, around), { siteOnly: true });
}

async function cannotRead(machine: ReadMachine, terminal: Terminal): Promise<ExitCode> {
  await reportProblems(stops(machine.problems), machine.textOf, terminal);
  terminal.tell('');
  terminal.tell('Nothing can be taken from the machine before it can be read.');
  return exitCodes.problems;
}

function workFor(id: string, words: readonly string[], binder: Binder | undefined, terminal: Terminal): ExitCode {
  const { lines, doubts, understood } = workLines(id, words, binder?.book, nearest);
  for (const line of [...cautionLines(id), ...lines]) terminal.say(line);
  for (const doubt of doubts) tellDoubt(doubt, terminal);
  if (!understood) return exitCodes.usage;
  return doubts.some((doubt) => doubt.severity === 'problem') ? exitCodes.problems : exitCodes.fine;
}

function tellDoubt(doubt: Doubt, terminal: Terminal): void {
  terminal.tell(doubt.code + ': ' + doubt.message);
  if (doubt.hint !== undefined) terminal.tell('  ' + doubt.hint);
}

/** Records with a mistake are not taken from; whoever calculates must know. */
function tellLeftOut(machine: ReadMachine, terminal: Terminal): void {
  const wrong = stops(machine.problems).length;
  if (wrong === 0) return;
  terminal.tell(
    count(wrong, 'problem') + ' in the records: nothing was taken from where they are. See splitpin check.',
  );
}
