// `npm run soak -- 20`: the tests that draw values at random, so many times and each time from another seed; what fell is named with its seed.
import { spawnSync } from 'node:child_process';
import { randomInt } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const vitest = join(root, 'node_modules', '.bin', 'vitest');

/** Test files that draw values, below the project. */
function drawing(): readonly string[] {
  const names = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' });
  return names
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => join('tests', name))
    .filter((file) => /from 'fast-check'|any-block|records-written/.test(readFileSync(join(root, file), 'utf8')));
}

/** Runs the files from one seed; true when all passed. */
function passes(files: readonly string[], seed: number): boolean {
  const env = { ...process.env, SPLITPIN_SEED: String(seed) };
  return spawnSync(vitest, ['run', '--reporter=dot', ...files], { cwd: root, env, stdio: 'inherit' }).status === 0;
}

const [times = '10', ...only] = process.argv.slice(2);
const files = only.length > 0 ? only : drawing();
const fallen: number[] = [];
for (let turn = 0; turn < Number(times); turn += 1) {
  const seed = randomInt(2 ** 31);
  if (!passes(files, seed)) fallen.push(seed);
}
for (const seed of fallen) console.log(`failed: SPLITPIN_SEED=${String(seed)} npx vitest run ${only.join(' ')}`);
console.log(`${times} rounds, ${String(fallen.length)} failed`);
process.exitCode = fallen.length === 0 ? 0 : 1;
