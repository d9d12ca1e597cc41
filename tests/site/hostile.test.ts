// Whatever an owner writes is shown as text: no element, attribute or address comes out of it.
import { defaultTreeAdapter, parse, type DefaultTreeAdapterMap } from 'parse5';
import { expect, it } from 'vitest';
import { renderPage } from '../../src/render/page.ts';
import type { Page } from '../../src/sheet/sheet.ts';
import { sampleBlocks, samplePage } from './sample-pages.ts';
import { sampleFrame } from './sample-site.ts';

type Node = DefaultTreeAdapterMap['node'];

const hostile = `"><script>alert('x')</script><img src=x onerror="y" style='z'>{{ 1111 * 1111 }}{% include "x" %}&amp;`;
/** Words that the sheet's own types fix; an owner's text never stands there. */
const fixed = new Set(['type', 'kind', 'grade', 'align', 'use', 'box', 'mark', 'line', 'to', 'size', 'shape']);

function poison(value: unknown, key = ''): unknown {
  if (typeof value === 'string') return fixed.has(key) && !/[:]/.test(value) ? value : hostile;
  if (Array.isArray(value)) return value.map((item: unknown) => poison(item, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, poison(inner, name)]));
}

function isPage(value: unknown): value is Page {
  return typeof value === 'object' && value !== null && 'blocks' in value;
}

function names(node: Node): readonly string[] {
  const own = defaultTreeAdapter.isElementNode(node)
    ? [node.tagName, ...node.attrs.map(({ name, value }) => `${node.tagName}@${name}=${name === 'class' ? value : ''}`)]
    : [];
  return [...own, ...('childNodes' in node ? node.childNodes.flatMap(names) : [])];
}

const clean = samplePage();

it('gives the same elements and attributes as a page of harmless words', () => {
  const { file: _file, ...words } = clean;
  const page = poison(words);
  const poisoned = { ...(typeof page === 'object' ? page : {}), file: clean.file, title: `${hostile}!` };
  if (!isPage(poisoned)) throw new Error('The sample lost its blocks.');
  const shape = (made: Page) =>
    [...new Set(names(parse(renderPage(made, sampleFrame))))].filter((name) => !name.startsWith('path')).toSorted();
  const html = renderPage(poisoned, sampleFrame);
  expect(html.includes('&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;')).toBe(true);
  expect(html.includes('1234321')).toBe(false);
  for (const name of shape(poisoned)) expect(shape(clean)).toContain(name);
});

it('has no inline style and no script of its own on any page', () => {
  const html = renderPage(samplePage(Object.values(sampleBlocks)), sampleFrame);
  const found = names(parse(html));
  expect(found.filter((name) => /@(style|on[a-z]+)=/.test(name))).toEqual([]);
  // The page has photos, so it asks for the script of their full view as well.
  expect(found.filter((name) => name === 'script')).toHaveLength(2);
  expect(html.match(/<script\b[^>]*>/gu)?.filter((tag) => !tag.includes(' src="../assets/'))).toEqual([]);
  expect(html).toContain('src="../assets/splitpin.js" defer></script>');
  expect(html).not.toContain('<style');
});
