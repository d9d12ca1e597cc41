// What is done with a machine from a package once it lies aside: read as a stranger's, asked about, marked, and given its place.
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { stops, type Binder } from '../../build.ts';
import { fingerprintText } from '../../records/fingerprint.ts';
import type { Asker } from '../asker.ts';
import { count } from '../count.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import { sha256 } from '../fingerprint-of.ts';
import { readMachine, type ReadMachine } from '../read-machine.ts';
import { reportProblems, tellStopped } from '../report-problems.ts';
import type { Surroundings } from '../surroundings.ts';
import { adoptedText, type Taken } from './adopted-text.ts';
import { alreadyThere } from './already-there.ts';
import { askLeftOut } from './ask-left-out.ts';
import { sameIds, withFormer } from './former-instruments.ts';
import { nameIt, writeThrough, writeTaken } from './new-folder.ts';
import type { PackagedMachine } from './package-machine.ts';

export interface Adopting {
  /** Where it lies until it is named. */
  readonly half: string;
  readonly target: string;
  readonly machine: PackagedMachine;
  /** SHA-256 of every file of the package, by its path there. */
  readonly hashes: ReadonlyMap<string, string>;
  readonly fingerprint: string | undefined;
  readonly today: string;
  readonly how: Readonly<Record<string, string>>;
  readonly around: Surroundings;
  readonly asker: Asker;
  readonly step: (name: string) => void;
}

/** Everything between the package and the named folder; whatever ends it early leaves no folder. */
export async function takeOverMachine(work: Adopting): Promise<ExitCode> {
  const { half, around, step } = work;
  step('write');
  const changed = await writeTaken(half, work.machine.files, work.hashes);
  if (changed !== undefined) return refused(`“${changed}” changed while it was read.`, around);
  const together = await putFormer(work);
  if (together !== undefined) return refused(together, around);
  const cameBefore = work.machine.files.some(({ path }) => path === 'adopted.yaml');
  // Read as what it is going to be: the former owner's instruments go before the workshop's.
  if (!cameBefore)
    writeThrough(join(half, 'adopted.yaml'), Buffer.from(markOf(work, { fixed: [], photos: [], earlier: undefined })));
  step('read');
  const read = readMachine(half, work.today, { siteOnly: true });
  const { binder } = read;
  // Content of the program itself is not the package's doing.
  const wrong = stops(read.problems).filter(({ at }) => !at.file.startsWith('content/'));
  if (binder === undefined || wrong.length > 0) {
    await reportProblems(wrong, read.textOf, around.terminal);
    tellStopped(wrong, 'in the records of the package; nothing was adopted, and nothing was written.', around.terminal);
    return exitCodes.problems;
  }
  const there = alreadyThere(dirname(work.target), { fingerprint: work.fingerprint, records: binder.book.records });
  if (there !== undefined) return refused(there, around);
  step('ask');
  const left = await askLeftOut(work);
  step('mark');
  const fixed = historyOf(read, binder);
  const photos = photosOf(read, work);
  const mark = markOf(work, { fixed, photos, earlier: cameBefore ? binder.book.records.adopted : undefined });
  rmSync(join(half, 'adopted.yaml'), { force: true });
  writeThrough(join(half, 'adopted.yaml'), Buffer.from(mark));
  step('name');
  nameIt(
    half,
    work.target,
    [...fixed, ...photos].map(({ file }) => file),
  );
  sayAdopted(work, { binder, read, fixed: fixed.length, left });
  return exitCodes.fine;
}

function markOf({ today, fingerprint }: Adopting, came: Pick<Taken, 'fixed' | 'photos' | 'earlier'>): string {
  return adoptedText({ date: today, fingerprint, ...came });
}

/** Every picture and paper that came: nobody takes an old photograph anew. */
function photosOf({ folder }: ReadMachine, { machine, hashes }: Adopting): Taken['photos'] {
  const hashOf = new Map(machine.files.map(({ path, from }) => [path.normalize('NFC'), hashes.get(from)]));
  return folder.assets.flatMap(({ file }) => {
    const hash = hashOf.get(file);
    return hash === undefined ? [] : [{ file, hash }];
  });
}

/** Puts the instruments of the former workshop beside the machine's own; a sentence where that cannot be. */
async function putFormer({ half, machine, hashes }: Adopting): Promise<string | undefined> {
  const { shared } = machine;
  if (shared === undefined) return undefined;
  const bytes = await shared.bytes();
  if (sha256(bytes) !== hashes.get(shared.from)) return `“${shared.path}” changed while it was read.`;
  const path = join(half, 'instruments.yaml');
  const own = machine.files.some((file) => file.path === 'instruments.yaml') ? readFileSync(path, 'utf8') : undefined;
  const text = withFormer(own, bytes.toString('utf8'));
  if (text === undefined)
    return 'The instruments of the machine and those of its former workshop cannot be put together.';
  writeFileSync(path, text);
  return undefined;
}

/** What tells of something done. Plans are the new owner's to change, and so is what is under way. */
function historyOf({ folder }: ReadMachine, { book }: Binder): ReadMachine['folder']['files'] {
  const open = new Set(book.plans.map(({ job }) => job.file));
  const told = new Set([...book.records.jobs.map(({ file }) => file).filter((file) => !open.has(file)), 'story.md']);
  return folder.files.filter(({ file }) => told.has(file));
}

function refused(line: string, { terminal }: Surroundings): ExitCode {
  terminal.tell(line);
  terminal.tell('Nothing was adopted, and nothing was written.');
  return exitCodes.problems;
}

interface Done {
  readonly binder: Binder;
  readonly read: ReadMachine;
  readonly fixed: number;
  readonly left: readonly string[];
}

function sayAdopted(work: Adopting, { binder, read, fixed, left }: Done): void {
  const { terminal, folder } = work.around;
  const way = relative(folder, work.target) || work.target;
  const { jobs, machine } = binder.book.records;
  const { plans } = binder.book;
  terminal.say(
    `${machine.name}: adopted into ${way}, ${count(jobs.length, 'job record')} and ${count(read.folder.assets.length, 'photo')}`,
  );
  terminal.say(
    `  ${count(fixed, 'file')} of history ${fixed === 1 ? 'stays as it' : 'stay as they'} came, and so do the photos: adopted.yaml lists them, and check tells when one is changed.`,
  );
  if (plans.length > 0)
    terminal.say(`  Not finished, and yours to go on with: ${plans.map(({ job }) => job.id).join(', ')}`);
  if (work.fingerprint !== undefined) {
    terminal.say(`  Fingerprint  ${fingerprintText(work.fingerprint)}`);
    terminal.say('  Compare it with the one printed on the history that you were given. Keep the package as it is.');
  }
  for (const id of clashes(read)) {
    terminal.say(
      `  The instrument ${id} is the former owner’s here, though your workshop has one of that name: give yours another.`,
    );
  }
  if (left.length > 0)
    terminal.say(`  Left out, and to be written into ${join(way, 'machine.yaml')}: ${left.join(', ')}`);
  terminal.say(`Next: splitpin check ${way}, then splitpin build ${way}`);
}

function clashes({ folder }: ReadMachine): readonly string[] {
  const own = folder.files.find(({ file }) => file === 'instruments.yaml');
  const shared = folder.shared.find(({ file }) => file === '../instruments.yaml');
  return own === undefined || shared === undefined ? [] : sameIds(own.text, shared.text);
}
