// Processor time of each thread of a tree of processes, read while it runs: who worked how much, whatever else the computer was doing.
import { readFileSync, readdirSync } from 'node:fs';

/** Ticks by `process/thread`; a thread that has ended keeps what it was seen with last. */
export type ThreadTicks = Map<string, number>;

/** Notes every thread of some processes. */
export function noteThreads(processes: readonly number[], seen: ThreadTicks): void {
  for (const id of processes) {
    for (const thread of namesIn(`/proc/${String(id)}/task`)) {
      const ticks = ticksOf(`/proc/${String(id)}/task/${thread}/stat`);
      const key = `${String(id)}/${thread}`;
      seen.set(key, Math.max(seen.get(key) ?? 0, ticks));
    }
  }
}

/**
 * How many cores could have been kept at work, were they free: all that was done, over what had to be done one after the other, which is
 * what the first thread of the busiest process did and what the busiest of its others did.
 */
export function coresAtWork(seen: ThreadTicks): number {
  const all = [...seen].map(([key, ticks]) => ({ first: key.split('/')[0] === key.split('/')[1], ticks }));
  const total = all.reduce((sum, { ticks }) => sum + ticks, 0);
  const most = (first: boolean): number =>
    Math.max(0, ...all.filter((one) => one.first === first).map((one) => one.ticks));
  return total / Math.max(1, most(true) + most(false));
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function ticksOf(path: string): number {
  try {
    const text = readFileSync(path, 'utf8');
    const parts = text.slice(text.lastIndexOf(')') + 2).split(' ');
    return Number(parts[11] ?? 0) + Number(parts[12] ?? 0);
  } catch {
    return 0;
  }
}
