// Compiled code that is kept: V8 takes it where it fits, passes it over where it does not, and it never changes what comes of a check or a build.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { keptCodeOf } from '../../src/command/kept-code.ts';
import { keptScripts } from '../../src/tools/kept-scripts.ts';
import { siteGeneratorFile } from '../../src/tools/bundled-site-generator.ts';
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

const scripts = [...Object.values(keptScripts).map(({ file }) => file), siteGeneratorFile];

/** Every file below a folder with what it holds, but what tells when it was made. */
function heldBy(folder: string): ReadonlyMap<string, string> {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => !name.startsWith('.'));
  const held = files.filter((name) => statSync(join(folder, name)).isFile()).toSorted();
  return new Map(held.map((name) => [name, readFileSync(join(folder, name), 'latin1')]));
}

test('check and build give the same with the code that is kept for them, with spoilt code and without', async () => {
  const from = dirname(await compiled());
  // Beside the program as it is kept for all tests: it looks for its content above itself.
  const dist = mkdtempSync(join(dirname(from), 'spoilt-'));
  try {
    cpSync(from, dist, { recursive: true });
    const files = scripts.map((name) => ({ script: join(dist, name), kept: keptCodeOf(join(dist, name)) }));
    const machine = smallMachine();
    const run = async (): Promise<unknown> => {
      const out = join(dist, 'made', 'binder');
      rmSync(dirname(out), { recursive: true, force: true });
      mkdirSync(dirname(out));
      const asked = (words: readonly string[]): ReturnType<typeof runProgram> =>
        runProgram(join(dist, 'splitpin.js'), [...words, '--today', '2024-06-01'], { folder: machine });
      const ends = [await asked(['check', machine]), await asked(['build', machine, '--out', out])];
      expect(ends.map(({ code }) => code)).toEqual([0, 0]);
      return [ends, heldBy(out)];
    };
    const usual = await run();
    for (const { script, kept } of files) {
      const code = readFileSync(kept);
      expect(code.toString('latin1'), 'what is kept goes to other computers').not.toContain(dirname(dirname(from)));
      expect(passedOver(script, kept), script).toBe(false);
      writeFileSync(kept, code.subarray(0, code.length / 2));
      expect(passedOver(script, kept), script).toBe(true);
    }
    expect(await run()).toEqual(usual);
    for (const { kept } of files) rmSync(kept);
    expect(await run()).toEqual(usual);
  } finally {
    rmSync(dist, { recursive: true });
  }
});
