// Several PDFs at once on the cores there are: each thread has one task in hand at a time, the largest first; results keep the order asked.
import { Worker } from 'node:worker_threads';
import { printTask, type Printed, type PrintTask } from './print-task.ts';
import type { Answer } from './print-worker.ts';

/** A task with a measure of its size, such as the length of the sheet as text. */
export interface Sized {
  readonly size: number;
  readonly task: PrintTask;
}

/**
 * A thread has to load the printer and to warm up, which costs about as much as setting this much text: less than this for
 * each thread is done sooner without. Measured, not known: see the line of the threads in `npm run bench`.
 */
export const worthAThread = 1_500_000;

/** How many threads pay for themselves; 1 is none besides our own. */
export function threadsFor(sizes: readonly number[], cores: number): number {
  const all = sizes.reduce((sum, size) => sum + size, 0);
  const largest = sizes.reduce((most, size) => Math.max(most, size), 0);
  // One sheet is never parted: when it is nearly all there is, others beside it save nothing.
  if (largest === 0 || all - largest < worthAThread) return 1;
  return Math.max(1, Math.min(cores, sizes.length, Math.floor(all / worthAThread)));
}

/** Writes all PDFs; `began` is told of each task as it is taken up. A fault of one ends all, and is thrown as it was. */
export async function printAll(
  tasks: readonly Sized[],
  threads: number,
  began: (task: PrintTask, done: number) => void,
): Promise<readonly Printed[]> {
  if (threads < 2) return printInTurn(tasks, began);
  const results = new Map<Sized, Printed>();
  const waiting = tasks.toSorted((a, b) => b.size - a.size);
  const workers = Array.from({ length: threads }, startThread);
  try {
    await Promise.all(
      workers.map(async (worker) => {
        for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
          began(next.task, results.size);
          results.set(next, await ask(worker, next.task));
        }
      }),
    );
  } finally {
    await Promise.all(workers.map(async (worker) => worker.terminate()));
  }
  return tasks.flatMap((task) => results.get(task) ?? []);
}

async function printInTurn(
  tasks: readonly Sized[],
  began: (task: PrintTask, done: number) => void,
): Promise<readonly Printed[]> {
  const results: Printed[] = [];
  for (const { task } of tasks) {
    began(task, results.length);
    results.push(await printTask(task));
  }
  return results;
}

/** The thread's program lies beside this one, compiled or as it was written. */
function startThread(): Worker {
  const written = import.meta.url.endsWith('.ts');
  const program = new URL(written ? './print-worker.ts' : './print-worker.js', import.meta.url);
  return new Worker(program, written ? { execArgv: ['--import', 'tsx'] } : {});
}

async function ask(worker: Worker, task: PrintTask): Promise<Printed> {
  // A sheet makes its blocks when they are asked for; a thread is handed them made.
  const sheet = { ...task.sheet, blocks: task.sheet.blocks };
  const answer = await new Promise<Answer>((resolve, reject) => {
    const ended = (code: number): void => reject(new Error('A thread that prints ended with ' + String(code) + '.'));
    worker.once('error', reject).once('exit', ended);
    worker.once('message', (given: Answer) => {
      worker.off('error', reject).off('exit', ended);
      resolve(given);
    });
    worker.postMessage({ ...task, sheet });
  });
  if ('printed' in answer) return answer.printed;
  const { message, code, stack } = answer.fault;
  throw Object.assign(new Error(message), code === undefined ? {} : { code }, stack === undefined ? {} : { stack });
}
