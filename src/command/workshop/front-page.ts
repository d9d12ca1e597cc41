// The front page of a workshop: made of the lines that each machine's build handed back, and what shows only over all of them.
import { basename, join, relative } from 'node:path';
import { composeWorkshop, lookOverWorkshop, type FrontLines, type StoppedMachine } from '../../build.ts';
import { hashOf } from '../../cache/hash.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { readManual } from '../manual.ts';
import { reportFolderProblems } from '../report-problems.ts';
import { tellAsked } from '../tell-workshop.ts';
import type { Terminal } from '../terminal.ts';
import { writeFault } from '../write-fault.ts';
import { claimFront, standsAsWritten, writeFront, type KeptFront } from './front-files.ts';
import { renderFront } from './front-html.ts';
import { keptTerminal, sayKept } from './kept-terminal.ts';
import type { StampedMachine } from './stamped-machines.ts';
import type { ToldMachine } from './told-machine.ts';

export interface FrontMachine extends StampedMachine {
  readonly made: ToldMachine;
}

export interface FrontJob {
  /** The workshop's folder. */
  readonly folder: string;
  readonly out: string;
  readonly machines: readonly FrontMachine[];
}

export interface Front {
  readonly code: ExitCode;
  /** As a person would write the way to it from here; absent where there is none. */
  readonly page?: string;
}

/** Writes the page, unless it stands there as it would be written. */
export async function writeFrontPage(work: FrontJob, terminal: Terminal): Promise<Front> {
  const { folder, out, machines } = work;
  const refused = claimFront(
    out,
    folder,
    machines.map(({ job }) => basename(job.machine)),
  );
  if (refused !== undefined) return { code: reportFolderProblems([refused], terminal) };
  const page = way(join(out, 'index.html'));
  const key = hashOf(JSON.stringify(machines.map((one) => [one.key, one.made.code])));
  try {
    const standing = standsAsWritten(out, key);
    if (standing !== undefined) {
      sayKept(standing, terminal);
      return { code: exitCodes.fine, page };
    }
    terminal.progress('The front page of the workshop');
    const lines = await writeAnew(work, key, terminal.colour);
    terminal.progress('');
    sayKept(lines, terminal);
    return { code: exitCodes.fine, page };
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    terminal.tell(told);
    return { code: exitCodes.writing };
  }
}

/** Gives what is to be said of it. */
async function writeAnew({ folder, out, machines }: FrontJob, key: string, colour: boolean): ReturnType<typeof said> {
  const fronts = machines.flatMap(({ made }) => made.front ?? []);
  const asked = lookOverWorkshop(fronts);
  const { words } = readManual().content.value;
  const stopped = machines.flatMap(stoppedOf);
  const composed = composeWorkshop({ machines: fronts, stopped, asked, words });
  const folderOf = new Map(machines.map((one) => [one.folder, basename(one.job.machine)]));
  const lines = await said(asked, machines, colour);
  const kept = machines.flatMap((one) => keptOf(one.folder, one.key, one.made.front));
  writeFront(out, renderFront(composed, { name: basename(folder), machines: fronts, folderOf }), {
    key,
    lines,
    machines: Object.fromEntries(kept),
  });
  return lines;
}

async function said(
  asked: ReturnType<typeof lookOverWorkshop>,
  machines: readonly FrontMachine[],
  colour: boolean,
): Promise<ReturnType<typeof keptTerminal>['lines']> {
  const { terminal, lines } = keptTerminal(colour);
  await tellAsked(
    asked,
    machines.map(({ job }) => job.machine),
    terminal,
  );
  return lines;
}

function keptOf(folder: string, key: string, front: FrontLines | undefined): readonly [string, KeptFront][] {
  return front === undefined ? [] : [[folder, { key, front }]];
}

function stoppedOf({ folder, made }: FrontMachine): readonly StoppedMachine[] {
  return made.code === exitCodes.fine ? [] : [{ folder, problems: 0, ...made.stopped }];
}

function way(path: string): string {
  const from = relative(process.cwd(), path);
  return from.startsWith('..') || from === '' ? path : from;
}
