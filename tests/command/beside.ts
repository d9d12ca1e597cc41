// The compiled program run beside a machine folder, and what lies in a folder afterwards.
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { compiled } from '../set-up/compiled.ts';
import { runProgram, type Circumstances, type Ended } from './process.ts';

export const day = ['--today', '2024-06-01'];

let program: Promise<string> | undefined;

/** Runs the program beside a machine folder. */
export async function run(
  machine: string,
  words: readonly string[],
  more: Partial<Circumstances> = {},
): Promise<Ended> {
  program ??= compiled();
  return runProgram(await program, words, { folder: dirname(machine), ...more });
}

/** Every file below a folder with its text, by name. */
export function contents(folder: string): Readonly<Record<string, string>> {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    statSync(join(folder, name)).isFile(),
  );
  return Object.fromEntries(files.sort().map((name) => [name, readFileSync(join(folder, name), 'latin1')]));
}
