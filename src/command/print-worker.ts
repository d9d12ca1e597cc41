// A thread that writes PDFs: it is handed tasks, does them one after the other, and answers each with what came of it or with what went wrong.
import { parentPort } from 'node:worker_threads';
import { printTask, type Printed, type PrintTask } from './print-task.ts';

/** What a thread answers. A fault loses its code on the way between threads, so that goes beside it. */
export type Answer =
  | { readonly printed: Printed }
  | { readonly fault: { readonly message: string; readonly code?: string; readonly stack?: string } };

async function answer(task: PrintTask): Promise<Answer> {
  try {
    return { printed: await printTask(task) };
  } catch (cause) {
    if (!(cause instanceof Error)) return { fault: { message: String(cause) } };
    const code = 'code' in cause && typeof cause.code === 'string' ? { code: cause.code } : {};
    return { fault: { message: cause.message, ...code, ...(cause.stack === undefined ? {} : { stack: cause.stack }) } };
  }
}

const port = parentPort;
let before: Promise<void> = Promise.resolve();
port?.on('message', (task: PrintTask) => {
  before = before.then(async () => port.postMessage(await answer(task)));
});
