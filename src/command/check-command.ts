// `check`: everything is read and computed, nothing is written.
import { resolve } from 'node:path';
import { besideOthers, stops, type OneOfThem } from '../build.ts';
import { findMachines } from '../disk.ts';
import { checkPhoto } from '../photos/check-photo.ts';
import { changedPhotos } from './adopt/changed-photos.ts';
import { count } from './count.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { namedPhotos } from './named-photos.ts';
import type { Options } from './program.ts';
import { readMachine } from './read-machine.ts';
import { reportFolderProblems, reportProblems, tellStopped } from './report-problems.ts';
import { tellWorkshop } from './tell-workshop.ts';
import { dayFor, type Surroundings } from './surroundings.ts';

/** Runs `splitpin check`. */
export async function checkCommand(folder: string, options: Options, around: Surroundings): Promise<ExitCode> {
  const { terminal } = around;
  const found = findMachines(resolve(around.folder, folder));
  if (found.value.length === 0) return reportFolderProblems(found.problems, terminal);
  if (options.watch === true) return (await import('./check-watch.ts')).watchAndCheck(found.value, options, around);
  let worst: ExitCode = exitCodes.fine;
  const all: OneOfThem[] = [];
  for (const path of found.value) {
    const read = readMachine(path, dayFor(options.today, around), options);
    if (read.binder !== undefined) all.push(besideOthers(read.folder.name, read.binder.book));
    const photos = read.binder === undefined ? [] : namedPhotos(read.binder, read.folder.assets);
    const problems = [
      ...read.problems,
      ...photos.flatMap((photo) => checkPhoto(photo) ?? []),
      ...changedPhotos(read.binder?.book.records.adopted, read.folder.assets),
    ];
    const wrong = stops(problems);
    await reportProblems(problems, read.textOf, terminal);
    if (wrong.length > 0) tellStopped(wrong, 'to put right in ' + read.folder.name + '.', terminal);
    else terminal.say(summary(read.folder.name, read.folder.files.length, photos.length, problems.length));
    if (wrong.length > 0) worst = exitCodes.problems;
  }
  await tellWorkshop(all, found.value, terminal);
  return worst;
}

function summary(name: string, files: number, photos: number, queries: number): string {
  const seen = count(files, 'file') + ' and ' + count(photos, 'photo') + ' read';
  return name + ': ' + seen + ', no problems, ' + count(queries, 'query', 'queries') + '.';
}
