// How much stays in memory for every page that has been written: a run of its own that collects garbage as it goes.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const walker = fileURLToPath(new URL('live-heap-run.ts', import.meta.url));

/** Kilobytes of live heap that each further page of the history takes. */
export async function liveHeapPerPage(machine: string): Promise<number | undefined> {
  const words = ['--expose-gc', '--import', 'tsx', walker, machine];
  const ended = spawnSync(process.execPath, words, { encoding: 'utf8', maxBuffer: 1e7 });
  if (ended.status !== 0) throw new Error(ended.stderr);
  return Promise.resolve(Number(ended.stdout.trim()));
}
