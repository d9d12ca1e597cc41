// The compiled program, made once for all test files and kept until a source changes. Run by itself it says where.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundle, fingerprint } from '../../src/tools/bundle.ts';

/** In the project's own folder: the program looks for styles and scripts above itself, and packages may be another folder's, by a link. */
const shelf = fileURLToPath(new URL('../../.cache/compiled/', import.meta.url));

function place(): string {
  return join(shelf, fingerprint());
}

/** Path of the compiled program. Test files that run at the same time may both compile; the first to finish is kept. */
export async function compiled(): Promise<string> {
  const kept = place();
  const program = join(kept, 'splitpin.js');
  if (existsSync(program)) return program;
  mkdirSync(shelf, { recursive: true });
  const fresh = mkdtempSync(join(shelf, 'new-'));
  await bundle(join(fresh, 'dist'));
  try {
    renameSync(join(fresh, 'dist'), kept);
  } catch {
    if (!existsSync(program)) throw new Error('the program could not be compiled into ' + kept);
  }
  rmSync(fresh, { recursive: true, force: true });
  return program;
}

let known: string | undefined;

/** The same for whoever cannot wait: another process compiles it when it is not there yet, and says where. */
export function compiledNow(): string {
  if (known !== undefined) return known;
  const program = join(place(), 'splitpin.js');
  known = existsSync(program) ? program : compiledElsewhere();
  return known;
}

function compiledElsewhere(): string {
  const words = ['--import', 'tsx', fileURLToPath(import.meta.url)];
  return execFileSync(process.execPath, words, { encoding: 'utf8' }).trim();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.log(await compiled());
