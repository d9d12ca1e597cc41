// Plain front matter is read by a quick reader of our own: what it takes, the whole parser takes, and both see the same tree.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitFrontMatter } from '../../src/source/front-matter.ts';
import { plainYaml } from '../../src/source/plain-yaml.ts';
import { wholeYamlTree } from '../../src/source/yaml-tree.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

const scraps = [
  'title',
  'left top',
  'a-b',
  'x (y)',
  '12',
  'é',
  'constructor',
  'a ',
  '?',
  '? ',
  '<<',
  '"k"',
  '__proto__',
  ':',
  ': ',
  ':  ',
  ': ?',
  ' : ',
  '::',
  ': - ',
  ': |',
  ': >-',
  ': &a b',
  ': *a',
  ': !t b',
  '- ',
  '-',
  '-  ',
  '- - ',
  '- a: b',
  '- {',
  '- [',
  '-5 mm',
  '- ?',
  '--- ',
  '...',
  '%x',
  '{',
  '}',
  '[',
  ']',
  ', ',
  ',',
  '{}',
  '[]',
  '{a: b}',
  '{a: ?, b: -1}',
  '[a, ?]',
  '[?]',
  '[a,?]',
  '{a: b, a: c}',
  '{item: ring gap, found: 0.35 mm}',
  '[owner, helper]',
  '{a: {b: [c, d]}}',
  '{a: }',
  '{a:b}',
  '[a: b]',
  '{a}',

  '"',
  "'",
  '"q"',
  "'q'",
  '"a, b"',
  '"a\\n"',
  "'it''s'",
  '"[x]"',
  '"it\'s"',
  '{a: "b, c", d: e}',
  '["a": b]',
  "it's",
  '“x”',
  '0.35 mm',
  '1:48',
  '12.50',
  '~',
  '#',
  ' #',
  ' # why',
  '# [x',
  '\n# why\n',
  ' ',
  '  ',
  '\u00a0',
  '\u3000',
  '\u202f',
  '\ue03f',
  '\t',
  '😀',
  '\u0085',
  '\n',
  '\n',
  '\n',
  '\n  ',
  '\n  ',
  '\n  - ',
  '\n- ',
  '\n    ',
  '\n\n',
  '\n ',
  '\na: ',
  '\n  b: ',
  '\n  - c: ',
];
const rough = fc.array(fc.constantFrom(...scraps), { maxLength: 14 }).map((parts) => parts.join(''));

/** Lines that mostly fit together. */
const word = fc.constantFrom('bore', 'ring gap', '0.35 mm', '-1', '?', '"q r"', "'s'", 'it’s', '(x)', '1:48', 'a # b');
const short = fc.oneof(
  word,
  fc.array(word, { maxLength: 3 }).map((all) => `[${all.join(', ')}]`),
  fc.array(word, { maxLength: 3 }).map((all) => `{${all.map((one, index) => `k${String(index)}: ${one}`).join(', ')}}`),
);
const line = fc
  .tuple(
    fc.constantFrom('', '', '', '  ', '  ', '    '),
    fc.constantFrom('', '', '- ', '-   '),
    fc.constantFrom('', 'a: ', 'b:', 'c: ', 'd d:  ', 'e:'),
    fc.oneof(short, fc.constant('')),
  )
  .map((parts) => parts.join(''));
const likely = fc.array(line, { maxLength: 8 }).map((lines) => lines.join('\n'));

function sameAsWhole(text: string): boolean {
  const plain = plainYaml(text);
  if (plain === undefined) return false;
  const whole = wholeYamlTree(text);
  // The order of keys counts as well.
  expect(JSON.stringify(plain)).toBe(whole.ok ? JSON.stringify(whole.tree) : whole.reason);
  return true;
}

describe('the quick reader of plain front matter', () => {
  test('never sees another tree than the whole parser', () => {
    let taken = 0;
    fc.assert(
      fc.property(fc.oneof(rough, likely), (text) => {
        if (sameAsWhole(text)) taken += 1;
      }),
      { numRuns: 4000 },
    );
    expect(taken).toBeGreaterThan(40);
  });

  test('takes most records of the demo and the fixtures', () => {
    const folders = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'].map((one) =>
      join(root, one, 'jobs'),
    );
    const heads = folders
      .flatMap((folder) => readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8')))
      .flatMap((text) => {
        const split = splitFrontMatter(text, 'record.md');
        return 'yaml' in split ? [split.yaml] : [];
      });
    const taken = heads.filter(sameAsWhole);
    expect(taken.length).toBeGreaterThan(heads.length / 2);
  });

  test.each([
    ['a: b: c'],
    ['a: "x\\n"'],
    ['a: |\n  b'],
    ['a: b\n  c'],
    ['a: 1\na: 2'],
    ['- a'],
    ['a: &x b'],
    ['a:\tb'],
    ['a: [b\n  ]'],
    ['a: [[[[[[[[[[b]]]]]]]]]]'],
  ])('leaves %j to the whole parser', (text) => {
    expect(plainYaml(text)).toBeUndefined();
  });
});
