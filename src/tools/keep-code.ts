// A machine is checked and built once with the compiled program, and what V8 compiled on the way is kept for the next start.
import { build } from 'esbuild';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { keptScripts } from './kept-scripts.ts';

/**
 * Keeps the code of every script in the folder; `siteGenerator` is the one that is not ours. It is made under the flags that the program
 * sets, since V8 takes it back under the same ones only.
 */
export async function keepCode(folder: string, root: string, machine: string, siteGenerator: string): Promise<void> {
  const keeper = join(folder, 'keep-code.cjs');
  const scratch = mkdtempSync(join(tmpdir(), 'splitpin-kept-'));
  try {
    await build({
      absWorkingDir: root,
      bundle: true,
      platform: 'node',
      stdin: { contents: keeperSource(machine, scratch, siteGenerator), resolveDir: join(root, 'src/command') },
      outfile: keeper,
      format: 'cjs',
      logLevel: 'warning',
    });
    execFileSync(process.execPath, [keeper], { stdio: ['ignore', 'ignore', 'inherit'] });
  } finally {
    rmSync(keeper, { force: true });
    rmSync(scratch, { recursive: true });
  }
}

/** The binder is printed in the same thread, and finds the printer and the site generator as modules that were loaded before. */
function keeperSource(machine: string, scratch: string, siteGenerator: string): string {
  const { check, binder, printer } = keptScripts;
  return `import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { keptCodeOf, loadScript } from './kept-code.ts';
import { waitBeforeOptimising } from './patient-compiler.ts';
waitBeforeOptimising();
const load = (name) => {
  const file = join(__dirname, name);
  const { script, given } = loadScript(file);
  require.cache[file] = { id: file, filename: file, loaded: true, exports: given };
  return { given, keep: () => writeFileSync(keptCodeOf(file), script.createCachedData()) };
};
const silent = () => {};
const terminal = { say: silent, tell: silent, progress: silent, colour: false };
const machine = ${JSON.stringify(machine)};
const today = '2026-11-14';
const run = async () => {
  const check = load('${check.file}');
  await check.given.checkCommand(machine, { today }, { terminal, folder: __dirname, clock: () => new Date(0) });
  check.keep();
  const [printer, generator, binder] = [load('${printer.file}'), load('${siteGenerator}'), load('${binder.file}')];
  const out = join(${JSON.stringify(scratch)}, 'binder');
  const job = { machine, out, today, options: {}, program: '', choices: '', printThreads: 0 };
  const { code } = await binder.given.makeBinder(job, undefined, terminal);
  if (code !== 0) throw new Error('the machine whose code is kept could not be built');
  for (const { keep } of [printer, generator, binder]) keep();
};
run();
`;
}
