// The front page of a workshop: every machine read once more, one after the other, and what shows only over all of them.
import { basename, join, relative } from 'node:path';
import { composeWorkshop, lookOverWorkshop, stops, type Binder } from '../../build.ts';
import { hashOf } from '../../cache/hash.ts';
import { stampsOf } from '../../disk.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { readMachine, type ReadMachine } from '../read-machine.ts';
import { reportFolderProblems } from '../report-problems.ts';
import { tellAsked } from '../tell-workshop.ts';
import type { Terminal } from '../terminal.ts';
import { writeFault } from '../write-fault.ts';
import { claimFront, standsAsWritten, writeFront } from './front-files.ts';
import { renderFront } from './front-html.ts';
import { keptTerminal, sayKept } from './kept-terminal.ts';
import type { WorkshopJob } from './workshop-build.ts';

export interface FrontJob extends WorkshopJob {
  /** How the build of each machine ended. */
  readonly codes: readonly ExitCode[];
}

export interface Front {
  readonly code: ExitCode;
  /** As a person would write the way to it from here; absent where there is none. */
  readonly page?: string;
}

/** Writes the page, unless it stands there as it would be written. */
export async function writeFrontPage(work: FrontJob, terminal: Terminal): Promise<Front> {
  const { folder, out, jobs } = work;
  const refused = claimFront(
    out,
    folder,
    jobs.map(({ machine }) => basename(machine)),
  );
  if (refused !== undefined) return { code: reportFolderProblems([refused], terminal) };
  const page = way(join(out, 'index.html'));
  const key = keyOf(work);
  try {
    const standing = standsAsWritten(out, key);
    if (standing !== undefined) {
      sayKept(standing, terminal);
      return { code: exitCodes.fine, page };
    }
    terminal.progress('The front page of the workshop');
    const read = jobs.map(({ machine, today, options }) => readMachine(machine, today, options));
    const machines = read.flatMap((one, index) => (work.codes[index] === exitCodes.fine ? readOf(one) : []));
    const stopped = read.flatMap((one, index) => (work.codes[index] === exitCodes.fine ? [] : [stoppedOf(one)]));
    const made = machines.map(({ folder: name, binder }) => ({ folder: name, book: binder.book }));
    const asked = lookOverWorkshop(made);
    const composed = composeWorkshop({ name: basename(folder), machines: made, stopped, asked });
    const folderOf = new Map(read.map((one, index) => [one.folder.name, basename(jobs[index]?.machine ?? '')]));
    const { terminal: keeping, lines } = keptTerminal(terminal.colour);
    await tellAsked(asked, read, keeping);
    writeFront(out, renderFront(composed, { machines, folderOf }), { key, lines });
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

interface Made {
  readonly folder: string;
  readonly binder: Binder;
}

function readOf({ folder, binder }: ReadMachine): readonly Made[] {
  return binder === undefined ? [] : [{ folder: folder.name, binder }];
}

function stoppedOf({ folder, binder, problems }: ReadMachine): {
  readonly folder: string;
  readonly name?: string;
  readonly problems: number;
} {
  const wrong = stops(problems).length;
  const name = binder?.book.records.machine.name;
  return { folder: folder.name, problems: wrong, ...(name === undefined ? {} : { name }) };
}

/** Everything that the page is made from: the program, what was chosen, every file of every machine, how each build ended. */
function keyOf({ jobs, codes }: FrontJob): string {
  const parts = jobs.map(({ machine, program, choices }, index) =>
    JSON.stringify([machine, program, choices, codes[index], stampsOf(machine)]),
  );
  return hashOf(parts.join('\n'));
}

function way(path: string): string {
  const from = relative(process.cwd(), path);
  return from.startsWith('..') || from === '' ? path : from;
}
