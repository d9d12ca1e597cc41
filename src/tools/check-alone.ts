// `check` is asked more often than all else: it has a script of its own in the compiled program, with its code beside it as V8 compiled it.
import { build, type BuildOptions, type Plugin } from 'esbuild';
import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';

const script = 'check.cjs';

/** What `splitpin.ts` gets where it asks for the command. */
const standIn = `import { fileURLToPath } from 'node:url';
import { loadKept } from './kept-code.ts';
export const { checkCommand } = loadKept(fileURLToPath(new URL('./${script}', import.meta.url)));
`;

/** For the program: the command is the script beside it. */
export const checkBeside: Plugin = {
  name: 'check-beside',
  setup(building) {
    building.onResolve({ filter: /\/check-command\.ts$/ }, ({ path }) => ({ path, namespace: 'check-beside' }));
    building.onLoad({ filter: /.*/, namespace: 'check-beside' }, () => ({
      contents: standIn,
      loader: 'js',
      resolveDir: join(import.meta.dirname, '../command'),
    }));
  },
};

/** How the script is made; `ours` is what all parts of the program are made with. */
export function checkInto(folder: string, ours: BuildOptions): BuildOptions {
  return {
    ...ours,
    entryPoints: ['src/command/check-command.ts'],
    outfile: join(folder, script),
    format: 'cjs',
    // In one file nothing is loaded later, and a script has no address of its own.
    supported: { 'dynamic-import': false },
    banner: { js: "const addressOfScript = require('node:url').pathToFileURL(__filename).href;" },
    define: { ...ours.define, 'import.meta.url': 'addressOfScript' },
  };
}

/**
 * Runs a check of a machine once and keeps what V8 compiled for it. It is made under the flags that the program sets, since V8 takes
 * it back under the same ones only.
 */
export async function keepCheckCode(folder: string, root: string, machine: string): Promise<void> {
  const keeper = join(folder, 'keep-check.cjs');
  await build({
    absWorkingDir: root,
    bundle: true,
    platform: 'node',
    stdin: { contents: keeperSource(machine), resolveDir: join(root, 'src/command') },
    outfile: keeper,
    format: 'cjs',
    logLevel: 'warning',
  });
  execFileSync(process.execPath, [keeper], { stdio: ['ignore', 'ignore', 'inherit'] });
  rmSync(keeper);
}

function keeperSource(machine: string): string {
  return `import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { keptCodeOf, loadScript } from './kept-code.ts';
import { waitBeforeOptimising } from './patient-compiler.ts';
waitBeforeOptimising();
const file = join(__dirname, '${script}');
const { script, given } = loadScript(file);
const silent = () => {};
const terminal = { say: silent, tell: silent, progress: silent, colour: false };
given.checkCommand(${JSON.stringify(machine)}, { today: '2026-11-14' }, { terminal, folder: __dirname, clock: () => new Date(0) }).then(() => {
  writeFileSync(keptCodeOf(file), script.createCachedData());
});
`;
}
