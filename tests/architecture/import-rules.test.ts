// The one-way flow: who may import whom. A sentence for the offender; a test that saw no file fails.
import { describe, expect, test } from 'vitest';
import { importsOf, sourceFiles, targetOf } from './source-files.ts';

const kernel = ['problem', 'quantity', 'figure', 'table', 'source', 'calc', 'records', 'book'] as const;

/** Layer → what it may import of ours besides itself. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  problem: [],
  quantity: [],
  sheet: [],
  figure: ['problem', 'quantity'],
  table: ['problem', 'quantity', 'figure'],
  source: ['problem', 'sheet'],
  calc: ['problem', 'quantity', 'figure', 'table'],
  records: ['problem', 'quantity', 'figure', 'source', 'sheet'],
  book: ['problem', 'quantity', 'figure', 'table', 'source', 'calc', 'records', 'sheet'],
  views: [...kernel, 'sheet'],
  compose: [...kernel, 'sheet', 'views'],
  binder: [...kernel, 'sheet', 'views', 'compose'],
  entry: [...kernel, 'sheet'],
  handover: [...kernel, 'sheet', 'binder'],
  bench: ['problem', 'quantity', 'figure', 'table', 'calc', 'sheet', 'plots'],
  layout: ['sheet'],
  plots: ['sheet'],
  pdf: ['sheet', 'layout', 'plots'],
  preview: ['layout', 'plots'],
  photos: ['problem', 'source'],
  cache: ['problem', 'source', 'photos'],
  render: ['sheet', 'plots', 'problem', 'compose'],
  disk: ['problem', 'source'],
  build: [...kernel, 'sheet', 'views', 'compose', 'binder'],
  command: [
    'build',
    'render',
    'pdf',
    'preview',
    'photos',
    'cache',
    'problem',
    'disk',
    'sheet',
    'compose',
    'layout',
    'plots',
    'source',
    'binder',
    'entry',
    'handover',
    'quantity',
    'records',
  ],
  tools: [
    ...kernel,
    'sheet',
    'views',
    'compose',
    'binder',
    'layout',
    'plots',
    'pdf',
    'photos',
    'cache',
    'render',
    'disk',
    'build',
    'entry',
    'handover',
    'bench',
    'command',
  ],
};

const why: Readonly<Record<string, string>> = {
  problem: 'a problem knows nothing of what is wrong elsewhere',
  quantity: 'numbers with a dimension stand on their own',
  sheet: 'the waist knows neither motorcycles nor paper',
  figure: 'a figure is a quantity with an origin and nothing more',
  table: 'tables are compiled in and read no disk',
  source: 'source turns text into data and knows no motorcycles',
  calc: 'calculations are pure and will run in a browser',
  records: 'records say what was written; what follows from it is the book’s',
  book: 'the book derives and does not print',
  views: 'views make blocks and know nothing of paper or printers',
  compose: 'composing puts views together and prints nothing',
  binder: 'the data file is made from the model',
  entry: 'entry turns what was written into a sheet’s blanks into a record’s text, and prints nothing',
  handover: 'what goes into another’s hands is chosen without disk or printer',
  bench: 'what runs in a browser knows calculations and blocks, and no records',
  layout: 'layout sees blocks and paper only',
  plots: 'plots see blocks only',
  pdf: 'the PDF printer draws what layout placed and knows no motorcycles',
  preview: 'the small picture draws what layout placed and knows no motorcycles',
  photos: 'photos are files and problems',
  cache: 'the cache is files and problems',
  render: 'the HTML printer draws blocks and knows no motorcycles',
  disk: 'the disk is read in one place that knows only text',
  build: 'build.ts has no disk, no clock and no printer',
  command: 'the command line starts things and derives nothing',
  tools: 'tools are for who works on the project',
};

function layerOf(file: string): string {
  const [, second = ''] = file.split('/');
  return second.replace(/\.ts$/, '');
}

/** A type of a shelf may be named where only a type is meant; `render` sees compose’s shapes and no more. */
const typesOnly: readonly (readonly [string, string])[] = [
  ['records', 'sheet'],
  ['book', 'sheet'],
  ['render', 'compose'],
  ['cache', 'photos'],
];

