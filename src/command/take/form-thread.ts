// A form is read in a thread of its own with so much memory and so much time: it comes from outside.
import { startThread } from '../own-thread.ts';
import type { FormFault, FormReading } from './filled-form.ts';

export interface Bounds {
  /** Milliseconds; our forms are read in a fraction of a second. */
  readonly time: number;
  /** Megabytes of heap of the thread. */
  readonly heap: number;
  /** Megabytes by which the whole program may grow while the thread runs: what is unpacked lies outside the heap. */
  readonly growth: number;
}

export const formBounds: Bounds = { time: 120_000, heap: 192, growth: 400 };

/** A form with its photos is smaller. */
export const largestForm = 64 * 1024 * 1024;

/** How often the growth is looked at. */
const look = 25;

/** Reads a form; whatever the file does, an answer comes. */
export function readFormInThread(bytes: Uint8Array, bounds: Bounds = formBounds): Promise<FormReading> {
  const worker = startThread('form-worker', import.meta.url, {
    workerData: bytes,
    resourceLimits: { maxOldGenerationSizeMb: bounds.heap, maxYoungGenerationSizeMb: 32, stackSizeMb: 4 },
    // What the reader of PDFs says of a broken file is told in our own words.
    stdout: true,
    stderr: true,
  });
  const begun = process.memoryUsage.rss();
  return new Promise<FormReading>((resolve) => {
    const give = (fault: FormFault): void => resolve({ fault });
    const clock = setTimeout(() => give('too long'), bounds.time);
    const scales = setInterval(() => {
      if (process.memoryUsage.rss() - begun > bounds.growth * 1024 * 1024) give('too much');
    }, look);
    const end = (): void => {
      clearTimeout(clock);
      clearInterval(scales);
    };
    worker.once('message', (reading: FormReading) => {
      end();
      resolve(reading);
    });
    worker.once('error', (cause) => {
      end();
      give('code' in cause && cause.code === 'ERR_WORKER_OUT_OF_MEMORY' ? 'too much' : 'damaged');
    });
    worker.once('exit', () => {
      end();
      give('damaged');
    });
  }).finally(() => worker.terminate());
}
