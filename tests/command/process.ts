// The program as a person runs it: a process with arguments, a folder and an environment.
import { spawn, type ChildProcess } from 'node:child_process';

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Circumstances {
  readonly folder: string;
  readonly environment?: Readonly<Record<string, string>>;
  readonly user?: number;
}

function begin(program: string, words: readonly string[], circumstances: Circumstances): ChildProcess {
  const { NO_COLOR: _, ...inherited } = process.env;
  return spawn(process.execPath, [program, ...words], {
    cwd: circumstances.folder,
    env: { ...inherited, ...circumstances.environment },
    stdio: ['ignore', 'pipe', 'pipe'],
    ...(circumstances.user === undefined ? {} : { uid: circumstances.user, gid: circumstances.user }),
  });
}

/** Runs the program to its end. */
export async function runProgram(
  program: string,
  words: readonly string[],
  circumstances: Circumstances,
): Promise<Ended> {
  const child = begin(program, words, circumstances);
  const out = gather(child.stdout);
  const err = gather(child.stderr);
  const code = await new Promise<number | null>((done, failed) => {
    child.on('error', failed);
    child.on('close', (status) => done(status));
  });
  return { code, out: out(), err: err() };
}

/** Milliseconds; a computer that has much else to do is slow, and that is no fault. */
export const patience = 240_000;

/** NODE_OPTIONS of a build that stops itself as soon as its folder aside is there, to be killed or woken half-way. */
export const haltingHalfWay = `--import=data:text/javascript,${encodeURIComponent(`
  import fs from 'node:fs';
  import { syncBuiltinESMExports } from 'node:module';
  const { mkdtempSync } = fs;
  fs.mkdtempSync = (...all) => {
    const made = mkdtempSync(...all);
    if (made.includes('/.bike-')) process.kill(process.pid, 'SIGSTOP');
    return made;
  };
  syncBuiltinESMExports();
`)}`;

export interface Running {
  readonly child: ChildProcess;
  readonly out: () => string;
  readonly err: () => string;
  /** Waits until the output matches; fails with what there is when the process ends first or time is up. */
  readonly until: (pattern: RegExp) => Promise<RegExpExecArray>;
}

/** Starts the program and leaves it running. */
export function startProgram(program: string, words: readonly string[], circumstances: Circumstances): Running {
  const child = begin(program, words, circumstances);
  const out = gather(child.stdout);
  const err = gather(child.stderr);
  let isOver = false;
  child.on('close', () => {
    isOver = true;
  });
  const until = async (pattern: RegExp): Promise<RegExpExecArray> => {
    for (let turn = 0; turn < patience / 20; turn += 1) {
      const match = pattern.exec(out() + err());
      if (match !== null) return match;
      if (isOver) break;
      await new Promise((done) => setTimeout(done, 20));
    }
    throw new Error(`no ${String(pattern)} in\n${out()}\n${err()}`);
  };
  return { child, out, err, until };
}

function gather(stream: NodeJS.ReadableStream | null): () => string {
  const pieces: string[] = [];
  stream?.on('data', (piece: Buffer) => pieces.push(piece.toString()));
  return () => pieces.join('');
}
