// The owner's Markdown: what it becomes, what is refused, and that the short way and the long way agree.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blocksOf } from '../../src/compose/prose/blocks.ts';
import { markdown } from '../../src/compose/prose/markdown.ts';
import { plainProse } from '../../src/compose/prose/plain.ts';
import { prose } from '../../src/compose/prose.ts';

describe('paragraphs', () => {
  test('plain words, joined over line ends', () => {
    expect(prose('Head off.\nLooks dry.\n\nLeft bore scored.\n')).toEqual([
      { kind: 'paragraph', text: 'Head off. Looks dry.' },
      { kind: 'paragraph', text: 'Left bore scored.' },
    ]);
  });
  test('marks, lists, quotes, code, tables and headings', () => {
    const text =
      '# Seen\n\n**Left** seal *hard*, ~~soft~~ `LP175`\n\n- one\n- two\n  - deeper\n\n> said\n\n```\nkick\n```\n\n| a | b |\n|---|---|\n| 1 | 2 |\n';
    expect(prose(text).map((one) => one.kind)).toEqual(['heading', 'paragraph', 'list', 'quote', 'code', 'table']);
    expect(prose(text)[1]).toEqual({
      kind: 'paragraph',
      text: [
        { kind: 'strong', text: 'Left' },
        ' seal ',
        { kind: 'em', text: 'hard' },
        ', ',
        { kind: 'struck', text: 'soft' },
        ' ',
        { kind: 'code', text: 'LP175' },
      ],
    });
    expect(prose(text)[5]).toEqual({ kind: 'table', head: ['a', 'b'], rows: [['1', '2']] });
  });
  test('a typed sign stays as it was typed', () => {
    expect(prose('5" rim, +-0.1 mm, (c) -- www.example.org')).toEqual([
      { kind: 'paragraph', text: '5" rim, +-0.1 mm, (c) -- www.example.org' },
    ]);
  });
  test('a picture alone is a photo', () => {
    expect(prose('![Head off](../photos/head.png "The head")')).toEqual([
      {
        kind: 'photo',
        photo: { type: 'photo', file: 'photos/head.png', caption: 'The head', alt: 'Head off', size: 'half' },
      },
    ]);
  });
});

describe('hostile text', () => {
  const words = (text: string): string => JSON.stringify(prose(text));
  test('raw HTML stays text', () => {
    expect(prose('<script>alert(1)</script>')).toEqual([{ kind: 'paragraph', text: '<script>alert(1)</script>' }]);
  });
  test.each([
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    'data:text/html,x',
    'file:///etc/passwd',
    'vbscript:x',
    '//host/x',
  ])('a link to %s keeps its words and leads nowhere', (address) => {
    expect(prose(`[words](${address})`)).toEqual([{ kind: 'paragraph', text: 'words' }]);
  });
  test('a web address is shown beside its words', () => {
    expect(words('[the club](https://example.org/a)')).toContain('https://example.org/a');
  });
  test('a link to another record leads to it', () => {
    expect(prose('see [the strip](2024-09-14-barrels.md)')).toEqual([
      { kind: 'paragraph', text: ['see ', { kind: 'link', text: 'the strip', to: 'job:2024-09-14-barrels' }] },
    ]);
  });
  test.each([
    'https://host/x.png',
    '//host/x.png',
    '/etc/passwd',
    '../../../etc/passwd',
    'photos/../../x.png',
    'data:image/png;base64,x',
    'photos\\x.png',
    'photos/%2e%2e/%2e%2e/x',
  ])('a picture at %s is only words', (address) => {
    expect(words(`![what](${address})`)).not.toContain('"photo"');
  });
  test('deep nests end somewhere', () => {
    const deep = `${'> '.repeat(5000)}end`;
    expect(words(deep).length).toBeLessThan(20_000);
    expect(() => prose('['.repeat(20_000))).not.toThrow();
  });
});

describe('the short way', () => {
  const piece = fc.constantFrom(
    'word',
    'a',
    ' ',
    '  ',
    '\n',
    '\n\n',
    '.',
    '1.',
    '2)',
    '-',
    '+',
    '#',
    '# ',
    '\n## ',
    '\n#### a',
    '|',
    ':',
    '=',
    '>',
    '\u00a0',
    '12',
    'é',
    '!',
    '(',
    ')',
    ']',
    '"',
    '*',
    '**',
    '***',
    '_',
    '__',
    '`',
    '[',
    '](b.md)',
    '<',
    '&amp;',
    '\\',
    '~~',
    '**bold**',
    '*em*',
    '![p](photos/p.png)',
    'https://example.org',
  );
  test('gives what the parser gives', () => {
    let short = 0;
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
        const text = pieces.join('');
        const plain = plainProse(text);
        if (plain === undefined) return;
        short += 1;
        expect(plain).toEqual(blocksOf(markdown.parse(text, {})));
      }),
      { numRuns: 10_000 },
    );
    expect(short).toBeGreaterThan(1500);
  });
});
