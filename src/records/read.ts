// A machine's files as records: every file read by its kind, then checked against each other. Everything wrong is told at once.
import type { Outcome, Problem } from '../problem/problem.ts';
import type { Asset, SourceFile } from '../source/files.ts';
import { isOwnContent } from '../source/machine-files.ts';
import { cleanText } from '../source/clean-text.ts';
import { conflictMarker } from '../source/conflict-markers.ts';
import { checkAdopted } from './check-adopted.ts';
import { checkRecords } from './check-records.ts';
import { sameFile } from './check-ids.ts';
import { keptJob, keptMaker, keptReader, type MakerReading } from './kept-readings.ts';
import { keptList, keptWith } from './kept-with.ts';
import { adoptedKind } from './kinds/adopted.ts';
import { instrumentsKind } from './kinds/instruments.ts';
import { jobKind } from './kinds/job.ts';
import { machineKind } from './kinds/machine.ts';
import { makerKind } from './kinds/maker.ts';
import { storyKind } from './kinds/story.ts';
import { wiringKind } from './kinds/wiring.ts';
import { workshopKind } from './kinds/workshop.ts';
import type { Instrument, Machine, MakerData, Records, Workshop } from './model.ts';
import { readFile, unreadFiles, type FileReading } from './read-file.ts';
import { byDate, readJob } from './read-job.ts';

/** Each text is read once, for as long as it is the same. */
const readers = {
  machine: keptReader(machineKind),
  instruments: keptReader(instrumentsKind),
  workshop: keptReader(workshopKind),
  wiring: keptReader(wiringKind),
  adopted: keptReader(adoptedKind),
};
const machineIn = keptWith((data: Omit<Machine, 'file'>, file: string): Machine => ({ file, ...data }));
const sameInstruments = keptList<Instrument>();

/**
 * Reads a machine folder. `shared` are the files of the workshop above it; `assets` are looked up by name only.
 * The value is undefined when machine.yaml cannot be read; otherwise it holds what could be read, and `unread` names the rest.
 */
export function readRecords(
  files: readonly SourceFile[],
  assets: readonly Asset[],
  shared: readonly SourceFile[] = [],
): Outcome<Records | undefined> {
  const machine = files.filter((file) => machineKind.matches(file.file)).map(readers.machine)[0];
  const instruments = [...files, ...shared]
    .filter((file) => instrumentsKind.matches(file.file))
    .map(readers.instruments);
  const workshops = [...files, ...shared].filter((file) => workshopKind.matches(file.file)).map(readers.workshop);
  const wiring = files.filter((file) => wiringKind.matches(file.file)).map(readers.wiring)[0];
  const adopted = files.filter((file) => adoptedKind.matches(file.file)).map(readers.adopted)[0];
  const makerFiles = files.filter((file) => makerKind.matches(file.file));
  const { readings: makers, maker, dimensionOf } = keptMaker(makerFiles, () => readMaker(makerFiles));
  const jobFiles = files.filter((file) => jobKind.matches(file.file));
  const jobs = jobFiles.map((file) => keptJob(file, dimensionOf, () => readJob(file, dimensionOf)));
  const story = files.filter((file) => storyKind.matches(file.file)).map(readStory)[0];
  const readings = [machine, ...makers, ...instruments, ...workshops, wiring, ...jobs, story?.reading, adopted].filter(
    (reading) => reading !== undefined,
  );
  const problems = [...readings.flatMap((reading) => reading.problems), ...sameFile(jobFiles)];
  const texts = new Map([...shared, ...files].map((one) => [one.file, one.text]));
  const data = machine?.value;
  if (machine === undefined || data === undefined || machine.problems.length > 0) {
    return { value: undefined, problems: machine === undefined ? [noMachine(), ...problems] : problems };
  }
  const own = files.filter(({ file }) => isOwnContent(file)).map(({ file, text }) => ({ file, text }));
  const records: Records = {
    machine: machineIn(data, machine.file),
    maker,
    instruments: sameInstruments(ownFirst(instruments, adopted?.value !== undefined)),
    ...(workshops.length === 0 ? {} : { workshop: oneWorkshop(workshops) }),
    ...(wiring?.value === undefined ? {} : { wiring: wiring.value }),
    jobs: jobs.flatMap((reading) => reading.value ?? []).toSorted(byDate),
    ...(story === undefined ? {} : { story: { file: story.reading.file, body: story.body } }),
    ...(adopted?.value === undefined ? {} : { adopted: adopted.value }),
    unread: unreadFiles(readings, (file) => texts.get(file)),
    ...(own.length === 0 ? {} : { own }),
    kept: readings.flatMap((reading) => reading.kept),
  };
  const changed = records.adopted === undefined ? [] : checkAdopted(records.adopted, files, assets);
  return { value: records, problems: [...problems, ...changed, ...checkRecords(records, assets)] };
}

/**
 * Of the machine's own file and the workshop's. In a machine that came from somebody else its own go first: its records mean the
 * former owner's tool by a name, whatever the new workshop calls so.
 */
function ownFirst(readings: readonly FileReading<readonly Instrument[]>[], came: boolean): readonly Instrument[] {
  const all = readings.flatMap((reading) => reading.value ?? []);
  const own = new Set(all.filter(({ at }) => !at.file.startsWith('../')).map(({ id }) => id));
  return came ? all.filter(({ at, id }) => !at.file.startsWith('../') || !own.has(id)) : all;
}

function readMaker(files: readonly SourceFile[]): Omit<MakerReading, 'dimensionOf'> {
  const readings = files.map((file) => readFile(file, makerKind));
  return { readings, maker: oneMaker(readings) };
}

function oneMaker(readings: readonly FileReading<MakerData>[]): MakerData {
  const books = readings.flatMap((reading) => reading.value ?? []);
  return {
    fasteners: books.flatMap((book) => book.fasteners),
    limits: books.flatMap((book) => book.limits),
    fluids: books.flatMap((book) => book.fluids),
    settings: books.flatMap((book) => book.settings),
    services: books.flatMap((book) => book.services),
    sources: books.flatMap((book) => book.sources),
  };
}

function oneWorkshop(readings: readonly FileReading<Workshop>[]): Workshop {
  const all = readings.flatMap((reading) => reading.value ?? []);
  return {
    suppliers: all.flatMap((one) => one.suppliers),
    stock: all.flatMap((one) => one.stock),
    shared: all.flatMap((one) => one.shared),
  };
}

/** A story needs no front matter; with one, its body is what follows. */
function readStory(source: SourceFile): { reading: FileReading<unknown>; body: string } {
  const clean = cleanText(source.text);
  if (!clean.startsWith('---')) {
    const torn = conflictMarker(source);
    const problems = torn === undefined ? [] : [torn];
    return { reading: { file: source.file, value: {}, document: undefined, problems, kept: [] }, body: clean };
  }
  const reading = readFile(source, storyKind);
  return { reading, body: reading.document?.body ?? '' };
}

function noMachine(): Problem {
  const at = { file: 'machine.yaml', path: [] };
  const hint = 'Write one as the page of formats shows; everything else hangs on it.';
  return {
    code: 'not-a-machine-folder',
    severity: 'problem',
    at,
    message: 'There is no machine.yaml in this folder.',
    hint,
  };
}
