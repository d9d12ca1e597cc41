// Packages that Eleventy brings for template languages, pictures of dependencies and rewriting of links: our pages come to it as ready
// HTML, and merely reading and starting these costs half of Eleventy's own start. Whoever asks all the same is told at once.
import type { Plugin } from 'esbuild';

/** Each with the names that Eleventy takes from it. */
const unused: Readonly<Record<string, readonly string[]>> = {
  '@11ty/dependency-tree': ['default'],
  '@11ty/dependency-tree-esm': ['find'],
  '@11ty/posthtml-urls': ['default'],
  'bcp-47-normalize': ['bcp47Normalize'],
  'iso-639-1': ['default'],
  liquidjs: ['Liquid', 'TokenKind', 'Tokenizer', 'evalToken'],
  'markdown-it': ['default'],
  'node-retrieve-globals': ['RetrieveGlobals'],
  nunjucks: ['default'],
  posthtml: ['default'],
  'posthtml-match-helper': ['default'],
};

const names = Object.keys(unused);

/** For the compiled site generator: each of these packages gives functions that throw. */
export const siteGeneratorAlone: Plugin = {
  name: 'site-generator-alone',
  setup(building) {
    building.onResolve({ filter: new RegExp(`^(?:${names.join('|')})$`) }, ({ path }) => ({
      path,
      namespace: 'unused',
    }));
    building.onLoad({ filter: /.*/, namespace: 'unused' }, ({ path }) => ({
      contents: refusing(path, unused[path] ?? []),
      loader: 'js',
    }));
  },
};

function refusing(what: string, given: readonly string[]): string {
  const refuse = `function refuse() { throw new Error('the compiled program has no ${what}'); }`;
  return `${refuse}\nexport { ${given.map((name) => `refuse as ${name}`).join(', ')} };\n`;
}
