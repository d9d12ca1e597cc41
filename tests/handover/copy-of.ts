// A buyer's copy of files in memory, and the binder of files in memory, for tests.
import { build, readContent, stops, type Binder } from '../../src/build.ts';
import { readContentFolder } from '../../src/disk.ts';
import { buyersCopy, type BuyersCopy } from '../../src/handover/buyers-copy.ts';
import type { CopyChoices } from '../../src/handover/choices.ts';
import type { Problem } from '../../src/problem/problem.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { readRecords } from '../../src/records/read.ts';
import type { Asset, SourceFile } from '../../src/source/files.ts';

const content = readContent(readContentFolder());
const told = readDay('2024-06-01');
if (!told.ok) throw new Error('a day');
const today = told.value;

export function asFiles(folder: Readonly<Record<string, string>>): readonly SourceFile[] {
  return Object.entries(folder).map(([file, text]) => ({ file, text }));
}

export function asAssets(...files: readonly string[]): readonly Asset[] {
  return files.map((file) => ({ file, absolute: `/nowhere/${file}`, size: 1, modified: 0 }));
}

export const noChoices: CopyChoices = { withoutPrices: false, mayGo: [], otherMachines: [] };

export function copyOf(
  folder: Readonly<Record<string, string>>,
  assets: readonly Asset[] = asAssets('photos/plain.jpg'),
  choices: CopyChoices = noChoices,
): BuyersCopy {
  const files = asFiles(folder).filter(({ file }) => !file.startsWith('../'));
  const shared = asFiles(folder).filter(({ file }) => file.startsWith('../'));
  const records = readRecords(files, assets, shared);
  const wrong = stops(records.problems);
  if (records.value === undefined || wrong.length > 0)
    throw new Error(wrong.map(({ at, message }) => `${at.file}: ${message}`).join('\n'));
  return buyersCopy({ files, shared, assets, records: records.value }, choices);
}

/** The binder of a copy, and what would stop it. */
export function binderOfCopy(copy: BuyersCopy): {
  readonly binder: Binder | undefined;
  readonly wrong: readonly Problem[];
} {
  const made = build({
    files: copy.files,
    shared: copy.shared,
    assets: copy.pictures.map(({ asset }) => asset),
    content,
    before: [],
    today,
    copy: 'buyer',
  });
  return { binder: made.value, wrong: stops(made.problems) };
}

/** All texts of a copy in one. */
export function textOf(copy: BuyersCopy): string {
  return [...copy.files, ...copy.shared].map(({ text }) => text).join('\n');
}
