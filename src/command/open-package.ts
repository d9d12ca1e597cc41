// A package as it lies there, a folder or a ZIP: its files, and their bytes when they are asked for. Links are never followed.
import { createHash } from 'node:crypto';
import { existsSync, lstatSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { declarationFile, manifestFile, tagManifestFile } from '../handover/package-layout.ts';
import type { FoundFile } from '../handover/check-package.ts';
import { readZip, type OpenZip } from './zip/read-zip.ts';

export interface PackageFile {
  /** From the folder that holds bagit.txt, with forward slashes. */
  readonly path: string;
  readonly size: number;
  readonly bytes: () => Promise<Buffer>;
}

export interface OpenPackage {
  readonly files: readonly PackageFile[];
  readonly close: () => void;
}

/** Opens a package; `wrong` says in sentences why it is not opened, with `called` for its path. Close it when done. */
export async function openPackage(
  path: string,
  called = path,
): Promise<OpenPackage | { readonly wrong: readonly string[] }> {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) return { wrong: [`There is no file or folder ${path}.`] };
  if (stat.isDirectory()) return isPackage(path) ? openFolder(path) : { wrong: notHere(called, packagesIn(path)) };
  if (!stat.isFile()) return { wrong: [`${path} is neither a folder nor a ZIP.`] };
  const zip = await readZip(path);
  return 'wrong' in zip ? zip : insideOf(zip);
}

/** A ZIP holds the package at its top, or in the one folder that it unpacks to. */
function insideOf(zip: OpenZip): OpenPackage {
  const home = zip.files.find(({ path }) => path.split('/').length <= 2 && path.endsWith(declarationFile))?.path ?? '';
  const prefix = home.slice(0, Math.max(home.length - declarationFile.length, 0));
  const files = zip.files.map((file) => ({
    ...file,
    // What lies beside the one folder is not of the package; under its whole path it shows as added.
    path: file.path.startsWith(prefix) ? file.path.slice(prefix.length) : `../${file.path}`,
  }));
  return { files, close: zip.close };
}

const deepest = 32;

function openFolder(folder: string): OpenPackage | { readonly wrong: readonly string[] } {
  const files: PackageFile[] = [];
  const wrong: string[] = [];
  const visit = (below: string, depth: number): void => {
    for (const name of readdirSync(join(folder, below)).sort()) {
      const path = below === '' ? name : `${below}/${name}`;
      const stat = lstatSync(join(folder, path));
      if (stat.isDirectory() && depth < deepest) visit(path, depth + 1);
      else if (stat.isFile()) {
        files.push({ path, size: stat.size, bytes: async () => Promise.resolve(readFileSync(join(folder, path))) });
      } else wrong.push(`“${path}” is ${stat.isSymbolicLink() ? 'a link; links are not followed' : 'no file'}.`);
    }
  };
  visit('', 0);
  return wrong.length > 0 ? { wrong } : { files, close: () => undefined };
}

/** It declares itself, or has one of its lists left: then what is missing can be told file by file. */
function isPackage(folder: string): boolean {
  return [declarationFile, manifestFile, tagManifestFile].some((name) => existsSync(join(folder, name)));
}

/** Ways to packages one step or two further in: folders that declare themselves, and ZIPs. */
function packagesIn(folder: string, steps = 2): readonly string[] {
  return readdirSync(folder, { withFileTypes: true })
    .toSorted((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      if (entry.isFile()) return entry.name.endsWith('.zip') ? [entry.name] : [];
      const path = join(folder, entry.name);
      if (!entry.isDirectory() || entry.name.startsWith('.')) return [];
      if (existsSync(join(path, declarationFile))) return [entry.name];
      return steps > 1 ? packagesIn(path, steps - 1).map((way) => join(entry.name, way)) : [];
    });
}

/** Somebody named another folder, or the one around a package: said where it is, and what to name. */
function notHere(folder: string, within: readonly string[]): readonly string[] {
  const [one] = within;
  if (one === undefined)
    return [`${folder} is no package: there is no ${declarationFile} in it. splitpin handover makes one.`];
  return within.length === 1 && one !== undefined
    ? [`${folder} is the folder around a package. Name the package: ${join(folder, one)}`]
    : [
        `${folder} is no package. It holds what may be one; name it:`,
        ...within.map((name) => `  ${join(folder, name)}`),
      ];
}

/** Every file with its hash, one after the other, so that memory holds one at a time. */
export async function hashedFiles({ files }: OpenPackage): Promise<readonly FoundFile[]> {
  const found: FoundFile[] = [];
  for (const { path, size, bytes } of files) found.push({ path, size, hash: await hashed(bytes) });
  return found;
}

/** Empty where the bytes cannot be had: a packed file whose bytes are not what the ZIP says of them. */
async function hashed(bytes: PackageFile['bytes']): Promise<string> {
  try {
    return createHash('sha256')
      .update(await bytes())
      .digest('hex');
  } catch {
    return '';
  }
}

/** The texts of files at the top of the package, by name. */
export async function topTexts({ files }: OpenPackage): Promise<ReadonlyMap<string, string>> {
  const top = files.filter(({ path, size }) => !path.includes('/') && size <= 16 * 1024 * 1024);
  const texts = await Promise.all(
    top.map(async ({ path, bytes }): Promise<readonly [string, string]> => {
      try {
        return [path, (await bytes()).toString('utf8')];
      } catch {
        return [path, ''];
      }
    }),
  );
  return new Map(texts);
}
