// Threads in tests run what is shipped: a thread of sources loads and translates them again each time, which takes ten times as long as the work.
import { dirname, join } from 'node:path';
import { Worker, type WorkerOptions } from 'node:worker_threads';
import { compiledNow } from './compiled.ts';

/** Stands in for `startThread` of src/command/own-thread.ts. */
export function startThread(name: string, _from: string, options: WorkerOptions = {}): Worker {
  return new Worker(join(dirname(compiledNow()), `${name}.js`), options);
}
