// Compiles the program into dist/: one light file to start with, the rest in pieces that are loaded when first needed.
import { build, type BuildOptions, type Plugin } from 'esbuild';
import { chmodSync, copyFileSync, mkdirSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { arraysByIndex, arraysByIndexPlugin } from './arrays-by-index.ts';
import { keepCode } from './keep-code.ts';
import { keptScripts, scriptInto, scriptsBeside } from './kept-scripts.ts';
import { kerningPlugin } from './kerning.ts';
import { siteGeneratorBeside, siteGeneratorFile, siteGeneratorInto } from './bundled-site-generator.ts';
import { packedManualPlugin, writePackedManual } from './packed-manual.ts';
import { compiledTemplatesPlugin } from './templates.ts';
import { withoutUnused } from './without-unused.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Packages that stay packages: they carry native code or data files of their own, or load their own parts by name. */
const external = ['sharp'];

/** Packages that were written for `require` find it here. */
const banner = `import { createRequire as createRequireForPackages } from 'node:module';
const require = createRequireForPackages(import.meta.url);`;

const shared = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20.19',
  legalComments: 'none',
  logLevel: 'warning',
} as const;

/** Writes the compiled program into a folder below the package. */
export async function bundle(into: string): Promise<void> {
  rmSync(into, { recursive: true, force: true });
  const made = ours([arraysByIndexPlugin(arraysByIndex(root, join(root, 'src')))]);
  await build(programInto(into, made));
  for (const script of Object.values(keptScripts)) await build(scriptInto(into, script, made));
  await build(yamlInto(into));
  await build(siteGeneratorInto(into, root, shared));
  writePackedManual(into);
  // The printer looks for its typefaces beside its own code.
  const fonts = join(root, 'src/pdf/fonts');
  mkdirSync(join(into, 'fonts'));
  for (const file of readdirSync(fonts).filter((name) => name.endsWith('.ttf'))) {
    copyFileSync(join(fonts, file), join(into, 'fonts', file));
  }
  chmodSync(join(into, 'splitpin.js'), 0o755);
  await keepCode(into, root, join(root, 'demo-bike'), siteGeneratorFile);
}

/** The packages whose code the compiled program carries, by their folders below node_modules. */
export async function bundledPackages(): Promise<readonly string[]> {
  const nowhere = { write: false, metafile: true } as const;
  const parts = [
    programInto('dist', ours()),
    ...Object.values(keptScripts).map((script) => scriptInto('dist', script, ours())),
    yamlInto('dist'),
    siteGeneratorInto('dist', root, shared),
  ];
  const made = await Promise.all(parts.map((part) => build({ ...part, ...nowhere })));
  const files = made.flatMap(({ metafile }) => Object.keys(metafile.inputs));
  // A package may have another version of a package in a folder of its own.
  const folders = files.flatMap(
    (file) => /node_modules\/((?:.*node_modules\/)?(?:@[^/]+\/)?[^/]+)/.exec(file)?.[1] ?? [],
  );
  return [...new Set(folders)].sort();
}

type Made = BuildOptions & { readonly plugins: readonly Plugin[] };

/** What all parts of our own code are made with; `last` are asked for a file after all others. */
function ours(last: readonly Plugin[] = []): Made {
  return {
    ...shared,
    external,
    plugins: [
      compiledTemplatesPlugin(join(root, 'templates')),
      yamlInOneFile,
      packedManualPlugin,
      kerningPlugin(join(root, 'src/pdf/fonts')),
      siteGeneratorBeside(root),
      scriptsBeside(root),
      withoutUnused,
      ...last,
    ],
    define: { SPLITPIN_PROGRAM: JSON.stringify(fingerprint()) },
    // Short names too: reading the code is an eighth of a check. Places in a fault's report still say where it was.
    minify: true,
  };
}

function programInto(folder: string, made: Made): BuildOptions {
  return {
    ...made,
    // The others are what threads run: one that prints, one that reads a filled form, one that makes binders of a workshop.
    entryPoints: {
      splitpin: 'src/command/splitpin.ts',
      'print-worker': 'src/command/print-worker.ts',
      'form-worker': 'src/command/take/form-worker.ts',
      'machine-worker': 'src/command/workshop/machine-worker.ts',
    },
    outdir: folder,
    splitting: true,
    format: 'esm',
    banner: { js: banner },
    chunkNames: '[name]-[hash]',
  };
}

function yamlInto(folder: string): BuildOptions {
  return {
    ...shared,
    stdin: { contents: "export * from 'yaml';", resolveDir: root },
    outfile: join(folder, 'yaml.cjs'),
    format: 'cjs',
    minify: true,
  };
}

/** The parser that finds places is loaded in the middle of other work, so it is one file to be required and not a piece to be awaited. */
const yamlInOneFile: Plugin = {
  name: 'yaml-in-one-file',
  setup(building) {
    building.onLoad({ filter: /source[\\/]slow-parser\.ts$/ }, ({ path }) => ({
      contents: readFileSync(path, 'utf8').replace("require('yaml')", "require('./yaml.cjs')"),
      loader: 'ts',
    }));
  },
};

/** A hash over every line that can change what is made: sources, content, templates, tables, and the versions of all packages. */
export function fingerprint(): string {
  const hash = createHash('sha256');
  for (const folder of ['src', 'content', 'templates', 'shared']) hashFolder(join(root, folder), hash);
  hash.update(readFileSync(join(root, 'package-lock.json')));
  return hash.digest('hex').slice(0, 32);
}

function hashFolder(folder: string, hash: ReturnType<typeof createHash>): void {
  const inside = readdirSync(folder, { withFileTypes: true });
  for (const each of inside.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const path = join(folder, each.name);
    if (each.isDirectory()) hashFolder(path, hash);
    else hash.update(each.name).update(readFileSync(path));
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundle(resolve(root, process.argv[2] ?? 'dist'));
