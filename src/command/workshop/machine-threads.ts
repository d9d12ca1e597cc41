// Binders made on several cores: as many threads as there are cores, each with one machine at a time, so that memory does not grow with the workshop.
import { availableParallelism } from 'node:os';
import type { Worker } from 'node:worker_threads';
import { startThread } from '../own-thread.ts';
import { brokenDown } from './broken-down.ts';
import type { HandedMachine, ToldMachine } from './told-machine.ts';

/** How many threads: a single core is not shared, and a thread without a machine would only cost. */
export function machineThreads(machines: number, cores = availableParallelism()): number {
  return cores < 2 || machines < 2 ? 0 : Math.min(cores, machines);
}

/**
 * Makes every binder and tells of each as it is done, in any order. What goes wrong with one machine, even a thread that ends, stops
 * no other. The promise rejects only when threads cannot be started at all.
 */
export async function makeInThreads(
  handed: readonly HandedMachine[],
  threads: number,
  done: (index: number, made: ToldMachine) => void,
): Promise<void> {
  const waiting = handed.map((one, index) => ({ one, index }));
  await Promise.all(
    Array.from({ length: threads }, async () => {
      let worker: Worker | undefined;
      try {
        for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
          worker ??= startThread('machine-worker', import.meta.url);
          const made = await answer(worker, next.one);
          // A thread that broke down takes no further machine.
          if (made.ended) worker = undefined;
          done(next.index, made);
        }
      } finally {
        await worker?.terminate();
      }
    }),
  );
}

type Answered = ToldMachine & { readonly ended?: true };

async function answer(worker: Worker, handed: HandedMachine): Promise<Answered> {
  return new Promise((resolve) => {
    const broke = (cause: unknown): void => resolve({ ...brokenDown(cause), ended: true });
    const left = (code: number): void => broke(new Error(`A thread that makes binders ended with ${String(code)}.`));
    worker.once('error', broke);
    worker.once('exit', left);
    worker.once('message', (made: ToldMachine) => {
      worker.off('error', broke);
      worker.off('exit', left);
      resolve(made);
    });
    worker.postMessage(handed);
  });
}
