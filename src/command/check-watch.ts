// `check --watch`: after every change all problems again, one line each, in the form by which editors jump to a place.
import { join, relative } from 'node:path';
import { locate, stops } from '../build.ts';
import { checkPhoto } from '../photos/check-photo.ts';
import type { Problem } from '../problem/problem.ts';
import { changedPhotos } from './adopt/changed-photos.ts';
import { count } from './count.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { faultText } from './fault-text.ts';
import { interrupted } from './interrupt.ts';
import { namedPhotos } from './named-photos.ts';
import type { Options } from './program.ts';
import { readMachine, type ReadMachine } from './read-machine.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import { watchFolders } from './watch-folders.ts';

/** Checks the machines, and again after every change, until it is interrupted. */
export async function watchAndCheck(
  machines: readonly string[],
  options: Options,
  around: Surroundings,
): Promise<ExitCode> {
  const watches = machines.map((path) => follow(path, options, around));
  await interrupted();
  for (const watching of watches) watching.close();
  return exitCodes.fine;
}

function follow(path: string, options: Options, around: Surroundings): { readonly close: () => void } {
  const { terminal } = around;
  let reading: ReadMachine | undefined;
  const look = (): void => {
    const earlier = reading === undefined ? undefined : { reading, touched: undefined };
    reading = readMachine(path, dayFor(options.today, around), options, earlier);
    // Whoever reads that we wait may save at once.
    watching.follow(reading.folder.folders);
    for (const line of linesOf(reading, path, around.folder)) terminal.say(line);
  };
  const watching = watchFolders(() => {
    try {
      look();
    } catch (cause) {
      terminal.tell(faultText(cause));
    }
  });
  look();
  return watching;
}

/** A line where a round begins, a line a problem, a line where it ends. */
function linesOf(read: ReadMachine, path: string, here: string): readonly string[] {
  const { name } = read.folder;
  const photos = read.binder === undefined ? [] : namedPhotos(read.binder, read.folder.assets);
  const problems = [
    ...read.problems,
    ...photos.flatMap((photo) => checkPhoto(photo) ?? []),
    ...changedPhotos(read.binder?.book.records.adopted, read.folder.assets),
  ];
  const wrong = stops(problems);
  const asked = problems.filter((problem) => !wrong.includes(problem));
  const lines = [...wrong, ...asked].map((problem) => problemLine(problem, read, path, here));
  return [
    `${name}: checking`,
    ...new Set(lines),
    `${name}: ${count(wrong.length, 'problem')}, ${count(asked.length, 'query', 'queries')}. Waiting for a change; Ctrl+C ends.`,
  ];
}

/** `my-bike/jobs/a.md:4:7: problem word-unknown: … (what to write)` */
function problemLine(
  { code, at, message, hint, severity }: Problem,
  read: ReadMachine,
  path: string,
  here: string,
): string {
  const text = read.textOf(at.file);
  const { line, column } = text === undefined ? { line: at.line ?? 1, column: at.column ?? 1 } : locate(text, at);
  const file = at.file.startsWith('content/') ? at.file : join(relative(here, path), at.file);
  const more = hint === undefined ? '' : ` (${hint})`;
  return `${file}:${String(line)}:${String(column)}: ${severity} ${code}: ${message}${more}`.replaceAll(
    /\s*[\r\n]+\s*/gu,
    ' ',
  );
}
