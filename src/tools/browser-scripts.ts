// The programs for the browser: each src/bench/<name>.ts with all it needs as one classic script, kept as text in src/render/scripts/<name>.ts.
import { build } from 'esbuild';
import type { Plugin } from 'esbuild';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Names of the programs; a new one is its file below src/bench and one name here. */
export const browserScripts = ['phone'] as const;

/** Programs that every site carries as a file of its own: src/bench/<name>.ts as templates/<name>.js, left readable where they are short. */
export const siteScripts = ['next-test', 'workings', 'search', 'photo-view', 'log'] as const;

/** Long ones are made small. */
const small: ReadonlySet<string> = new Set(['workings', 'search']);

/** File of such a program. */
export function siteScript(name: string): string {
  return join(root, 'templates', `${name}.js`);
}

/** Its text: the same sources give the same text. */
export async function siteScriptText(name: string): Promise<string> {
  const isSmall = small.has(name);
  const { script, packages } = await bundled(name, isSmall);
  const path = siteScript(name);
  // One statement, which is left as it was made.
  if (isSmall)
    return `${madeFrom(name)}${licences(packages)}// prettier-ignore\n${script.replace(/^"use strict";/, '')}`;
  return format(madeFrom(name) + script, { ...(await resolveConfig(path)), filepath: path });
}

function madeFrom(name: string): string {
  return `// Made by src/tools/browser-scripts.ts from src/bench/${name}.ts; not edited by hand.\n/* oxlint-disable */\n`;
}

/** File of the module that keeps a script. */
export function scriptModule(name: string): string {
  return join(root, 'src/render/scripts', `${name}.ts`);
}

/** The text of that module: the same sources give the same text. */
export async function scriptModuleText(name: string): Promise<string> {
  const { script: plain } = await bundled(name);
  const script = JSON.stringify(plain);
  const text = `// Made by src/tools/browser-scripts.ts from src/bench/${name}.ts; not edited by hand.\nexport const script: string = ${script};\n`;
  const path = scriptModule(name);
  return format(text, { ...(await resolveConfig(path)), filepath: path });
}

/** Published values that calculations are only tested against stay at home: they are two thirds of all tables. */
const withoutProofs: Plugin = {
  name: 'without-proofs',
  setup(building) {
    building.onLoad({ filter: /[\\/]table[\\/]compiled\.ts$/ }, ({ path }) => {
      const kept = readFileSync(path, 'utf8')
        .split('\n')
        .filter((line) => !line.startsWith('  "values-'));
      return { contents: kept.join('\n'), loader: 'ts' };
    });
  },
};

/** A binder that is handed on carries the licences of what is in its scripts. */
function licences(packages: readonly string[]): string {
  return packages
    .map(
      (name) =>
        `/* With ${name}:\n\n${readFileSync(join(root, 'node_modules', name, 'LICENSE.txt'), 'utf8').trim()}\n*/\n`,
    )
    .join('');
}

interface Bundled {
  readonly script: string;
  /** Names of other people’s packages in it. */
  readonly packages: readonly string[];
}

async function bundled(name: string, minify = true): Promise<Bundled> {
  const made = await build({
    absWorkingDir: root,
    entryPoints: [`src/bench/${name}.ts`],
    bundle: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    // For the telephones that still serve in a garage.
    target: 'es2020',
    charset: 'ascii',
    legalComments: 'none',
    minify,
    metafile: true,
    plugins: [withoutProofs],
    logLevel: 'warning',
  });
  const [file] = made.outputFiles;
  if (file === undefined) throw new Error(`no script was made of src/bench/${name}.ts`);
  const paths = Object.keys(made.metafile.inputs).map((path) => /node_modules\/((?:@[^/]+\/)?[^/]+)/u.exec(path)?.[1]);
  return { script: file.text, packages: [...new Set(paths.filter((path) => path !== undefined))].toSorted() };
}

/** Other people’s packages that the scripts carry. */
export async function packagesInScripts(): Promise<readonly string[]> {
  const all = await Promise.all(
    [...browserScripts, ...siteScripts].map(async (name) => (await bundled(name)).packages),
  );
  return [...new Set(all.flat())].toSorted();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(join(root, 'src/render/scripts'), { recursive: true });
  for (const name of browserScripts) writeFileSync(scriptModule(name), await scriptModuleText(name));
  for (const name of siteScripts) writeFileSync(siteScript(name), await siteScriptText(name));
}
