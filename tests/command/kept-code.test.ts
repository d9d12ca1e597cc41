// Compiled code that is kept: V8 takes it where it fits, passes it over where it does not, and it never changes what comes of a check.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { keptCodeOf } from '../../src/command/kept-code.ts';
import { compiled } from '../set-up/compiled.ts';
import { runProgram } from './process.ts';
import { smallMachine } from './small-machine.ts';

const source = (path: string): string => new URL(`../../src/command/${path}`, import.meta.url).href;

/** Whether V8 passes over what is kept for a script, asked in a process of its own under the flags that the program sets. */
function passedOver(script: string, kept: string): unknown {
  const asked = `
    import { readFileSync } from 'node:fs';
    import { loadScript } from '${source('kept-code.ts')}';
    import { waitBeforeOptimising } from '${source('patient-compiler.ts')}';
    waitBeforeOptimising();
    console.log(loadScript(${JSON.stringify(script)}, readFileSync(${JSON.stringify(kept)})).script.cachedDataRejected);`;
  const root = fileURLToPath(new URL('../../', import.meta.url));
  const words = ['--import', 'tsx', '--input-type=module', '-e', asked];
  return JSON.parse(execFileSync(process.execPath, words, { cwd: root, encoding: 'utf8' }));
}

test('a check says the same with the code that is kept for it, with spoilt code and without', async () => {
  const from = dirname(await compiled());
  // Beside the program as it is kept for all tests: it looks for its content above itself.
  const dist = mkdtempSync(join(dirname(from), 'spoilt-'));
  try {
    cpSync(from, dist, { recursive: true });
    const script = join(dist, 'check.cjs');
    const kept = keptCodeOf(script);
    const machine = smallMachine();
    const run = async (): ReturnType<typeof runProgram> =>
      runProgram(join(dist, 'splitpin.js'), ['check', machine, '--today', '2024-06-01'], { folder: machine });
    const usual = await run();
    expect(usual.code).toBe(0);
    const code = readFileSync(kept);
    expect(code.toString('latin1'), 'what is kept goes to other computers').not.toContain(dirname(dirname(from)));
    expect(passedOver(script, kept)).toBe(false);
    writeFileSync(kept, code.subarray(0, code.length / 2));
    expect(passedOver(script, kept)).toBe(true);
    expect(await run()).toEqual(usual);
    rmSync(kept);
    expect(await run()).toEqual(usual);
  } finally {
    rmSync(dist, { recursive: true });
  }
});
