// A workshop's machines made into binders, on the cores there are, and its front page; one that cannot be made stops no other.
import { basename } from 'node:path';
import { sweep } from '../../cache/sweep.ts';
import { count } from '../count.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { onInterrupt } from '../interrupt.ts';
import type { Terminal } from '../terminal.ts';
import { writeFrontPage } from './front-page.ts';
import { keptTerminal, sayKept } from './kept-terminal.ts';
import { buildMachine, standsAsMade, type BuildJob } from './machine-build.ts';
import { machineThreads, makeInThreads, type MadeMachine } from './machine-threads.ts';

export interface WorkshopJob {
  /** The workshop's folder, links resolved. */
  readonly folder: string;
  /** Where the front page goes, and below it a folder for each machine. */
  readonly out: string;
  /** The machines in the order of their folders. */
  readonly jobs: readonly BuildJob[];
  /** Threads that make binders; without it, as many as there are cores for. The files are the same with any number. */
  readonly threads?: number;
}

/** Makes all of it. The exit code is the worst of all machines. */
export async function buildWorkshop(work: WorkshopJob, terminal: Terminal): Promise<ExitCode> {
  const { jobs, out } = work;
  const made = await makeAll(work, terminal);
  const codes = made.map(({ code }) => code);
  const front = await writeFrontPage({ ...work, codes }, terminal);
  const stopped = jobs.filter((_job, index) => codes[index] !== exitCodes.fine);
  terminal.say(
    `${basename(out)}: ${count(jobs.length - stopped.length, 'binder')} of ${count(jobs.length, 'machine')}`,
  );
  if (front.page !== undefined) terminal.say(`  ${front.page}    begin here`);
  if (stopped.length > 0) {
    terminal.tell('');
    terminal.tell(`Not made: ${stopped.map(({ machine }) => basename(machine)).join(', ')}; the reasons stand above.`);
  }
  const all: readonly ExitCode[] = [...codes, front.code];
  return all.reduce((worst, code) => (code > worst ? code : worst), exitCodes.fine);
}

/** Binders that stand as made are only told of again; the others are shared out, and told of in the order of the folders. */
async function makeAll({ jobs, ...work }: WorkshopJob, terminal: Terminal): Promise<readonly MadeMachine[]> {
  const results: (MadeMachine | undefined)[] = jobs.map(() => undefined);
  let told = 0;
  const take = (index: number, made: MadeMachine): void => {
    results[index] = made;
    for (let next = results[told]; next !== undefined; next = results[(told += 1)]) sayKept(next.lines, terminal);
    const ready = results.filter((one) => one !== undefined).length;
    terminal.progress(ready < jobs.length ? `Machines: ${String(ready)} of ${String(jobs.length)}` : '');
  };
  const here = async (index: number, job: BuildJob): Promise<void> => {
    const { terminal: keeping, lines } = keptTerminal(terminal.colour);
    take(index, { code: await buildMachine(job, keeping), lines });
  };
  const toMake: number[] = [];
  for (const [index, job] of jobs.entries()) {
    if (standsAsMade(job)) await here(index, job);
    else toMake.push(index);
  }
  const threads = work.threads ?? machineThreads(toMake.length);
  if (threads === 0) {
    for (const index of toMake) for (const job of jobs.slice(index, index + 1)) await here(index, job);
    return results.filter((one) => one !== undefined);
  }
  // Signals come to this thread alone; what the others have half made is swept here.
  const settled = onInterrupt(() => jobs.forEach(({ out }) => sweep(out)));
  try {
    const handed = toMake.flatMap((index) =>
      jobs.slice(index, index + 1).map((job) => ({ job: { ...job, printThreads: 0 }, colour: terminal.colour })),
    );
    await makeInThreads(handed, threads, (index, made) => take(toMake[index] ?? 0, made));
  } finally {
    settled();
  }
  return results.filter((one) => one !== undefined);
}
