// Every field that takes words is given a stranger's words: on no page do they become an element, an attribute or a way out.
import { defaultTreeAdapter, parse, type DefaultTreeAdapterMap } from 'parse5';
import { beforeAll, expect, test } from 'vitest';
import { parseDocument, visit, type Document } from 'yaml';
import { build, readContent, stops } from '../../src/build.ts';
import { readContentFolder } from '../../src/disk.ts';
import { frameFor } from '../../src/command/site-frame-for.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { checkContentReferences } from '../../src/records/check-content-references.ts';
import { readRecords } from '../../src/records/read.ts';
import { siteAssets } from '../../src/render/assets.ts';
import { pageScripts } from '../../src/render/page-scripts.ts';
import { renderOne } from '../../src/render/page.ts';
import { markUnknown } from '../../src/source/bare-unknown.ts';
import type { SourceFile } from '../../src/source/files.ts';
import { sha256 } from '../../src/source/sha256.ts';
import { manualAssets, manualFiles } from '../manual/manual-folder.ts';

const hostile =
  `"'><script>run()</script><img src=//a.example/x onerror=run()>{{ 1111 * 1111 }}{% include "x" %}` +
  `[a](javascript:run()) ![b](http://a.example/x.png) <http://a.example/> \${7*7} ../../../x\u202e\u200b`;
const body = `\n${hostile}\n\n${[
  '[a](javascript:run())',
  '[a](data:text/html,x)',
  '[a](//a.example/x)',
  '[a](<java\nscript:run()>)',
  '![a](//a.example/x.png)',
  '![a](../../../x.png)',
  '<iframe src=x></iframe>',
  '[r]: javascript:run()',
  '[a][r]',
  '[a](../../out.md)',
  '[a](..%2f..%2fout.md)',
  '<svg onload=run()>',
  '&#x3c;script&#x3e;run()&#x3c;/script&#x3e;',
  '```\n</code></pre><script>run()</script>\n```',
  '| <script>run()</script> | b |\n|---|---|\n| "onclick=run() | d |',
].join('\n\n')}\n`;

const content = readContent(readContentFolder());

type Node = DefaultTreeAdapterMap['node'];
let pages: readonly (readonly [file: string, html: string])[] = [];
let poisoned = 0;

/** The YAML of a file and what comes after it. */
function halves({ file, text }: SourceFile): readonly [yaml: string, rest: string] {
  if (file.endsWith('.yaml')) return [text, ''];
  const end = text.indexOf('\n---', 3);
  return [text.slice(4, end + 1), text.slice(end)];
}

function whole({ file }: SourceFile, document: Document, rest: string): SourceFile {
  const yaml = document.toString({ lineWidth: 0 }).replaceAll(markUnknown('a: ?').slice(3), '?');
  return { file, text: file.endsWith('.yaml') ? yaml : `---\n${yaml.trimEnd()}${rest}` };
}

/** A file with the stranger's words in every value that takes them without a problem. */
function poison(files: readonly SourceFile[], index: number): SourceFile {
  const source = files[index];
  if (source === undefined) throw new Error('no such file');
  if (source.file === 'story.md') return { ...source, text: body };
  const [yaml, rest] = halves(source);
  const document = parseDocument(markUnknown(yaml), { schema: 'failsafe', version: '1.2' });
  const fine = (candidate: SourceFile): boolean => {
    const { value, problems } = readRecords(files.with(index, candidate), manualAssets);
    if (value === undefined || stops(problems).length > 0) return false;
    return checkContentReferences(value, content.value).length === 0;
  };
  visit(document, {
    Scalar: (key, node) => {
      if (key === 'key' || typeof node.value !== 'string') return;
      const before = node.value;
      node.value = hostile;
      if (fine(whole(source, document, rest))) poisoned += 1;
      else node.value = before;
    },
  });
  return whole(source, document, rest.startsWith('\n---') ? `${rest}${body}` : rest);
}

/** The list of what came from a former owner, as it would be had the stranger's story come with the machine. */
function taken(file: SourceFile, before: readonly SourceFile[]): SourceFile {
  const story = before.find((one) => one.file === 'story.md');
  if (file.file !== 'adopted.yaml' || story === undefined) return file;
  return { ...file, text: file.text.replace(sha256(story.text), sha256(body)) };
}

/** Scripts that a site carries: those copied into it, the words to be looked up, and below the data of its pages. */
let ours = new Set([...siteAssets().map(({ file }) => file), 'assets/search-index.js']);
let data: readonly string[] = [];

/** The file that a script is taken from, below the site. */
function loadedBy(node: DefaultTreeAdapterMap['element']): string {
  return (node.attrs.find(({ name }) => name === 'src')?.value ?? '').replace(/^(?:\.\.\/)+/u, '');
}

function nodes(node: Node): readonly Node[] {
  return [node, ...('childNodes' in node ? node.childNodes.flatMap(nodes) : [])];
}

beforeAll(() => {
  const { machine } = manualFiles();
  const bad = machine.map((_file, index) => taken(poison(machine, index), machine));
  const today = readDay('2026-06-01');
  if (!today.ok) throw new Error('no day');
  const built = build({ files: bad, assets: manualAssets, shared: [], content, before: [], today: today.value });
  if (built.value === undefined) throw new Error('no binder');
  expect(stops(built.problems)).toEqual([]);
  const scripts = pageScripts(built.value.pages);
  ours = new Set([...ours, ...scripts.map(({ file }) => file)]);
  data = scripts.map(({ text }) => text());
  const frame = frameFor(built.value, new Map());
  pages = built.value.pages.map((spec) => [spec.file, renderOne(spec, frame).content] as const);
});

test('the words reach the pages', () => {
  expect(poisoned).toBeGreaterThan(40);
  expect(pages.filter(([, html]) => html.includes('&lt;script&gt;run()')).length).toBeGreaterThan(10);
});

test('no element, attribute or address comes of them', () => {
  const faults: string[] = [];
  for (const [file, html] of pages) {
    for (const node of nodes(parse(html))) {
      if (!defaultTreeAdapter.isElementNode(node)) continue;
      if (['iframe', 'object', 'embed', 'base', 'form', 'foreignObject'].includes(node.tagName))
        faults.push(`${file}: ${node.tagName}`);
      if (node.tagName === 'script' && (node.childNodes.length > 0 || !ours.has(loadedBy(node))))
        faults.push(`${file}: script`);
      for (const { name, value } of node.attrs) {
        if (/^on|^style$|^srcdoc$/i.test(name)) faults.push(`${file}: ${node.tagName} ${name}`);
        const address = ['href', 'src', 'srcset', 'action', 'xlink:href', 'data'].includes(name);
        if (address && /^\s*(?:[a-z][a-z0-9+.-]*:|\/)/i.test(value)) faults.push(`${file}: ${name} ${value}`);
      }
    }
  }
  expect([...new Set(faults)]).toEqual([]);
  expect(data.length).toBeGreaterThan(0);
  expect(data.filter((text) => text.includes('<'))).toEqual([]);
});

test('nothing in them is worked out, and no page lies outside the folder', () => {
  for (const [file, html] of pages) {
    expect([file, html.includes('1234321')]).toEqual([file, false]);
    expect(file).toMatch(/^(?!\/)(?!.*(?:^|\/)\.\.(?:\/|$))[^\\\0]+\.html$/);
  }
  expect(new Set(pages.map(([file]) => file.toLowerCase())).size).toBe(pages.length);
});
