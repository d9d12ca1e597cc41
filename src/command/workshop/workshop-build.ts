// A workshop's machines made into binders, on the cores there are, and its front page; one that cannot be made stops no other.
import { basename } from 'node:path';
import { sweep } from '../../cache/sweep.ts';
import { count } from '../count.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { onInterrupt } from '../interrupt.ts';
import type { Terminal } from '../terminal.ts';
import { writeFrontPage } from './front-page.ts';
import { sayKept } from './kept-terminal.ts';
import { stampedMachines, type StampedMachine } from './stamped-machines.ts';
import { standsAsMade, type BuildJob } from './machine-build.ts';
import { machineThreads, makeInThreads } from './machine-threads.ts';
import { makeAndTell, type HandedMachine, type ToldMachine } from './told-machine.ts';

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
  const { folder, jobs, out } = work;
  const stamped = stampedMachines(jobs, out);
  const told = await makeAll(work, stamped, terminal);
  const machines = stamped.flatMap((one, index) => told.slice(index, index + 1).map((made) => ({ ...one, made })));
  const front = await writeFrontPage({ folder, out, machines }, terminal);
  const stopped = machines.filter(({ made }) => made.code !== exitCodes.fine);
  terminal.say(
    `${basename(out)}: ${count(jobs.length - stopped.length, 'binder')} of ${count(jobs.length, 'machine')}`,
  );
  if (front.page !== undefined) terminal.say(`  ${front.page}    begin here`);
  if (stopped.length > 0) {
    terminal.tell('');
    terminal.tell(`Not made: ${stopped.map(({ job }) => basename(job.machine)).join(', ')}; the reasons stand above.`);
  }
  const all: readonly ExitCode[] = [...told.map(({ code }) => code), front.code];
  return all.reduce((worst, code) => (code > worst ? code : worst), exitCodes.fine);
}

/** Binders that stand as made are only told of again; the others are shared out, and told of in the order of the folders. */
async function makeAll(
  { jobs, ...work }: WorkshopJob,
  stamped: readonly StampedMachine[],
  terminal: Terminal,
): Promise<readonly ToldMachine[]> {
  const results: (ToldMachine | undefined)[] = jobs.map(() => undefined);
  let told = 0;
  const take = (index: number, made: ToldMachine): void => {
    results[index] = made;
    for (let next = results[told]; next !== undefined; next = results[(told += 1)]) sayKept(next.lines, terminal);
    const ready = results.filter((one) => one !== undefined).length;
    terminal.progress(ready < jobs.length ? `Machines: ${String(ready)} of ${String(jobs.length)}` : '');
  };
  const toMake: Waiting[] = [];
  for (const [index, { job, bytes, front }] of stamped.entries()) {
    const handed = { job, colour: terminal.colour, ...(front === undefined ? {} : { front }) };
    if (front !== undefined && standsAsMade(job)) take(index, await makeAndTell(handed));
    else toMake.push({ index, bytes, handed });
  }
  const threads = work.threads ?? machineThreads(toMake.length);
  if (threads === 0) {
    for (const { index, handed } of toMake) take(index, await makeAndTell(handed));
    return results.filter((one) => one !== undefined);
  }
  // Signals come to this thread alone; what the others have half made is swept here.
  const settled = onInterrupt(() => jobs.forEach(({ out }) => sweep(out)));
  try {
    // The largest first: one that is begun last would keep a single core at work when the others have nothing left.
    const order = toMake.toSorted((a, b) => b.bytes - a.bytes || a.index - b.index);
    const handed = order.map(({ handed: one }) => ({ ...one, job: { ...one.job, printThreads: 0 } }));
    await makeInThreads(handed, threads, (place, made) => take(order[place]?.index ?? 0, made));
  } finally {
    settled();
  }
  return results.filter((one) => one !== undefined);
}

interface Waiting {
  readonly index: number;
  readonly bytes: number;
  readonly handed: HandedMachine;
}
