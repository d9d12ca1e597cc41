// `print`: one sheet, or the sheets of one job, whatever else is wrong in the folder.
import { mkdtempSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { stops, type Binder, type Sheet } from '../build.ts';
import { borrow } from '../cache/aside.ts';
import { refuseLooseFiles } from '../cache/claim.ts';
import { readLastBuild, type LastBuild } from '../cache/manifest.ts';
import { makePhotos } from '../photos/photo-work.ts';
import type { Problem } from '../problem/problem.ts';
import { carriedData, type Carried } from './carried-data.ts';
import { count } from './count.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { oneMachine } from './one-machine.ts';
import { namedPhotos } from './named-photos.ts';
import { nearest } from './nearest.ts';
import { defaultOut } from './places.ts';
import type { Options } from './program.ts';
import type { Form } from '../pdf/form.ts';
import { photoFiles } from '../sheet/photo-files.ts';
import { formOf, keepingJob } from './sheet-form.ts';
import { jobsAsked, sheetsAsked } from './sheets-asked.ts';
import { noTypeface } from './no-typeface.ts';
import { readMachine, type ReadMachine } from './read-machine.ts';
import { reportFolderProblems, reportProblems } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import type { Terminal } from './terminal.ts';
import { writeFault } from './write-fault.ts';
import { writePrint, type PhotoPath } from './print-task.ts';

/** Runs `splitpin print`. */
export async function printCommand(
  folder: string,
  wanted: string,
  options: Options,
  around: Surroundings,
): Promise<ExitCode> {
  const { terminal } = around;
  const machine = oneMachine(folder, around);
  if (typeof machine === 'number') return machine;
  const read = readMachine(machine, dayFor(options.today, around), { ...options, workings: true });
  if (read.binder === undefined) return cannot(read, terminal);
  if (wanted === 'list') return listSheets(read.binder.sheets, terminal);
  const asked = sheetsAsked(wanted, read.binder);
  const workings = options.workings === true && asked.length > 0 ? sheetsAsked('workings', read.binder) : [];
  const sheets = [...new Set([...asked, ...workings])];
  if (sheets.length === 0) return unknownSheet(wanted, read, terminal);
  const fitting = sheets.filter((sheet) => fitsPaper(sheet));
  if (fitting.length === 0) return noCards(sheets, terminal);
  const name = read.folder.name + '-print';
  const out =
    options.out === undefined ? defaultOut(machine, name, around.folder) : resolve(around.folder, options.out);
  const refused = refuseLooseFiles(out, machine);
  if (refused !== undefined) return reportFolderProblems([refused], terminal);
  const carried = carriedData(read.binder, options.withoutData === true);
  const last = readLastBuild(defaultOut(machine, read.folder.name, around.folder));
  return printSheets(fitting, {
    read,
    binder: read.binder,
    carried,
    out,
    last,
    terminal,
    asForm: options.form === true,
  });
}

/** On paper that takes one tag or one card, a sheet must have such to print. */
function fitsPaper(sheet: Sheet): boolean {
  // Its blocks are made when they are asked for.
  return (sheet.paper !== 'tag' && sheet.paper !== 'card') || sheet.blocks.some(({ type }) => type === 'cards');
}

function noCards(sheets: readonly Sheet[], terminal: Terminal): ExitCode {
  for (const { title, paper } of sheets)
    terminal.tell(`${title}: it has nothing that is printed on a ${paper} by itself.`);
  return exitCodes.usage;
}

interface Work {
  readonly read: ReadMachine;
  readonly binder: Binder;
  readonly carried: Carried;
  readonly out: string;
  /** The last build in the place where builds go when nobody says. */
  readonly last: LastBuild | undefined;
  readonly terminal: Terminal;
  /** With fields to be filled in on a screen. */
  readonly asForm: boolean;
}

async function printSheets(sheets: readonly Sheet[], work: Work): Promise<ExitCode> {
  const { terminal, read, out } = work;
  const scratch = mkdtempSync(join(tmpdir(), 'splitpin-print-'));
  try {
    const photos = await photosFor(sheets, work, scratch);
    for (const sheet of sheets) {
      const form = work.asForm ? formFor(sheet, work) : undefined;
      const file = join(out, `${sheet.id}${form === undefined ? '' : '-form'}.pdf`);
      const half = `${file}.${String(process.pid)}.half`;
      const more = { attach: work.carried(sheet), ...(form === undefined ? {} : { form }) };
      const { pages, missingCharacters } = await writePrint(sheet, half, photos.path, more).finally(() =>
        terminal.progress(''),
      );
      renameSync(half, file);
      terminal.say(`${sheet.title}: ${count(pages, 'side')} of ${sheet.paper} paper, ${wayTo(file)}`);
      if (work.asForm && form === undefined)
        terminal.say('  no open job keeps what is written on it: it has no fields');
      for (const line of sheet.leftOut) terminal.say('  left out: ' + line);
      if (missingCharacters.length > 0) terminal.say('  ' + noTypeface(sheet.title, missingCharacters));
    }
    await tellProblems([...read.problems, ...photos.problems], work);
    return exitCodes.fine;
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    terminal.tell(told);
    return exitCodes.writing;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** The fields of a sheet, for the record that keeps what is written on it. */
function formFor(sheet: Sheet, { read, binder }: Work): Form | undefined {
  const job = keepingJob(sheet, binder.book);
  const text = job === undefined ? undefined : read.textOf(job.file);
  return job === undefined || text === undefined ? undefined : formOf(sheet, job, text);
}

/** Only the photos that these sheets show are made; a broken one leaves its place empty. */
async function photosFor(
  sheets: readonly Sheet[],
  work: Work,
  into: string,
): Promise<{ readonly path: PhotoPath; readonly problems: readonly Problem[] }> {
  const named = namedPhotos(work.binder, work.read.folder.assets);
  const shown = new Set(named.length === 0 ? [] : sheets.flatMap(({ blocks }) => [...photoFiles(blocks)]));
  const made = await makePhotos({
    assets: named.filter(({ file }) => shown.has(file)),
    into,
    large: true,
    // What a build has made small already is not made small again.
    known: new Map((work.last?.manifest.photos ?? []).map((photo) => [photo.file, photo])),
    takeOver: (file) => borrow(work.last, file, into),
    progress: (done, all) => work.terminal.progress(`Photos: ${String(done)} of ${String(all)}`),
  });
  const photos = new Map(made.value.map((photo) => [photo.file, photo]));
  const path: PhotoPath = (file) => {
    const photo = photos.get(file);
    return photo && { path: join(into, photo.large), width: photo.width, height: photo.height };
  };
  return { path, problems: made.problems };
}

function listSheets(sheets: readonly Sheet[], terminal: Terminal): ExitCode {
  for (const sheet of sheets) terminal.say(sheet.id.padEnd(40) + ' ' + sheet.title);
  return exitCodes.fine;
}

/** A name that is neither a sheet nor a job with one: all names that would do, the likeliest first. */
function unknownSheet(wanted: string, { binder, problems }: ReadMachine, terminal: Terminal): ExitCode {
  const several = binder === undefined ? [] : jobsAsked(wanted, binder.book);
  if (several.length > 1) {
    terminal.tell(`“${wanted}” may mean several jobs. Their names:`);
    for (const { id, title } of several) terminal.tell(`  ${id.padEnd(40)} ${title}`);
    return exitCodes.usage;
  }
  const sheets = binder?.sheets ?? [];
  const titles = new Map(sheets.map((sheet) => [sheet.id, sheet.title]));
  terminal.tell(`There is no sheet called “${wanted}”, nor a job that has one. The sheets, nearest name first:`);
  for (const id of nearest(wanted, [...titles.keys()])) terminal.tell(`  ${id.padEnd(40)} ${titles.get(id) ?? ''}`);
  const wrong = stops(problems).length;
  if (wrong > 0)
    terminal.tell(count(wrong, 'problem') + ' in the records may have kept a sheet away: see splitpin check.');
  return exitCodes.usage;
}

async function cannot(read: ReadMachine, terminal: Terminal): Promise<ExitCode> {
  await reportProblems(stops(read.problems), read.textOf, terminal);
  terminal.tell('');
  terminal.tell('The sheet cannot be made before the machine itself can be read.');
  return exitCodes.problems;
}

async function tellProblems(problems: readonly Problem[], work: Work): Promise<void> {
  const wrong = stops(problems);
  if (wrong.length === 0) return;
  await reportProblems(wrong, work.read.textOf, work.terminal);
  work.terminal.tell('');
  work.terminal.tell(
    count(wrong.length, 'problem') + ' in other places; what was left out because of them stands on the sheet.',
  );
}

function wayTo(file: string): string {
  const way = relative(process.cwd(), file);
  return way.startsWith('..') ? file : way;
}
