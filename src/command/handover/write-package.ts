// A package is made aside: records, binder, tables, manual, lists, ZIP; looked through; then swapped in.
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { dropAside, openAside, swapIn, type Aside } from '../../cache/aside.ts';
import { manifestFile as buildMark } from '../../cache/manifest.ts';
import { stops, type Binder } from '../../build.ts';
import { packageFolder } from '../../disk.ts';
import type { BuyersCopy } from '../../handover/buyers-copy.ts';
import { csvText } from '../../handover/csv-table.ts';
import {
  binderFolder,
  formatsFolder,
  infoKeys,
  payloadFolder,
  recordsFolder,
  tablesFolder,
} from '../../handover/package-layout.ts';
import { readMeText } from '../../handover/read-me.ts';
import { recordTables } from '../../handover/tables.ts';
import { fingerprintText } from '../../records/fingerprint.ts';
import { count } from '../count.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { onInterrupt } from '../interrupt.ts';
import { makeBinder } from '../make-binder.ts';
import { programHash, programVersion } from '../program-version.ts';
import { readMachine, type ReadMachine } from '../read-machine.ts';
import { reportProblems } from '../report-problems.ts';
import type { Terminal } from '../terminal.ts';
import { writeFault } from '../write-fault.ts';
import { writeZip } from '../zip/write-zip.ts';
import { writeCopy } from './copy-on-disk.ts';
import { filesBelow } from './files-below.ts';
import { lookThroughPackage } from './look-through-package.ts';
import { keyInWords } from './place-in-words.ts';
import { writeTagFiles } from './tag-files.ts';

export interface PackageWork {
  readonly copy: BuyersCopy;
  readonly read: ReadMachine;
  readonly name: string;
  /** Folder that will hold the package and its ZIP. */
  readonly out: string;
  readonly today: string;
  readonly withoutPrices: boolean;
  readonly terminal: Terminal;
  readonly step: (name: string) => void;
}

/** Makes the package. The output folder changes only when everything went well. */
export async function writePackage(work: PackageWork): Promise<ExitCode> {
  const made: Aside[] = [];
  const settled = onInterrupt(() => made.forEach(dropAside));
  try {
    work.step('begin');
    const aside = openAside(work.out, undefined);
    made.push(aside);
    return await fillPackage(aside, work);
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    work.terminal.tell(told);
    return exitCodes.writing;
  } finally {
    settled();
    made.forEach(dropAside);
  }
}

async function fillPackage(aside: Aside, work: PackageWork): Promise<ExitCode> {
  const { terminal, name, step } = work;
  const folder = join(aside.folder, name);
  const machine = join(folder, recordsFolder, machineFolderOf(work));
  step('records');
  await writeCopy(work.copy, machine, terminal);
  const binder = await readCopy(machine, work);
  if (binder === undefined) return exitCodes.problems;
  step('binder');
  const built = await buildCopy(machine, join(folder, binderFolder), work);
  if (built !== exitCodes.fine) return built;
  step('tables');
  writeTables(folder, binder, work);
  step('lists');
  const payload = filesBelow(join(folder, payloadFolder)).map((file) => `${payloadFolder}/${file}`);
  const about = { book: binder.book, machineFolder: machineFolderOf(work), program: programVersion() };
  const readMe = readMeText({ ...about, withoutPrices: work.withoutPrices });
  writeTagFiles({ folder, payload, readMe, info: infoLines(binder, work) });
  step('look through');
  if (!(await isClean(folder, work))) return exitCodes.problems;
  step('zip');
  terminal.progress('Packing');
  const files = filesBelow(folder);
  await writeZip(join(aside.folder, `${name}.zip`), { folder, files, name, day: work.today });
  step('swap');
  terminal.progress('');
  swapIn(aside, emptyMark);
  sayDone(files.length, binder, work);
  return exitCodes.fine;
}

