// `take` of a folder of photos: shown under the bag, step or job where each will be filed, copied and noted when the person says so.
import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Asset, SourceFile } from '../../../source/files.ts';
import { count } from '../../count.ts';
import { exitCodes, type ExitCode } from '../../exit-codes.ts';
import { reportFolderProblems, reportProblems } from '../../report-problems.ts';
import { dayFor } from '../../surroundings.ts';
import { writeFault } from '../../write-fault.ts';
import { writeWhole } from '../../write-whole.ts';
import type { TakeReader, TakeWork } from '../reader.ts';
import { recordsIn, type RecordsIn } from '../records-in.ts';
import { confirmed, said } from '../said.ts';
import { wouldBe } from '../would-be.ts';
import { writeNew } from '../write-new.ts';
import { datedPhotos, mostPhotos, pictureNames, type DatedPhotos } from './dated-photos.ts';
import { filePhotos } from './file-photos.ts';
import { alreadyHere, notedHere, placePhotos, recordsWith, type PlacedPhoto } from './photo-plan.ts';

export const photosReader: TakeReader = {
  reads: 'a folder of dated photos; those after a photographed tag or sheet go under its bag, step or job',
  knows: (_, __, folder) => folder,
  take: takePhotos,
};

async function takePhotos(work: TakeWork): Promise<ExitCode> {
  const { terminal } = work.around;
  const machine = recordsIn(work.machine);
  if (machine === undefined)
    return told(work, 'The machine itself cannot be read: splitpin check says why.', exitCodes.problems);
  const many = pictureNames(work.from).length;
  if (many === 0) return told(work, `There is no picture in ${basename(work.from)}.`, exitCodes.usage);
  if (many > mostPhotos)
    return told(work, `There are more pictures in it than are taken at once (${String(mostPhotos)}).`, exitCodes.usage);
  const chosen = work.options.said['job'];
  if (chosen !== undefined && !machine.jobs.some((job) => job.id === chosen))
    return told(work, `There is no record called “${chosen}”.`, exitCodes.usage);
  const seen = await datedPhotos(work.from, (done, all) =>
    terminal.progress(`Photos: ${String(done)} of ${String(all)}`),
  );
  terminal.progress('');
  if (seen.problems.length > 0) reportFolderProblems(seen.problems, terminal);
  if (!(await mayLeaveOut(seen, work))) return exitCodes.usage;
  const here = alreadyHere(seen.photos, machine.assets);
  const noted = notedHere(here, machine.files);
  if (noted.size > 0)
    terminal.say(
      `${count(noted.size, 'photo is', 'photos are')} in the records already and ${noted.size === 1 ? 'is' : 'are'} not taken again.`,
    );
  const { filed, elsewhere } = filePhotos(seen.photos, machine.machine, machine.jobs, chosen);
  for (const { photo, code } of elsewhere)
    terminal.say(`${photo.name}: left out, for it follows a code that is none of this machine: ${code}`);
  const placed = placePhotos(
    filed.filter(({ photo }) => !noted.has(photo.name)),
    machine.assets,
    here,
  );
  if (placed.length === 0) return told(work, 'Nothing is new; nothing was written.', exitCodes.fine);
  return lookAndWrite(placed, machine, work);
}

async function lookAndWrite(placed: readonly PlacedPhoto[], machine: RecordsIn, work: TakeWork): Promise<ExitCode> {
  const { terminal } = work.around;
  const kind = work.options.said['kind'] ?? 'repair';
  for (const line of shown(placed, kind)) terminal.say(line);
  const records = recordsWith(placed, machine.files, kind);
  const today = dayFor(work.options.today, work.around);
  const fresh = placed.filter(({ isThere }) => !isThere);
  const after = wouldBe(work.machine, today, records.value, fresh.map(assetOf));
  const problems = [...records.problems, ...(after?.problems ?? [])];
  if (problems.length > 0) {
    await reportProblems(problems, (file) => after?.textOf(file), terminal);
    return told(work, 'Nothing was written.', exitCodes.problems);
  }
  if (!(await confirmed(work, askedOf(placed, fresh.length)))) {
    terminal.say('Nothing was written.');
    return exitCodes.fine;
  }
  try {
    return write(placed, records.value, machine, work);
  } catch (cause) {
    const fault = writeFault(cause);
    if (fault === undefined) throw cause;
    return told(work, fault, exitCodes.writing);
  }
}

/** Copies first, then the records that name them: whatever breaks off, no record names a picture that is not there. */
function write(
  placed: readonly PlacedPhoto[],
  records: readonly SourceFile[],
  machine: RecordsIn,
  work: TakeWork,
): ExitCode {
  const before = new Map(machine.files.map(({ file, text }) => [file, text]));
  const made = records.filter(({ file }) => !before.has(file));
  const changed = records.filter(({ file }) => before.has(file));
  const fresh = placed.filter(({ isThere }) => !isThere);
  const copies = fresh.map(({ file, photo }) => ({ file, bytes: () => readFileSync(photo.absolute) }));
  writeNew(work.machine, [...copies, ...made.map(({ file, text }) => ({ file, bytes: text }))]);
  const missed = changed.filter(
    ({ file, text }) => writeWhole(join(work.machine, file), text, before.get(file)) !== 'written',
  );
  for (const { file } of missed)
    work.around.terminal.tell(
      `${file} was changed meanwhile and was not touched; its photos are copied and not noted.`,
    );
  work.around.terminal.say(
    `${count(fresh.length, 'photo')} copied, ${count(records.length - missed.length, 'record')} written.`,
  );
  return missed.length === 0 ? exitCodes.fine : exitCodes.problems;
}

function askedOf(placed: readonly PlacedPhoto[], copied: number): string {
  return copied === 0 ? `Note ${count(placed.length, 'photo')}?` : `Copy ${count(copied, 'photo')} and note them?`;
}

function shown(placed: readonly PlacedPhoto[], kind: string): readonly string[] {
  const jobs = [...new Set(placed.map((one) => one.job))];
  return jobs.flatMap((job) => {
    const those = placed.filter((one) => one.job === job);
    const head = `${job}${those[0]?.isNew === true ? ` (a new record, kind ${kind}; another with --how kind=…)` : ''}: ${count(those.length, 'photo')}`;
    return [head, ...those.map(photoLine)];
  });
}

function photoLine({ photo, caption, why, isThere }: PlacedPhoto): string {
  const { day, time, from } = photo.taken;
  const when = `${day} ${time?.slice(0, 5) ?? ''}`.trim();
  return `  ${photo.name}  ${when} (by the ${from})  ${caption === '' ? '' : `“${caption}”, `}${why}${isThere ? '; copied already, not noted yet' : ''}`;
}

/** As the machine folder will have it; only name and size are looked at. */
function assetOf({ file, photo }: PlacedPhoto): Asset {
  return { file, absolute: photo.absolute, size: photo.size, modified: 0 };
}

async function mayLeaveOut({ undated }: DatedPhotos, work: TakeWork): Promise<boolean> {
  if (undated.length === 0) return true;
  for (const name of undated)
    work.around.terminal.tell(`${name}: neither the camera nor its name says when it was taken`);
  const asks = `${count(undated.length, 'photo has', 'photos have')} no date. What with them?`;
  return (await said(work, { name: 'undated', asks, choices: ['stop', 'leave-out'] })) === 'leave-out';
}

function told(work: TakeWork, words: string, code: ExitCode): ExitCode {
  work.around.terminal.tell(words);
  return code;
}
