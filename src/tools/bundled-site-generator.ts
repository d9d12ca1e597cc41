// Eleventy in one file: as it comes it is three hundred files, a third of the processor time of a small build.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BuildOptions, Plugin } from 'esbuild';
import { asScript, standIn } from './kept-scripts.ts';
import { siteGeneratorAlone } from './site-generator-alone.ts';

/** Name of the file beside the compiled program. */
export const siteGeneratorFile = 'eleventy.cjs';

/** Loaded by name, and only to serve or to watch, which we never ask of it. */
const never = ['@11ty/eleventy-dev-server', '@11ty/chokidar-with-glob-support', 'chokidar', 'supports-color'];

/** How the file is made from the package; `shared` is what all parts of the program have in common. */
export function siteGeneratorInto(folder: string, root: string, shared: BuildOptions): BuildOptions {
  return {
    ...shared,
    ...asScript(shared),
    stdin: { contents: "export { default } from '@11ty/eleventy';", resolveDir: root },
    outfile: join(folder, siteGeneratorFile),
    external: never,
    plugins: [
      ownPackageFile(join(root, 'node_modules/@11ty/eleventy/package.json')),
      siteGeneratorAlone,
      noLoaderHooks,
      noDebugging,
    ],
    minifySyntax: true,
    minifyWhitespace: true,
  };
}

/** For the program: Eleventy is the file beside it. */
export function siteGeneratorBeside(root: string): Plugin {
  return {
    name: 'site-generator-beside',
    setup(building) {
      building.onResolve({ filter: /^@11ty\/eleventy$/ }, ({ path }) => ({ path, namespace: 'site-generator-beside' }));
      building.onLoad({ filter: /.*/, namespace: 'site-generator-beside' }, () => ({
        contents: standIn(siteGeneratorFile, 'const { default: Eleventy } =') + 'export default Eleventy;\n',
        loader: 'js',
        resolveDir: join(root, 'src/command'),
      }));
    },
  };
}

/** Eleventy looks for its package.json above its own code, where now ours would be found. */
function ownPackageFile(path: string): Plugin {
  const { version, engines } = JSON.parse(readFileSync(path, 'utf8'));
  const asked =
    /let filePath = normalizeFilePathInEleventyPackage\("package\.json"\);\s*return importJsonSync\(filePath\);/;
  return {
    name: 'own-package-file',
    setup(building) {
      building.onLoad({ filter: /Util[\\/]ImportJsonSync\.js$/ }, (source) => {
        const text = readFileSync(source.path, 'utf8');
        if (!asked.test(text)) throw new Error('Eleventy reads its package.json in another way than it used to');
        return { contents: text.replace(asked, `return ${JSON.stringify({ version, engines })};`), loader: 'js' };
      });
    },
  };
}

/** Eleventy starts a thread that reloads changed modules of a site's own; ours has none. */
const noLoaderHooks: Plugin = {
  name: 'no-loader-hooks',
  setup(building) {
    building.onLoad({ filter: /Util[\\/]EsmResolverPortAdapter\.js$/ }, () => ({
      contents: 'export function addModifiedPath() {}',
      loader: 'js',
    }));
  },
};

/** Eleventy puts together a report of every step for whoever debugs it; a build of thousands of pages spends much on what nobody reads. */
const noDebugging: Plugin = {
  name: 'no-debugging',
  setup(building) {
    building.onLoad({ filter: /node_modules[\\/]debug[\\/]src[\\/]index\.js$/ }, () => ({
      contents:
        'const silent = () => Object.assign(() => {}, { enabled: false });\nmodule.exports = Object.assign(silent, { enable() {}, disable() {}, enabled: () => false });',
      loader: 'js',
    }));
  },
};