function offences(): readonly string[] {
  return sourceFiles('src').flatMap(({ file, imports, text }) => {
    const layer = layerOf(file);
    const may = allowed[layer];
    if (may === undefined)
      return [`${file}: the layer “${layer}” is not in the import table; say there what it may import.`];
    return imports.flatMap((specifier) => {
      const target = targetOf(file, specifier);
      if (target === undefined || !target.startsWith('src/')) return [];
      const to = layerOf(target);
      if (to === layer) return [];
      if (!may.includes(to)) return [`${file} imports ${target}: ${why[layer] ?? 'it may not'}.`];
      const typed = typesOnly.some(([from, of]) => from === layer && of === to);
      if (typed && !importsTypesOnly(text, specifier)) return [`${file} imports more than types from ${target}.`];
      return [];
    });
  });
}

function importsTypesOnly(text: string, specifier: string): boolean {
  const at = text.indexOf(`'${specifier}'`);
  const begin = Math.max(text.lastIndexOf('import', at), text.lastIndexOf('export', at));
  const words = text.slice(begin, at);
  if (/^(import|export)\s+type\b/.test(words)) return true;
  const names =
    /\{([^}]*)\}/
      .exec(words)?.[1]
      ?.split(',')
      .map((name) => name.trim())
      .filter(Boolean) ?? [];
  return names.length > 0 && names.every((name) => name.startsWith('type '));
}

describe('import rules', () => {
  test('files were seen in every layer that the walk names', () => {
    const layers = new Set(sourceFiles('src').map(({ file }) => layerOf(file)));
    expect(sourceFiles('src').length).toBeGreaterThan(100);
    for (const layer of [...kernel, 'sheet', 'views', 'compose', 'layout', 'pdf', 'plots', 'render'])
      expect(layers).toContain(layer);
  });
  test('no layer imports what it may not', () => {
    expect(offences()).toEqual([]);
  });
  test('imports are found in every form', () => {
    const text =
      "import { a } from './a.ts';\nimport type {\n  B,\n} from '../b.ts';\nexport * from './c.ts';\nimport './d.ts';\nconst e = await import('./e.ts');\n";
    expect(importsOf(text)).toEqual(['./a.ts', '../b.ts', './c.ts', './d.ts', './e.ts']);
  });
  test('imports carry their ending, so that every runner finds them', () => {
    const bare = sourceFiles('src').flatMap(({ file, imports }) =>
      imports.filter((one) => one.startsWith('.') && !/\.(ts|json|njk|css)$/.test(one)).map((one) => `${file}: ${one}`),
    );
    expect(bare).toEqual([]);
  });
});

describe('the world outside', () => {
  // The slow parser is loaded when an error must be placed, and only then: that takes `node:module`.
  const mayUseNode =
    /^src\/(disk\.ts|disk\/|source\/slow-parser\.ts|command\/|photos\/|cache\/|pdf\/|render\/|tools\/)/;
  test('only the places at the edge import from Node', () => {
    const others = sourceFiles('src').filter(
      ({ file, imports }) => imports.some((one) => one.startsWith('node:')) && !mayUseNode.test(file),
    );
    expect(
      others.map(({ file }) => `${file}: the disk, the clock and the terminal are touched at the edge only`),
    ).toEqual([]);
  });
  test('clock, environment and terminal are touched in the command line only', () => {
    const clock = /\bDate\.now\b|\bnew Date\(\)|\bprocess\.(env|argv|stdout|stderr|exit|cwd)\b|\bconsole\./;
    const mayTouch = /^src\/(command|tools)\//;
    const others = sourceFiles('src').filter(({ file, text }) => !mayTouch.test(file) && clock.test(text));
    expect(
      others.map(
        ({ file }) => `${file}: \`today\` is an argument; clock, environment and terminal belong to the command line`,
      ),
    ).toEqual([]);
  });
});
