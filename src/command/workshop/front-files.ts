// The files of a workshop's front page: beside the machines' folders, each put under its name whole, and only where the place is ours.
import {
  copyFileSync,
  mkdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { isWithin } from '../../cache/claim.ts';
import type { FrontLines } from '../../build.ts';
import type { Problem } from '../../problem/problem.ts';
import { siteAssets } from '../../render/assets.ts';
import type { KeptLine } from './kept-terminal.ts';

/** Its presence is the mark that index.html and assets/ beside it are ours; it holds what they were made from. */
const markFile = '.splitpin-workshop.json';
const pageFile = 'index.html';

/** Why the page cannot go there; undefined when it can. `machines` are the names of the folders that lie beside it. */
export function claimFront(out: string, workshop: string, machines: readonly string[]): Problem | undefined {
  if (isThere(out) && isWithin(workshop, realpathSync(out))) {
    return refused(out, 'The workshop lies inside the output folder, so its front page would stand among the records.');
  }
  const taken = machines.find((name) => ['assets', pageFile].includes(name.toLowerCase()));
  if (taken !== undefined) {
    return refused(out, `A machine folder is called ${taken}, where files of the front page go.`);
  }
  const foreign = [pageFile, 'assets'].find((name) => isThere(join(out, name)));
  if (foreign === undefined || isThere(join(out, markFile))) return undefined;
  return refused(join(out, foreign), 'This was not made by this program, and stands where the front page should go.');
}

function refused(file: string, message: string): Problem {
  const at = { file, path: [] };
  return { code: 'output-not-ours', severity: 'problem', at, message, hint: 'Give another folder with --out.' };
}

/** The lines of one machine, and the key of the files that they came from. */
export interface KeptFront {
  readonly key: string;
  readonly front: FrontLines;
}

/** What the page was made from, and what was said when it was. */
export interface FrontMark {
  readonly key: string;
  readonly lines: readonly KeptLine[];
  /** By the machines’ folders. */
  readonly machines: Readonly<Record<string, KeptFront>>;
}

/** What the page that stands there kept of its machines; empty where there is none. */
export function keptFronts(out: string): FrontMark['machines'] {
  return readMark(out)?.machines ?? {};
}

function readMark(out: string): FrontMark | undefined {
  try {
    const mark: unknown = JSON.parse(readFileSync(join(out, markFile), 'utf8'));
    return isMark(mark) ? mark : undefined;
  } catch {
    return undefined;
  }
}

/** What is to be said again when the page was made from the same and nobody has touched it since; undefined when it is to be made anew. */
export function standsAsWritten(out: string, key: string): FrontMark['lines'] | undefined {
  const mark = readMark(out);
  if (mark?.key !== key) return undefined;
  const written = timeOf(join(out, markFile));
  const files = [pageFile, ...siteAssets().map(({ file }) => file)];
  return files.every((file) => timeOf(join(out, file)) <= written) ? mark.lines : undefined;
}

/** When it was written last; what is not there is younger than anything. */
function timeOf(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Number.POSITIVE_INFINITY;
}

/** Only we write this file; what a killed run left of it holds no key. */
function isMark(value: unknown): value is FrontMark {
  if (typeof value !== 'object' || value === null) return false;
  return 'key' in value && 'lines' in value && Array.isArray(value.lines) && 'machines' in value;
}

/** Writes the page and what it needs; the mark comes first, so that a run that breaks off leaves a place that is ours, and last with its key. */
export function writeFront(out: string, html: string, mark: FrontMark): void {
  mkdirSync(out, { recursive: true });
  putWhole(join(out, markFile), (half) => writeFileSync(half, ''));
  for (const { file, absolute } of siteAssets()) {
    mkdirSync(dirname(join(out, file)), { recursive: true });
    putWhole(join(out, file), (half) => copyFileSync(absolute, half));
  }
  putWhole(join(out, pageFile), (half) => writeFileSync(half, html));
  putWhole(join(out, markFile), (half) => writeFileSync(half, JSON.stringify(mark)));
}

function putWhole(path: string, write: (half: string) => void): void {
  const half = `${path}.${String(process.pid)}.half`;
  try {
    write(half);
    renameSync(half, path);
  } finally {
    rmSync(half, { force: true });
  }
}

function isThere(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false }) !== undefined;
}
