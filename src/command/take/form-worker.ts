// The thread that reads one form and ends.
import { parentPort, workerData } from 'node:worker_threads';
import { readForm } from './read-form.ts';

const bytes: unknown = workerData;
if (bytes instanceof Uint8Array) parentPort?.postMessage(await readForm(bytes));
