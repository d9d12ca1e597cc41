// HEIC, the photos of many phones: unpacked by a package that need not be there, in a thread of its own, one picture at a time, within a time.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { Worker } from 'node:worker_threads';

/** A picture unpacked: four bytes a pixel, already upright. */
export interface RawPicture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** Twelve megapixels take about a second on a quiet machine; a file that takes so much longer is not a photo. */
const longest = 120_000;

/** Heap of the thread; the pixels lie outside it, and are bounded by the size that the head of the picture tells. */
const heap = { maxOldGenerationSizeMb: 256 } as const;

/** Plain words for the thread, so that no second file has to be found beside a compiled program. */
const inThread = `
const { parentPort, workerData } = require('node:worker_threads');
const decode = require(workerData.decoder);
decode.all({ buffer: workerData.bytes }).then(async (pictures) => {
  const [first] = pictures;
  if (first === undefined || first.width * first.height > workerData.most) throw new Error('no picture of that size');
  const { width, height, data } = await first.decode();
  const bytes = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
  parentPort.postMessage({ width, height, data: bytes }, bytes.byteLength === data.buffer.byteLength ? [data.buffer] : []);
});
`;

/** Where the decoder is installed; undefined when it is not. */
export function heicDecoder(): string | undefined {
  try {
    return createRequire(import.meta.url).resolve('heic-decode');
  } catch {
    return undefined;
  }
}

let last: Promise<unknown> = Promise.resolve();

/** Unpacks one HEIC file of at most `most` pixels, after those that were asked for before. Rejects when it is broken, too slow, or no decoder is there. */
export function unpackHeic(path: string, most: number): Promise<RawPicture> {
  const next = last.then(() => unpack(path, most));
  last = next.catch(() => undefined);
  return next;
}

function unpack(path: string, most: number): Promise<RawPicture> {
  const decoder = heicDecoder();
  if (decoder === undefined) return Promise.reject(new Error('heic-decode is not installed'));
  const worker = new Worker(inThread, {
    eval: true,
    workerData: { decoder, bytes: readFileSync(path), most },
    resourceLimits: heap,
    // What a broken picture makes the decoder say is told in our own words.
    stdout: true,
    stderr: true,
    execArgv: [],
  });
  return new Promise<RawPicture>((resolve, reject) => {
    const clock = setTimeout(() => reject(new Error('too slow')), longest);
    worker.once('message', (message: unknown) => {
      if (isPicture(message)) resolve(message);
      else reject(new Error('no picture'));
    });
    worker.once('error', reject);
    worker.once('exit', () => {
      clearTimeout(clock);
      reject(new Error('no picture'));
    });
  }).finally(() => worker.terminate());
}

function isPicture(message: unknown): message is RawPicture {
  if (typeof message !== 'object' || message === null) return false;
  if (!('width' in message && 'height' in message && 'data' in message)) return false;
  const { width, height, data } = message;
  if (typeof width !== 'number' || typeof height !== 'number' || !(data instanceof Uint8Array)) return false;
  return data.length === width * height * 4;
}
