// PDFs made on other cores, beside the pages of the site: each thread is handed its share at the start; results keep the order asked.
import type { Worker } from 'node:worker_threads';
import { startThread } from './own-thread.ts';
import { printTask, type Printed, type PrintTask } from './print-task.ts';
import type { Answer } from './print-worker.ts';

/** A task with a measure of its size, such as the length of the sheet as text. */
export interface Sized {
  readonly size: number;
  readonly task: PrintTask;
}

/** Less than so much text is set sooner than a thread is begun. Measured with the demo machine: a sheet or two. */
export const worthAThread = 30_000;

/**
 * A further thread has to load the printer and warm up once more, which costs as much as setting several hundred pages; and one
 * sheet is never parted, so only what stands beside the largest can be shared out.
 */
export const worthAnother = 1_500_000;

/** How many threads pay for themselves besides our own, which has the site to make; none on a single core. */
export function threadsFor(sizes: readonly number[], cores: number): number {
  const all = sizes.reduce((sum, size) => sum + size, 0);
  const largest = sizes.reduce((most, size) => Math.max(most, size), 0);
  if (cores < 2 || all < worthAThread) return 0;
  return Math.min(cores, sizes.length, 1 + Math.floor((all - largest) / worthAnother));
}

/** Told of each task when its turn has come: in our own thread as it begins, in others as it is done. */
export type Told = (task: PrintTask, done: number) => void;

/** Writes all PDFs; the files are the same with any number of threads. A fault of one ends all, and is thrown as it was. */
export async function printAll(tasks: readonly Sized[], threads: number, told: Told): Promise<readonly Printed[]> {
  if (threads === 0) return printInTurn(tasks, told);
  const results = new Map<Sized, Printed>();
  const workers = shares(tasks, threads).map((share) => ({
    share,
    worker: startThread('print-worker', import.meta.url),
  }));
  try {
    await Promise.all(
      workers.map(async ({ share, worker }) =>
        answers(worker, share, (one, printed) => {
          told(one.task, results.size);
          results.set(one, printed);
        }),
      ),
    );
  } finally {
    await Promise.all(workers.map(async ({ worker }) => worker.terminate()));
  }
  return tasks.flatMap((task) => results.get(task) ?? []);
}

async function printInTurn(tasks: readonly Sized[], told: Told): Promise<readonly Printed[]> {
  const results: Printed[] = [];
  for (const { task } of tasks) {
    told(task, results.length);
    results.push(await printTask(task));
  }
  return results;
}

/** The largest first, each to the thread that has least to do so far. */
function shares(tasks: readonly Sized[], threads: number): readonly (readonly Sized[])[] {
  const all = Array.from({ length: threads }, (): { size: number; readonly share: Sized[] } => ({
    size: 0,
    share: [],
  }));
  for (const task of tasks.toSorted((a, b) => b.size - a.size)) {
    const least = all.reduce((one, other) => (other.size < one.size ? other : one));
    least.share.push(task);
    least.size += task.size;
  }
  return all.map(({ share }) => share);
}

/** Hands a thread its share and waits for every answer; they come in the order asked. */
async function answers(
  worker: Worker,
  share: readonly Sized[],
  came: (one: Sized, printed: Printed) => void,
): Promise<void> {
  const waiting = [...share];
  await new Promise<void>((resolve, reject) => {
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error('A thread that prints ended with ' + String(code) + '.')));
    worker.on('message', (answer: Answer) => {
      const one = waiting.shift();
      if ('fault' in answer) reject(faultOf(answer.fault));
      else if (one !== undefined) came(one, answer.printed);
      if (waiting.length === 0) resolve();
    });
    for (const { task } of share) worker.postMessage(handed(task));
    if (share.length === 0) resolve();
  });
}

/** A sheet makes its blocks when they are asked for; a thread is handed them made. */
function handed(task: PrintTask): PrintTask {
  return { ...task, sheet: { ...task.sheet, blocks: task.sheet.blocks } };
}

function faultOf({ message, code, stack }: Extract<Answer, { fault: unknown }>['fault']): Error {
  return Object.assign(new Error(message), code === undefined ? {} : { code }, stack === undefined ? {} : { stack });
}
