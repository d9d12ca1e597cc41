// A whole binder: read, computed, and, if nothing is wrong, written aside and swapped in.
import { dropAside, noteFile, openAside, putCopy, putText, swapIn, takeOver, type Aside } from '../cache/aside.ts';
import { shortHash } from '../cache/hash.ts';
import type { InputMark, LastBuild } from '../cache/manifest.ts';
import { binderData, binderSchema, dueCalendar, searchEntries, stops, type Binder } from '../build.ts';
import { makePhotos, type MadePhoto } from '../photos/photo-work.ts';
import type { Problem } from '../problem/problem.ts';
import type { BuildJob } from './workshop/machine-build.ts';
import { changedPhotos } from './adopt/changed-photos.ts';
import { carriedData } from './carried-data.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { hashOfRecord } from './fingerprint-of.ts';
import { saidAtTheEnd, withWay } from './said-at-the-end.ts';
import { onInterrupt } from './interrupt.ts';
import { namedPhotos } from './named-photos.ts';
import { phonePages } from './phone-file.ts';
import { readMachine, type ReadMachine } from './read-machine.ts';
import { reportProblems, tellStopped } from './report-problems.ts';
import { frameFor } from './site-frame-for.ts';
import type { Terminal } from './terminal.ts';
import { writeFault } from './write-fault.ts';
import { writePrints, type Prints } from './write-prints.ts';

/** How it ended, and what was read for it. */
export interface MadeBinder {
  readonly code: ExitCode;
  readonly read: ReadMachine;
}

/** Builds one machine's binder; the output folder changes only when everything went well. */
export async function makeBinder(job: BuildJob, last: LastBuild | undefined, terminal: Terminal): Promise<MadeBinder> {
  terminal.progress('Reading the records');
  const read = readMachine(job.machine, job.today, job.options);
  return { read, code: await makeOf(read, job, last, terminal) };
}

async function makeOf(
  read: ReadMachine,
  job: BuildJob,
  last: LastBuild | undefined,
  terminal: Terminal,
): Promise<ExitCode> {
  const { binder } = read;
  const problems = [...read.problems, ...changedPhotos(binder?.book.records.adopted, read.folder.assets)];
  if (binder === undefined || stops(problems).length > 0) return stop(read, problems, terminal);
  try {
    // Listening comes first: a signal between the two would leave the folder behind.
    const made: Aside[] = [];
    const settled = onInterrupt(() => made.forEach(dropAside));
    try {
      const aside = openAside(job.out, last);
      made.push(aside);
      return await write(aside, { job, read, binder, terminal, data: once(() => binderData(binder.book)) });
    } finally {
      settled();
      made.forEach(dropAside);
    }
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    terminal.tell(told);
    return exitCodes.writing;
  }
}

interface Work {
  readonly job: BuildJob;
  readonly read: ReadMachine;
  readonly binder: Binder;
  readonly terminal: Terminal;
  /** The data of the binder, made once. */
  readonly data: () => ReturnType<typeof binderData>;
}

async function write(aside: Aside, work: Work): Promise<ExitCode> {
  const { job, read, binder, terminal } = work;
  const made = await makePhotos({
    assets: namedPhotos(binder, read.folder.assets),
    into: aside.folder,
    known: new Map((aside.last?.manifest.photos ?? []).map((photo) => [photo.file, photo])),
    takeOver: (file) => takeOver(aside, file),
    progress: (done, all) => terminal.progress(`Photos: ${String(done)} of ${String(all)}`),
  });
  if (made.problems.length > 0) return stop(read, [...read.problems, ...made.problems], terminal);
  notePhotos(aside, made.value);
  const photos = new Map(made.value.map((photo) => [photo.file, photo]));
  // The sheets are begun first: other cores set them while this one makes the pages.
  const printing = job.options.siteOnly === true ? Promise.resolve(noPrints) : printAll(aside, work, photos);
  const prints = await together(printing, writeSite(aside, work, photos));
  if (job.options.siteOnly !== true) writeData(aside, work);
  terminal.progress('');
  const said = saidAtTheEnd({ read, binder, aside, prints, photos: made.value.length });
  swapIn(aside, {
    splitpin: 1,
    program: job.program,
    options: job.choices,
    inputs: inputMarks(read),
    photos: made.value,
    prints: prints.marks,
    // In one order, whichever of pages and sheets was ready first.
    outputs: Object.fromEntries([...aside.outputs].sort(([a], [b]) => (a < b ? -1 : 1))),
    said,
  });
  for (const line of withWay(said, job.out)) terminal.say(line);
  return exitCodes.fine;
}

