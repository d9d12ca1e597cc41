// Two parsers read a record: one gives its data, one the places. They must see the same tree, or a place points at the wrong value.
import fc from 'fast-check';
import { dump } from 'js-yaml';
import { describe, expect, test } from 'vitest';
import { unmarkUnknown } from '../../src/source/bare-unknown.ts';
import { readDocument } from '../../src/source/document.ts';
import { splitFrontMatter } from '../../src/source/front-matter.ts';
import { locate } from '../../src/source/locate.ts';
import { parseWithPlaces } from '../../src/source/slow-parser.ts';
import { betweenFences } from '../../src/source/slow-splitter.ts';
import { isTree, type Tree } from '../../src/source/tree.ts';
import { yamlTree } from '../../src/source/yaml-tree.ts';

/** What the parser with places sees; undefined when it finds the text broken. An empty value is null to one and '' to the other. */
function withPlaces(text: string): Tree | undefined {
  const { document } = parseWithPlaces(text);
  if (document.errors.length > 0) return undefined;
  const tree: unknown = document.toJS({ maxAliasCount: 0 }) ?? null;
  if (!isTree(tree)) throw new Error('the parser with places gave no tree');
  return unmarkUnknown(tree);
}

function emptyAsNull(tree: Tree): Tree {
  if (tree === '' || tree === null) return null;
  if (typeof tree === 'string') return tree;
  if (Array.isArray(tree)) return tree.map(emptyAsNull);
  return Object.fromEntries(Object.entries(tree).map(([key, value]) => [key, emptyAsNull(value)]));
}

const word = fc.constantFrom(
  'bore',
  '50.06 mm',
  '0123',
  '1:48',
  '12:30:45',
  '?',
  '6?.8 bar',
  'yes',
  'null',
  '~',
  '2.2 kgf·m',
  'a: b',
  '#x',
  "it's",
  '“x”',
  '- x',
  '1_000',
  '.5',
  '1e3',
  '<<',
  'Übung',
  '{x}',
  '',
);
const key = fc.constantFrom('item', 'found', 'left top', 'bore', '0123', 'yes', 'constructor', 'toString', 'a-b', 'é');
const tree = fc.letrec<{ tree: Tree }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 4 },
    word,
    fc.string({ maxLength: 12, unit: 'grapheme' }),
    fc.array(tie('tree'), { maxLength: 4 }),
    fc.dictionary(key, tie('tree'), { maxKeys: 4 }),
  ),
})).tree;

describe('both parsers', () => {
  test('see the same tree in whatever was written as YAML', () => {
    fc.assert(
      fc.property(
        fc.dictionary(key, tree, { minKeys: 1, maxKeys: 5 }),
        fc.integer({ min: -1, max: 3 }),
        (data, flowLevel) => {
          const text = dump(data, { flowLevel, lineWidth: 60 });
          const fast = yamlTree(text);
          expect(fast.ok).toBe(true);
          if (fast.ok) expect(emptyAsNull(withPlaces(text) ?? 'broken')).toEqual(emptyAsNull(fast.tree));
        },
      ),
      { numRuns: 400 },
    );
  });

  const token = fc.constantFrom(
    'a:',
    'b: ',
    'item: ',
    '- ',
    '  ',
    '\n',
    '\n  ',
    '\n- ',
    '{',
    '}',
    '[',
    ']',
    ', ',
    ': ',
    '? ',
    '?',
    '"',
    "'",
    '# ',
    'x',
    '50.06 mm',
    '|',
    '>',
    '\t',
    'é',
    '1:48',
    '\n---\n',
    '...',
  );
  test('see the same tree in any text that is taken as a record', () => {
    let accepted = 0;
    fc.assert(
      fc.property(fc.array(token, { maxLength: 14 }), (tokens) => {
        const text = tokens.join('');
        const read = readDocument({ file: 'machine.yaml', text }).value;
        // The parser with places is stricter about how a long text is indented; then it has nothing to compare.
        const slow = read === undefined ? undefined : withPlaces(text);
        if (read === undefined || slow === undefined) return;
        accepted += 1;
        expect(emptyAsNull(slow) ?? {}).toEqual(emptyAsNull(read.data));
      }),
      { numRuns: 3000 },
    );
    expect(accepted).toBeGreaterThan(100);
  });
});

describe('front matter', () => {
  const line = fc.constantFrom('a: 1', 'b: [x, y]', '', '# remark', '  c: 2', 'text: "x"', '-', '--', ' ---');
  test('is cut out as gray-matter cuts it', () => {
    fc.assert(
      fc.property(
        fc.array(line, { maxLength: 6 }),
        fc.array(line, { maxLength: 3 }),
        fc.constantFrom('---', '---yaml', '--- '),
        (front, body, open) => {
          const text = [open, ...front, '---', ...body].join('\n');
          const split = splitFrontMatter(text, 'jobs/a.md');
          if ('code' in split) throw new Error(split.message);
          // gray-matter asks no engine where there is nothing but remarks.
          const asked = front.some((one) => one.trim() !== '' && !one.startsWith('#'));
          if (asked) expect(split.yaml.trimEnd()).toBe(betweenFences(text).trimEnd());
          expect(split.body).toBe(body.join('\n'));
        },
      ),
    );
  });

  test('that opens with a language or with spaces is read as well', () => {
    for (const open of ['---yaml', '---yml', '---YAML', '---  ', '--- yaml']) {
      const { value, problems } = readDocument({ file: 'jobs/a.md', text: `${open}\na: 1\n---\nbody\n` });
      expect({ open, data: value?.data, body: value?.body, problems }).toEqual({
        open,
        data: { a: '1' },
        body: 'body\n',
        problems: [],
      });
    }
  });
});

describe('a place', () => {
  test('leads to the very text of its value', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z][a-z0-9 ]{0,8}[a-z0-9]$/u), { minLength: 1, maxLength: 6 }),
        fc.boolean(),
        (values, crlf) => {
          const lines = ['---', 'work:', ...values.map((value) => `  - {removed: ${value}, bag: 3}`), '---', ''];
          const text = lines.join(crlf ? '\r\n' : '\n');
          for (const [i, value] of values.entries()) {
            const found = locate(text, { file: 'jobs/a.md', path: ['work', i, 'removed'] });
            const line = text.split(/\r?\n/u)[found.line - 1] ?? '';
            expect(line.slice(found.column - 1, found.column - 1 + found.length)).toBe(value);
          }
        },
      ),
    );
  });
});
