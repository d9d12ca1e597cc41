// Parts of the compiled program that are scripts of their own, so that the code V8 compiled for them can be kept beside them: reading
// and compiling is a third of a check, and not much less of a cold build.
import type { BuildOptions, Plugin } from 'esbuild';
import { dirname, join, relative, resolve, sep } from 'node:path';

/** A module of ours that is a script beside the program. */
export interface KeptScript {
  readonly file: string;
  /** The module, below `src`. */
  readonly module: string;
  /** What others take from it. */
  readonly gives: string;
  /** Who finds the script in place of the module, below `src`; the others have the module among their own code, which they share with much else. */
  readonly askedBy: string;
}

export const keptScripts = {
  check: {
    file: 'check.cjs',
    module: 'command/check-command.ts',
    gives: 'checkCommand',
    askedBy: 'command/splitpin.ts',
  },
  binder: {
    file: 'binder.cjs',
    module: 'command/make-binder.ts',
    gives: 'makeBinder',
    askedBy: 'command/workshop/machine-build.ts',
  },
  printer: { file: 'printer.cjs', module: 'pdf/write-pdf.ts', gives: 'writePdf', askedBy: 'command/print-task.ts' },
} as const satisfies Readonly<Record<string, KeptScript>>;

/** For the program, and for those of the scripts that ask for others: the modules are the scripts beside it. */
export function scriptsBeside(root: string): Plugin {
  const src = join(root, 'src');
  return {
    name: 'scripts-beside',
    setup(building) {
      building.onResolve({ filter: /^\.\.?\/.*\.ts$/ }, ({ path, importer }) => {
        const module = relative(src, resolve(dirname(importer), path))
          .split(sep)
          .join('/');
        const asker = relative(src, importer).split(sep).join('/');
        const script = Object.values(keptScripts).find((one) => one.module === module && one.askedBy === asker);
        return script && { path: script.file, namespace: 'scripts-beside', pluginData: script.gives };
      });
      building.onLoad({ filter: /.*/, namespace: 'scripts-beside' }, ({ path, pluginData }) => ({
        contents: standIn(path, `export const { ${String(pluginData)} } =`),
        loader: 'js',
        resolveDir: join(src, 'command'),
      }));
    },
  };
}

/** What stands in the program in place of a script; `taking` is the beginning of the line that takes what the script gives. */
export function standIn(file: string, taking: string): string {
  return `import { fileURLToPath } from 'node:url';
import { loadKept } from './kept-code.ts';
${taking} loadKept(fileURLToPath(new URL('./${file}', import.meta.url)));
`;
}

/** How a script of ours is made; `ours` is what all parts of the program are made with. */
export function scriptInto(folder: string, { file, module }: KeptScript, ours: BuildOptions): BuildOptions {
  return { ...ours, ...asScript(ours), entryPoints: ['src/' + module], outfile: join(folder, file) };
}

/** What makes a script of modules: in one file nothing is loaded later, and a script has no address of its own. */
export function asScript({ define }: BuildOptions): BuildOptions {
  return {
    format: 'cjs',
    supported: { 'dynamic-import': false },
    banner: { js: "const addressOfScript = require('node:url').pathToFileURL(__filename).href;" },
    define: { ...define, 'import.meta.url': 'addressOfScript' },
  };
}
