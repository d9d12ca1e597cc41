// The page of problems: each entry is a code, the smallest bad files, and what is printed; here they are put on a disk and read.
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { readMachineFolder, type MachineFolder } from '../../src/disk.ts';
import { notOpened } from '../../src/problem/folder-problems.ts';
import type { Outcome, Problem } from '../../src/problem/problem.ts';
import { formatReport } from '../../src/problem/report.ts';
import { checkContentReferences } from '../../src/records/check-content-references.ts';
import { readContent } from '../../src/records/read-content.ts';
import { readRecords } from '../../src/records/read.ts';
import { locate } from '../../src/source/locate.ts';
import { fenced, type Fenced } from './fenced.ts';
import { manualFiles, manualPage } from './manual-folder.ts';

export interface Entry {
  readonly code: string;
  readonly prose: string;
  readonly files: readonly Fenced[];
  readonly report: string;
}

/** Entries of content/pages/problems.md, in order. */
export function problemEntries(): readonly Entry[] {
  return manualPage('problems.md')
    .split(/^## /mu)
    .slice(1)
    .map((part) => {
      const code = part.slice(0, part.indexOf('\n')).trim();
      const pieces = fenced(part);
      const report = pieces.find(({ language }) => language === 'report')?.text ?? '';
      const prose = part.slice(code.length, part.indexOf('```')).trim();
      return { code, prose, files: pieces.filter(({ language }) => language !== 'report'), report: report.trimEnd() };
    });
}

/** Pictures beside every example; `link.png` is a symbolic link. */
const pictures = ['photos/frame-number.jpg', 'photos/head-off.png'];

/** Puts an entry's files on a disk beside the machine of the page of formats, reads the folder, and gives the report. */
export function reportOf(entry: Entry): string {
  const folder = mkdtempSync(join(tmpdir(), 'splitpin-problems-'));
  try {
    const base = manualFiles().machine.filter(({ file }) => !file.startsWith('jobs/'));
    for (const { file, text } of base) put(folder, file, text);
    for (const file of pictures) put(folder, file, '');
    if (entry.code === 'path-through-link') symlinkSync('head-off.png', join(folder, 'photos/link.png'));
    for (const example of entry.files) lay(folder, example);
    return read(folder, entry);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function read(folder: string, entry: Entry): string {
  const disk: Outcome<MachineFolder | undefined> = readMachineFolder(folder);
  const { files = [], assets = [], shared = [] } = disk.value ?? {};
  const content = readContent(manualFiles().content);
  const records = readRecords(files, assets, shared);
  const references = records.value === undefined ? [] : checkContentReferences(records.value, content.value);
  let all = disk.value === undefined ? disk.problems : [...disk.problems, ...records.problems, ...references];
  if (entry.files.some(({ language }) => language === 'closed')) all = entry.files.map(({ file }) => notOpened(file));
  const text = (file: string): string | undefined => files.find((one) => one.file === file)?.text;
  const report = formatReport(
    all.filter((problem) => told(problem, entry)),
    text,
    locate,
    { colour: false },
  );
  return report.replaceAll(folder, 'my-bike');
}

/** An entry's link also brings the problem of the link itself, which has its own entry. */
function told(problem: Problem, entry: Entry): boolean {
  return entry.code !== 'path-through-link' || problem.code === entry.code;
}

function lay(folder: string, { language, file, text }: Fenced): void {
  if (language === 'none') rmSync(join(folder, 'machine.yaml'));
  else if (language === 'link') symlinkSync(text.trim(), join(made(folder, file), ''));
  else if (language === 'large') put(folder, file, 'x'.repeat(Number(text)));
  // Whoever may read everything may open a closed file too, so the problem is made where it would be found.
  else if (language === 'closed') put(folder, file, '');
  else if (language === 'latin1') put(folder, file, Buffer.from(text, 'latin1'));
  else if (language === 'patch') patch(folder, file, text);
  else put(folder, file, text);
}

/** `patch` examples: what stands before the arrow in the example's machine becomes what stands after it. */
function patch(folder: string, file: string, text: string): void {
  const [from = '', to = ''] = text.split('→\n');
  const whole = manualFiles().machine.find((one) => one.file === file)?.text ?? '';
  if (!whole.includes(from)) throw new Error(`the page of formats has no line ${from}`);
  put(folder, file, whole.replace(from, to));
}

function put(folder: string, file: string, text: string | Buffer): void {
  writeFileSync(made(folder, file), text);
}

function made(folder: string, file: string): string {
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  return path;
}
