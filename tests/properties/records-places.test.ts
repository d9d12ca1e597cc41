// Places are told by the fast parser where it can; wherever it does, they are those of the parser that knows all of YAML.
import fc from 'fast-check';
import { dump } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { readContentFolder, readMachineFolder } from '../../src/disk.ts';
import { splitFile } from '../../src/source/document.ts';
import { quickRange, slowRange } from '../../src/source/locate.ts';
import { quickPlaces } from '../../src/source/quick-places.ts';
import { parseWithPlaces } from '../../src/source/slow-parser.ts';
import { isBranch, isList, isTree, type Tree } from '../../src/source/tree.ts';
import { yamlTree } from '../../src/source/yaml-tree.ts';

type Step = string | number;

/** Every path of a tree, and one step beyond each. */
function pathsOf(tree: Tree, above: readonly Step[] = []): readonly (readonly Step[])[] {
  const inside: readonly (readonly [Step, Tree])[] = isList(tree)
    ? tree.map((one, index) => [index, one])
    : isBranch(tree)
      ? Object.entries(tree)
      : [];
  const beyond: readonly Step[] = [...above, 'not there'];
  return [beyond, ...inside.flatMap(([step, one]) => [[...above, step], ...pathsOf(one, [...above, step])])];
}

/** What is pointed at: the start, and the end as far as it is on the line of the start, without blanks. */
function pointed(text: string, range: readonly [number, number] | undefined): string {
  if (range === undefined) return 'nowhere';
  const line = text.slice(range[0], Math.max(range[1], range[0] + 1)).split('\n')[0] ?? '';
  return `${String(range[0])}: ${line.trimEnd()}`;
}

/** How many places were compared; none when the fast parser leaves the text to the other. */
function compare(text: string, name: string): number {
  const read = yamlTree(text);
  const quick = quickPlaces(text);
  if (!read.ok || quick === undefined) return 0;
  const places = pathsOf(read.tree).flatMap((path) => [
    { file: name, path },
    { file: name, path, atKey: true },
  ]);
  const { contents } = parseWithPlaces(text).document;
  const apart = places.flatMap((place) => {
    const said = [pointed(text, quickRange(quick, place)), pointed(text, slowRange(contents, place))];
    return said[0] === said[1] ? [] : [[name, place.path, ...said]];
  });
  expect(apart).toEqual([]);
  return places.length;
}

describe('places of the fast parser', () => {
  test('are those of the slow one in every file of the content, the demo and the fixture', () => {
    const folders = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'].flatMap(
      (path) => readMachineFolder(path).value?.files ?? [],
    );
    const files = [...readContentFolder(), ...folders];
    const compared = files.map(({ file, text }) => {
      const split = splitFile(file, text);
      return 'code' in split ? 0 : compare(split.yaml, file);
    });
    // Nearly all of our own files are plain.
    expect(compared.filter((count) => count > 0).length).toBeGreaterThan(files.length * 0.9);
  });

  test('are those of the slow one in whatever was written as YAML', () => {
    const word = fc.constantFrom(
      'bore',
      '50 mm',
      '?',
      'a: b',
      '#x',
      "it's",
      '- x',
      '',
      'x\ny',
      'long '.repeat(20),
      'é:',
    );
    const key = fc.constantFrom('item', 'left top', '0123', 'constructor', 'é', 'a#b');
    const tree = fc.letrec<{ tree: unknown }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        word,
        fc.string({ maxLength: 8, unit: 'grapheme' }),
        fc.array(tie('tree'), { maxLength: 3 }),
        fc.dictionary(key, tie('tree'), { maxKeys: 3 }),
      ),
    })).tree;
    let compared = 0;
    fc.assert(
      fc.property(fc.dictionary(key, tree, { minKeys: 1 }), fc.integer({ min: -1, max: 3 }), (data, flowLevel) => {
        if (isTree(data)) compared += compare(dump(data, { flowLevel, lineWidth: 40 }), 'written');
      }),
      { numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(1000);
  });

  test.each([
    'a: 1 # why\nb:   # later\n  - x # one\n  - {c: 2, d: , e}\nf:\ng: last',
    'a: {b: c, d: [1, 2 , "three"], "e" : f}\ng: [h, {i: j}, ]',
    'a:\n- b\n- c: 1\n  d: |\n    text\n\n  e: >-\n    more\n    text\nf: two\n  lines',
    "a: ? \nb: 'it''s'\nc: \"x\\\"y\"   \nd: []\ne: {}\n# end\n",
    '# first\n\n a: 1\n b: 2',
  ])('are those of the slow one in %j', (text) => {
    expect(compare(text, 'by hand')).toBeGreaterThan(0);
  });

  test.each(['a: &x 1\nb: *x', 'a: !t 1', '? a\n: 1', '---\na: 1\n...', 'a: [b: c]', '- - x', 'a:\n  -\n  - x'])(
    'are left to the slow parser in %j',
    (text) => {
      expect(quickPlaces(text)).toBeUndefined();
    },
  );
});
