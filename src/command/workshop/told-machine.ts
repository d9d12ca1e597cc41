// One machine of a workshop made, and what is handed back of it: plain data that may come from another thread, never its book.
import { frontLines, stops, type FrontLines } from '../../build.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { readMachine, type ReadMachine } from '../read-machine.ts';
import { keptTerminal, type KeptLine } from './kept-terminal.ts';
import { buildMachine, type BuildJob } from './machine-build.ts';

/** Whose binder is made, and what is known of it already. */
export interface HandedMachine {
  readonly job: BuildJob;
  readonly colour: boolean;
  /** Its lines on the front page, kept from when its files were the same. */
  readonly front?: FrontLines;
}

export interface ToldMachine {
  readonly code: ExitCode;
  readonly lines: readonly KeptLine[];
  /** For the front page; absent where its binder was not made. */
  readonly front?: FrontLines;
  /** What kept it from being made; absent where it was made, or where that cannot be said. */
  readonly stopped?: { readonly name?: string; readonly problems: number };
}

/** Makes the binder, or finds that it stands. Throws for a bug. */
export async function makeAndTell({ job, colour, front }: HandedMachine): Promise<ToldMachine> {
  const { terminal, lines } = keptTerminal(colour);
  const { code, read } = await buildMachine(job, terminal);
  if (code !== exitCodes.fine) return { code, lines, ...(read === undefined ? {} : { stopped: stoppedOf(read) }) };
  if (read === undefined && front !== undefined) return { code, lines, front };
  // Its binder stands, made by itself before: then nothing is known of it yet.
  const { folder, binder } = read ?? readMachine(job.machine, job.today, job.options);
  return { code, lines, ...(binder === undefined ? {} : { front: frontLines(folder.name, binder.book) }) };
}

function stoppedOf({ binder, problems }: ReadMachine): { readonly name?: string; readonly problems: number } {
  const name = binder?.book.records.machine.name;
  return { problems: stops(problems).length, ...(name === undefined ? {} : { name }) };
}
