// Whole processes, measured: processor time of the process and all its children, wall time, and the largest memory.
import { spawn } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { Readable } from 'node:stream';
import { coresAtWork, noteThreads, type ThreadTicks } from './thread-time.ts';

/** Code of the fault of a program that did not end in the seconds that it was given. */
export const tooLong = 'TOO_LONG';

export interface Cost {
  /** User and system time of the whole tree, seconds. */
  readonly cpu: number;
  readonly wall: number;
  /** Largest sum of resident memory over the tree, MB. */
  readonly peak: number;
  /** Cores that its threads could have kept at work, were they free. */
  readonly cores: number;
}

/** No run is waited for longer than this, seconds: on a computer that is busy with other things it is given up, and said so. */
const longest = 900;

const ticksPerSecond = 100;
const pageSize = 4096;

/** The shell's own clock of its children, to the millisecond, on a descriptor of its own. */
const timed = 'TIMEFORMAT="%3U %3S"; { time "$@" 2>&4; } 4>&2 2>&3';

/**
 * Runs a program to its end. The shell counts the children that it waited for; a browser's helpers are not among them, so the
 * tree is also read from /proc every few milliseconds, and the larger of the two sums counts.
 */
export async function run(command: readonly string[], folder: string, most: number = longest): Promise<Cost> {
  const begun = performance.now();
  const child = spawn('bash', ['-c', timed, 'bash', ...command], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'pipe', 'pipe'],
    // A group of its own, so that it can be ended as a whole.
    detached: true,
    env: { ...process.env, NO_COLOR: '1' },
  });
  const complaint = gather(child.stdio[2]);
  const clock = gather(child.stdio[3]);
  const seen = new Map<number, number>();
  const threads: ThreadTicks = new Map();
  let peak = 0;
  const watch = setInterval(() => {
    peak = Math.max(peak, sample(child.pid ?? 0, seen));
    noteThreads([...seen.keys()], threads);
  }, 25);
  const end = setTimeout(() => {
    if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
  }, most * 1000);
  const code = await new Promise<number | null>((done, failed) => {
    child.on('error', failed);
    child.on('close', (status) => done(status));
  });
  clearInterval(watch);
  clearTimeout(end);
  const wall = (performance.now() - begun) / 1000;
  if (wall >= most)
    throw Object.assign(new Error(`${command.join(' ')} was given up after ${String(most)} s`), { code: tooLong });
  if (code !== 0) throw new Error(`${command.join(' ')} ended with ${String(code)}\n${complaint().slice(-2000)}`);
  const counted = clock()
    .trim()
    .split(' ')
    .reduce((sum, part) => sum + Number(part), 0);
  const sampled = [...seen.values()].reduce((sum, ticks) => sum + ticks, 0) / ticksPerSecond;
  return { cpu: Math.max(counted, sampled), wall, peak: peak / 1e6, cores: coresAtWork(threads) };
}

function gather(stream: unknown): () => string {
  const pieces: string[] = [];
  if (stream instanceof Readable) stream.on('data', (piece: Buffer) => pieces.push(piece.toString()));
  return () => pieces.join('');
}

/** Notes the ticks of every process of the tree; gives its resident memory in bytes. */
function sample(root: number, seen: Map<number, number>): number {
  let memory = 0;
  for (const { id, ticks, resident } of treeOf(root)) {
    seen.set(id, Math.max(seen.get(id) ?? 0, ticks));
    memory += resident;
  }
  return memory;
}

interface Seen {
  readonly id: number;
  readonly parent: number;
  readonly ticks: number;
  readonly resident: number;
}

function treeOf(root: number): readonly Seen[] {
  const all = readdirSync('/proc').flatMap((name) => (/^\d+$/.test(name) ? (statOf(name) ?? []) : []));
  const inside = new Set([root]);
  for (let grown = true; grown;) {
    const more = all.filter((each) => inside.has(each.parent) && !inside.has(each.id));
    for (const each of more) inside.add(each.id);
    grown = more.length > 0;
  }
  return all.filter((each) => inside.has(each.id));
}

function statOf(id: string): Seen | undefined {
  try {
    const text = readFileSync(`/proc/${id}/stat`, 'utf8');
    const parts = text
      .slice(text.lastIndexOf(')') + 2)
      .split(' ')
      .map(Number);
    const [, parent = 0] = parts;
    return {
      id: Number(id),
      parent,
      ticks: (parts[11] ?? 0) + (parts[12] ?? 0),
      resident: (parts[21] ?? 0) * pageSize,
    };
  } catch {
    return undefined;
  }
}
