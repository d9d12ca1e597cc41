// Parts of pdfkit and fontkit that only pictures, line breaking, passwords and web fonts of theirs need: our printer asks for none of
// them, and loading them costs a third of its start. Whoever asks all the same is told at once.
import type { Plugin } from 'esbuild';

const unused = [
  { filter: /@noble[\\/]ciphers[\\/].*aes\.js$/, what: 'encryption', names: ['cbc', 'ecb'] },
  { filter: /brotli[\\/]decompress\.js$/, what: 'fonts for the web', names: ['default'] },
  { filter: /[\\/]linebreak[\\/].*js$/, what: 'line breaking', names: ['default'] },
  { filter: /[\\/]png-js[\\/].*js$/, what: 'PNG pictures', names: ['default'] },
];

/** For the compiled program: each of these modules gives functions that throw. */
export const withoutUnused: Plugin = {
  name: 'without-unused',
  setup(building) {
    for (const { filter, what, names } of unused) {
      building.onLoad({ filter }, () => ({ contents: refusing(what, names), loader: 'js' }));
    }
  },
};

function refusing(what: string, names: readonly string[]): string {
  const refuse = `function refuse() { throw new Error('the compiled program has no ${what}'); }`;
  const given = names.map((name) => `refuse as ${name}`).join(', ');
  return `${refuse}\nexport { ${given} };\n`;
}
