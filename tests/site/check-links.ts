// A checker of links for folders that must open without a server: says in sentences what a reader would trip over.
import { readdirSync } from 'node:fs';
import { join, posix } from 'node:path';
import { defaultTreeAdapter, parse, type DefaultTreeAdapterMap } from 'parse5';

type Element = DefaultTreeAdapterMap['element'];
type Node = DefaultTreeAdapterMap['node'];

/** Every fault in the links of the pages (file → HTML) of a folder. An empty list means that all of them lead somewhere. */
export function linkFaults(folder: string, pages: ReadonlyMap<string, string>): readonly string[] {
  const files = new Set(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1)),
  );
  const parsed = new Map([...pages].map(([file, html]) => [file, elementsOf(html)]));
  const ids = new Map([...parsed].map(([file, elements]) => [file, idsOf(elements)]));
  return [...parsed].flatMap(([page, elements]) => [
    ...doubled(idsOf(elements)).map((id) => `${page}: the id ${id} is there twice`),
    ...addressesOf(elements).flatMap((address) => faultsOf(page, address, files, ids)),
  ]);
}

function faultsOf(
  page: string,
  address: string,
  files: ReadonlySet<string>,
  ids: ReadonlyMap<string, readonly string[]>,
): readonly string[] {
  if (/^([a-z][a-z0-9+.-]*:|\/\/)/i.test(address)) return [`${page}: ${address} leads outside`];
  if (address.startsWith('/')) return [`${page}: ${address} begins at the root`];
  if (address.includes('?')) return [`${page}: ${address} asks a server`];
  const [path = '', fragment] = address.split('#');
  const target = path === '' ? page : posix.join(posix.dirname(page), decodeURIComponent(path));
  if (target.endsWith('/')) return [`${page}: ${address} leads to a folder`];
  if (!files.has(target)) return [`${page}: ${address} leads to no file (letter case counts)`];
  if (fragment === undefined || fragment === '') return [];
  const there = ids.get(target)?.includes(decodeURIComponent(fragment)) ?? false;
  return there ? [] : [`${page}: ${address} leads to no place in that page`];
}

function elementsOf(html: string): readonly Element[] {
  return walk(parse(html));
}

function walk(node: Node): readonly Element[] {
  const children = 'childNodes' in node ? node.childNodes.flatMap(walk) : [];
  return defaultTreeAdapter.isElementNode(node) ? [node, ...children] : children;
}

function addressesOf(elements: readonly Element[]): readonly string[] {
  const names = new Set(['href', 'src', 'srcset', 'action', 'poster', 'data']);
  return elements.flatMap((element) => element.attrs.filter(({ name }) => names.has(name)).map(({ value }) => value));
}

function idsOf(elements: readonly Element[]): readonly string[] {
  return elements.flatMap((element) => element.attrs.filter(({ name }) => name === 'id').map(({ value }) => value));
}

function doubled(names: readonly string[]): readonly string[] {
  return [...new Set(names.filter((name, index) => names.indexOf(name) !== index))];
}
