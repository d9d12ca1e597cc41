// The PDFs of a binder: what would come out the same is taken over, the rest is written, on several cores where that pays.
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { noteFile, pathFor, takeOver, type Aside } from '../cache/aside.ts';
import { hashOf } from '../cache/hash.ts';
import type { PrintMark } from '../cache/manifest.ts';
import type { Sheet } from '../build.ts';
import { photoFiles } from '../sheet/photo-files.ts';
import type { MadePhoto } from '../photos/photo-work.ts';
import type { Carried } from './carried-data.ts';
import type { PhotoFile } from './print-task.ts';
import { printAll, threadsFor, type Sized } from './print-threads.ts';

export interface PrintWork {
  readonly aside: Aside;
  readonly sheets: readonly Sheet[];
  readonly photos: ReadonlyMap<string, MadePhoto>;
  readonly program: string;
  readonly carried: Carried;
  readonly progress: (done: number, title: string) => void;
  /** Threads to print with; without it, as many as pay. The files are the same with any number. */
  readonly threads?: number;
}

export interface Prints {
  readonly marks: readonly PrintMark[];
  /** Characters that no typeface of ours has, by sheet. */
  readonly missing: readonly { readonly sheet: string; readonly characters: readonly string[] }[];
}

/** File of a sheet's PDF below the output folder. */
export function printFile(sheet: Sheet): string {
  return `print/${sheet.id}.pdf`;
}

/** File of the small picture of its first side, beside it. */
export function previewFile(sheet: Sheet): string {
  return `print/${sheet.id}.svg`;
}

interface Asked extends Sized {
  readonly file: string;
  readonly key: string;
}

/** Writes or takes over the PDF of every sheet. */
export async function writePrints(work: PrintWork): Promise<Prints> {
  const known = new Map((work.aside.last?.manifest.prints ?? []).map((mark) => [mark.file, mark]));
  const marks = new Map<string, PrintMark>();
  const asked: Asked[] = [];
  for (const sheet of work.sheets) {
    const one = askedOf(sheet, work);
    const before = known.get(one.file);
    const same = before?.key === one.key;
    if (same && takeOver(work.aside, one.file) && takeOver(work.aside, previewFile(sheet))) marks.set(one.file, before);
    else asked.push(one);
  }
  const threads =
    work.threads ??
    threadsFor(
      asked.map((one) => one.size),
      availableParallelism(),
    );
  const printed = await printAll(asked, threads, (task, done) => work.progress(done, task.sheet.title));
  const missing: { sheet: string; characters: readonly string[] }[] = [];
  for (const [index, { pages, missingCharacters }] of printed.entries()) {
    const one = asked[index];
    if (one === undefined) continue;
    noteFile(work.aside, one.file);
    noteFile(work.aside, previewFile(one.task.sheet));
    // A sheet with a character missing is written again next time, so that it is said again.
    marks.set(one.file, { file: one.file, key: missingCharacters.length === 0 ? one.key : '', pages });
    if (missingCharacters.length > 0) missing.push({ sheet: one.task.sheet.title, characters: missingCharacters });
  }
  return { marks: work.sheets.flatMap((sheet) => marks.get(printFile(sheet)) ?? []), missing };
}

/** A PDF as it is asked for; its key is everything that it is made from: the program, the sheet, its photos, what it carries. */
function askedOf(sheet: Sheet, work: PrintWork): Asked {
  const file = printFile(sheet);
  const text = JSON.stringify(sheet);
  const shown = new Set(photoFiles(sheet.blocks));
  const photos = [...work.photos.values()].filter(({ file: name }) => shown.has(name));
  const attach = work.carried(sheet);
  const parts = [work.program, text, ...photos.map((photo) => photo.key), ...attach.map(({ bytes }) => hashOf(bytes))];
  const places = new Map(photos.map((photo) => [photo.file, placeOf(photo, work.aside)]));
  const preview = pathFor(work.aside, previewFile(sheet));
  const task = { sheet, path: pathFor(work.aside, file), photos: places, attach, preview };
  return { file, key: hashOf(parts.join('\n')), size: text.length, task };
}

function placeOf({ large, width, height }: MadePhoto, aside: Aside): PhotoFile {
  return { path: join(aside.folder, large), width, height };
}
