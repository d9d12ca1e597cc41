// Writes NOTICES: what the compiled program carries of other people's work, each with its licence in full. Run: npm run notices
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { packagesInScripts } from './browser-scripts.ts';
import { bundledPackages } from './bundle.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

const head = `Splitpin is published under the MIT licence (see LICENSE). The compiled program in dist/ carries the works named here; the
packages that it uses without carrying them (sharp, gray-matter) come with licences of their own.

Typefaces
=========

splitpin-sans-regular, -semibold, -italic: parts of IBM Plex Sans, copyright 2017 IBM Corp. with Reserved Font Name "Plex", renamed as
its licence asks for; SIL Open Font License 1.1 (LICENCE-OFL.txt beside the fonts and in every binder).
splitpin-signs: a part of DejaVu Sans, copyright Bitstream, Inc. and Tavmjong Bah, renamed as its licence asks for
(LICENCE-DejaVu.txt beside the fonts and in every binder).

Packages
========
`;

/** The text of the file: one section a package, by name. */
export async function notices(): Promise<string> {
  const names = [...new Set([...(await bundledPackages()), ...(await packagesInScripts())])].toSorted();
  return head + names.map(section).join('');
}

function section(path: string): string {
  const folder = join(root, 'node_modules', path);
  const about: unknown = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const field = (key: string): string => {
    const value: unknown = typeof about === 'object' && about !== null ? Reflect.get(about, key) : undefined;
    return typeof value === 'string' ? value : '';
  };
  // Of a package that is carried in two versions, the one inside another package says which it is.
  const name = field('name') + (path === field('name') ? '' : ' ' + field('version'));
  return `\n${name} (${field('license')})\n${'-'.repeat(name.length)}\n\n${licenceIn(folder, about)}\n`;
}

/** The licence in full; a package that comes without its text is named with its author, whose licence is one of the texts here. */
function licenceIn(folder: string, about: unknown): string {
  const [file] = readdirSync(folder).filter((each) => /^licen[cs]e/i.test(each));
  if (file !== undefined) return readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim();
  const author: unknown = typeof about === 'object' && about !== null ? Reflect.get(about, 'author') : undefined;
  const named: unknown = typeof author === 'object' && author !== null ? Reflect.get(author, 'name') : author;
  const by = typeof named === 'string' ? ', by ' + named.replace(/ <.*>/, '') : '';
  return `Published under the licence named above${by}; the package carries no text of it.`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(join(root, 'NOTICES'), await notices());
  if (!existsSync(join(root, 'LICENSE'))) throw new Error('LICENSE is missing');
}