/** What the first gives, when both have ended: a fault of one leaves nothing of the other at work in a folder that is given up. */
async function together<T>(first: Promise<T>, second: Promise<void>): Promise<T> {
  const [given, other] = await Promise.allSettled([first, second]);
  if (given.status === 'rejected') throw given.reason;
  if (other.status === 'rejected') throw other.reason;
  return given.value;
}

const noPrints: Prints = { marks: [], missing: [] };

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}

async function stop(read: ReadMachine, problems: readonly Problem[], terminal: Terminal): Promise<ExitCode> {
  terminal.progress('');
  await reportProblems(problems, read.textOf, terminal);
  tellStopped(stops(problems), `to put right in ${read.folder.name}; nothing was written.`, terminal);
  return exitCodes.problems;
}

async function writeSite(aside: Aside, work: Work, photos: ReadonlyMap<string, MadePhoto>): Promise<void> {
  const { binder, job, terminal } = work;
  terminal.progress('Pages of the site');
  const [{ renderSite }, { siteAssets }, { searchFileText, searchIndexFile }, { pageScripts }] = await Promise.all([
    import('../render/site.ts'),
    import('../render/assets.ts'),
    import('../render/search-file.ts'),
    import('../render/page-scripts.ts'),
  ]);
  const frame = frameFor(binder, photos, undefined, job.options.siteOnly !== true);
  await renderSite(binder.pages, frame, ({ file, content }) => putText(aside, file, content));
  const { book, pages } = binder;
  putText(aside, searchIndexFile, searchFileText(searchEntries(book, pages), book.content.words));
  for (const { file, text } of pageScripts(pages)) putText(aside, file, text());
  for (const asset of siteAssets()) putCopy(aside, asset.file, asset.absolute);
  if (job.options.siteOnly !== true) await writePhonePages(aside, work);
}

async function writePhonePages(aside: Aside, { binder, read }: Work): Promise<void> {
  const { renderPhonePage } = await import('../render/phone-page.ts');
  for (const { file, page } of phonePages(binder, read.textOf)) {
    const made = page();
    if (made !== undefined) putText(aside, file, renderPhonePage(made));
  }
}

async function printAll(aside: Aside, work: Work, photos: ReadonlyMap<string, MadePhoto>): Promise<Prints> {
  const { binder, job, terminal } = work;
  const progress = (done: number, title: string): void =>
    terminal.progress(`Sheet ${String(done + 1)} of ${String(binder.sheets.length)}: ${title}`);
  const carried = carriedData(binder, job.options.withoutData === true, work.data);
  const { printThreads } = job;
  return writePrints({
    aside,
    sheets: binder.sheets,
    photos,
    program: job.program,
    carried,
    progress,
    ...(printThreads === undefined ? {} : { threads: printThreads }),
  });
}

function writeData(aside: Aside, { binder, data }: Work): void {
  putText(aside, 'data/binder.json', JSON.stringify(data(), null, 1) + '\n');
  putText(aside, 'data/due.ics', dueCalendar(binder.book));
  putText(aside, 'data/binder.schema.json', JSON.stringify(binderSchema, null, 1) + '\n');
}

/** Photos that were made anew are files of this build as well. */
function notePhotos(aside: Aside, photos: readonly MadePhoto[]): void {
  for (const file of photos.flatMap((photo) => [photo.large, photo.small])) {
    if (!aside.outputs.has(file)) noteFile(aside, file);
  }
}

/** Each file as it was read; a record has been hashed for the fingerprint already. */
function inputMarks({ folder: { shared, files, stamps } }: ReadMachine): readonly InputMark[] {
  const records = new Map([...shared, ...files].map((one) => [one.file, one]));
  return stamps.map((stamp) => {
    const record = records.get(stamp.file);
    return { ...stamp, hash: record === undefined ? '' : shortHash(hashOfRecord(record)) };
  });
}