/** Only says that the folder is ours and may be replaced: a package is never taken up again. */
const emptyMark = {
  splitpin: 1,
  program: '',
  options: '',
  inputs: [],
  photos: [],
  prints: [],
  outputs: {},
  said: [],
} as const;

/** The machine folder is called as the package is, so that a name chosen for the package is the only one in it. */
function machineFolderOf({ name }: PackageWork): string {
  return name.replace(/-package$/u, '');
}

/** The copy has to be as good as the records: what was left out must not make one unreadable. */
async function readCopy(machine: string, work: PackageWork): Promise<Binder | undefined> {
  const { terminal } = work;
  const read = readMachine(machine, work.today, { copy: 'buyer' });
  const wrong = stops(read.problems);
  if (wrong.length === 0 && read.binder !== undefined) return read.binder;
  terminal.progress('');
  await reportProblems(wrong, read.textOf, terminal);
  terminal.tell(
    'So it would read with the private values left out; nothing was written. Say it in the record without them.',
  );
  return undefined;
}

async function buildCopy(machine: string, out: string, work: PackageWork): Promise<ExitCode> {
  const { terminal, today } = work;
  const program = programHash();
  const quiet: Terminal = { ...terminal, say: () => undefined };
  mkdirSync(join(out, '..'), { recursive: true });
  const { code } = await makeBinder(
    { machine, out, today, options: { copy: 'buyer' }, program, choices: '' },
    undefined,
    quiet,
  );
  // The mark of a build tells sizes and times of the files that it was made from.
  rmSync(join(out, buildMark), { force: true });
  return code;
}

function writeTables(folder: string, binder: Binder, { copy }: PackageWork): void {
  const put = (file: string, text: string): void =>
    writeFileSync(join(folder, tablesFolder, file), text, { flag: 'wx' });
  mkdirSync(join(folder, tablesFolder), { recursive: true });
  for (const { file, text } of recordTables(binder.book)) put(file, text);
  const left = copy.leftOut.map(({ what, at }) => [at.file, keyInWords(at), what]);
  put('left-out.csv', csvText(['file', 'key', 'what'], left));
  cpSync(join(packageFolder(), 'content/pages'), join(folder, formatsFolder), {
    recursive: true,
    filter: (path) => !path.endsWith('.png'),
  });
}

function infoLines({ book }: Binder, work: PackageWork): Parameters<typeof writeTagFiles>[0]['info'] {
  return [
    ['Bagging-Date', work.today],
    ['Bag-Software-Agent', `Splitpin ${programVersion()}`],
    ['External-Description', `Binder and records of a motorcycle, buyer's copy: ${book.records.machine.name}`],
    [infoKeys.machine, book.records.machine.name],
    [infoKeys.machineFolder, machineFolderOf(work)],
    [infoKeys.copy, 'buyer'],
    [infoKeys.fingerprint, book.fingerprint ?? ''],
  ];
}

async function isClean(folder: string, { copy, name, terminal }: PackageWork): Promise<boolean> {
  const files = filesBelow(folder);
  const { found, notTold } = await lookThroughPackage(folder, files, copy.hunted, (done) =>
    terminal.progress(`Looking through: ${String(done + 1)} of ${String(files.length)}`),
  );
  terminal.progress('');
  for (const line of notTold) terminal.tell(line);
  if (found.length === 0) return true;
  for (const line of found) terminal.tell(line);
  terminal.tell(`${name} was not written: ${count(found.length, 'private thing')} would have gone with it.`);
  return false;
}

function sayDone(files: number, { book }: Binder, { out, name, terminal }: PackageWork): void {
  const at = basename(out);
  terminal.say(`${at}/${name}/  ${count(files, 'file')}: begin with read-me.txt`);
  terminal.say(`${at}/${name}.zip  the same in one file`);
  if (book.fingerprint !== undefined) terminal.say(`Fingerprint of the records: ${fingerprintText(book.fingerprint)}`);
  terminal.say('Every file was looked through for what stays with you; none of it was found.');
}
