// What is printed of an example: the folder read as the program reads it, or the one question asked that the example is about.
import { basename, join } from 'node:path';
import { besideOthers } from '../../src/book/beside-others.ts';
import { makeBook } from '../../src/book/make.ts';
import { lookOverWorkshop } from '../../src/book/workshop-looks.ts';
import { claimOutput } from '../../src/cache/claim.ts';
import { changedPhotos } from '../../src/command/adopt/changed-photos.ts';
import { workOut } from '../../src/calc/work.ts';
import { composeSheets } from '../../src/compose/sheets.ts';
import { sheetsOfJob } from '../../src/entry/sheets-of-job.ts';
import { writeAnswers } from '../../src/entry/write-answers.ts';
import { readContentFolder, readMachineFolder } from '../../src/disk.ts';
import { checkPhoto } from '../../src/photos/check-photo.ts';
import { codes } from '../../src/problem/codes.ts';
import { notOpened } from '../../src/problem/folder-problems.ts';
import type { Problem } from '../../src/problem/problem.ts';
import { formatReport } from '../../src/problem/report.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { checkContentReferences } from '../../src/records/check-content-references.ts';
import { readContent } from '../../src/records/read-content.ts';
import { withOwnContent } from '../../src/records/own/own-content.ts';
import { readRecords } from '../../src/records/read.ts';
import { locate } from '../../src/source/locate.ts';
import { inFolder } from './example-folder.ts';
import type { Fenced } from './fenced.ts';
import type { Entry } from './problem-examples.ts';

const content = readContent(readContentFolder());
const today = readDay('2026-06-01');

/** The report of an entry's files, as the program prints it. */
export function reportOf(entry: Entry): string {
  const [first] = entry.files;
  if (first?.language === 'calculation') return doubts(first);
  return inFolder(entry.files, (folder) => {
    const text = new Map(
      [...entry.files, ...(readMachineFolder(folder).value?.files ?? [])].map((one) => [one.file, one.text]),
    );
    const told = asked(entry, folder).filter((problem) => belongs(problem, entry));
    const report = formatReport(told, (file) => text.get(file), locate, { colour: false });
    return report.replaceAll(folder, 'my-bike').replaceAll(join(folder, '..'), '').replaceAll(/^\//gmu, '');
  });
}

/** Of a query only itself is shown: small records raise others. A linked photo also brings the problem of the link. */
function belongs(problem: Problem, entry: Entry): boolean {
  if (problem.code === entry.code) return true;
  const query = Object.entries(codes).some(([code, severity]) => code === entry.code && severity === 'query');
  return !query && problem.severity === 'problem' && entry.code !== 'path-through-link';
}

function asked(entry: Entry, folder: string): readonly Problem[] {
  const [first] = entry.files;
  if (first === undefined) return [];
  const file = join(folder, first.file);
  // Whoever may read everything may open a closed file too, so the problem is made where it would be found.
  if (first.language === 'closed') return [notOpened(first.file)];
  if (first.language === 'picture') {
    const problem = checkPhoto({ file: first.file, absolute: file, size: 1, modified: 1 });
    return problem === undefined ? [] : [problem];
  }
  if (first.language === 'out') return claimOutput(join(folder, '..', first.file), folder).problems;
  const answers = entry.files.find(({ language }) => language === 'answers');
  if (answers !== undefined) return answered(folder, answers);
  return [...read(folder), ...between(entry, folder)];
}

/** What lies between the machine and the one beside it, where an example has files of another. */
function between(entry: Entry, folder: string): readonly Problem[] {
  if (!entry.files.some(({ file }) => file.startsWith('../'))) return [];
  const machines = [folder, join(folder, '..', 'other-bike')].map((path) => {
    const disk = readMachineFolder(path).value;
    const records = disk === undefined ? undefined : readRecords(disk.files, disk.assets, disk.shared).value;
    if (records === undefined || !today.ok) throw new Error(`${path} is not to be read`);
    return besideOthers(basename(path), makeBook(records, content.value, today.value));
  });
  return lookOverWorkshop(machines).map(({ folder: name, problem }) =>
    name === 'my-bike' ? problem : { ...problem, at: { ...problem.at, file: `../${name}/${problem.at.file}` } },
  );
}

function read(folder: string): readonly Problem[] {
  const disk = readMachineFolder(folder);
  if (disk.value === undefined) return disk.problems;
  const records = readRecords(disk.value.files, disk.value.assets, disk.value.shared);
  const photos = changedPhotos(records.value?.adopted, disk.value.assets);
  const problems = [...disk.problems, ...records.problems, ...photos];
  if (records.value === undefined || !today.ok) return problems;
  const own = withOwnContent(content.value, disk.value.files);
  const book = makeBook(records.value, own.value, today.value);
  return [...problems, ...own.problems, ...checkContentReferences(records.value, own.value), ...book.queries];
}

/** What is said of answers to the sheets of a job. */
function answered(folder: string, { file, text }: Fenced): readonly Problem[] {
  const disk = readMachineFolder(folder).value;
  const records = disk === undefined ? undefined : readRecords(disk.files, disk.assets, disk.shared).value;
  const record = disk?.files.find((one) => one.file === file);
  if (records === undefined || record === undefined || !today.ok) throw new Error(`${file} is not to be read`);
  const book = makeBook(records, content.value, today.value);
  const job = [...book.jobs.values()].find((one) => one.file === file);
  if (job === undefined) throw new Error(`${file} is no job`);
  const sheet = sheetsOfJob(composeSheets(book, {}).value, job.id);
  const lines = text.trimEnd().split('\n');
  const answers = lines.map((line) => ({
    blank: `${job.id}/${line.slice(0, line.indexOf(':'))}`,
    value: line.slice(line.indexOf(':') + 1),
  }));
  return writeAnswers({ record, book, job, sheet, answers, today: today.value }).problems;
}

/** A calculation's doubts, one a line. */
function doubts({ file, text }: Fenced): string {
  const given = text
    .trimEnd()
    .split('\n')
    .map((line) => [line.slice(0, line.indexOf(':')), line.slice(line.indexOf(':') + 1).trim()]);
  const worked = workOut(file, Object.fromEntries(given));
  return worked.doubts
    .map(({ code, message, hint }) => ` ${code}: ${message}${hint === undefined ? '' : `\n      ${hint}`}`)
    .join('\n')
    .trimStart();
}
