// The PDFs of a binder: what would come out the same is taken over, the rest is written piece by piece.
import { closeSync, openSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { noteFile, pathFor, takeOver, type Aside } from '../cache/aside.ts';
import { hashOf } from '../cache/hash.ts';
import type { PrintMark } from '../cache/manifest.ts';
import type { Sheet } from '../build.ts';
import type { MadePhoto } from '../photos/photo-work.ts';

export interface PrintWork {
  readonly aside: Aside;
  readonly sheets: readonly Sheet[];
  readonly photos: ReadonlyMap<string, MadePhoto>;
  readonly program: string;
  readonly progress: (done: number, title: string) => void;
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

/** Writes or takes over the PDF of every sheet. */
export async function writePrints(work: PrintWork): Promise<Prints> {
  const known = new Map((work.aside.last?.manifest.prints ?? []).map((mark) => [mark.file, mark]));
  const marks: PrintMark[] = [];
  const missing: { sheet: string; characters: readonly string[] }[] = [];
  for (const [index, sheet] of work.sheets.entries()) {
    const file = printFile(sheet);
    const key = printKey(sheet, work);
    const before = known.get(file);
    if (before?.key === key && takeOver(work.aside, file)) {
      marks.push(before);
      continue;
    }
    work.progress(index, sheet.title);
    const written = await writePrint(sheet, pathFor(work.aside, file), (photo) => photoIn(work, photo));
    noteFile(work.aside, file);
    // A sheet with a character missing is written again next time, so that it is said again.
    marks.push({ file, key: written.missingCharacters.length === 0 ? key : '', pages: written.pages });
    if (written.missingCharacters.length > 0)
      missing.push({ sheet: sheet.title, characters: written.missingCharacters });
  }
  return { marks, missing };
}

/** Where a photo lies, and its size in pixels. */
export type PhotoPath = (file: string) => { path: string; width: number; height: number } | undefined;

/** Writes one PDF to a path. The printer is loaded when the first PDF is wanted. */
export async function writePrint(
  sheet: Sheet,
  path: string,
  photo: PhotoPath,
): Promise<{ readonly pages: number; readonly missingCharacters: readonly string[] }> {
  const { writePdf } = await import('../pdf/write-pdf.ts');
  const file = openSync(path, 'w');
  try {
    return await writePdf(sheet, { out: (chunk) => writeWhole(file, chunk), photo });
  } finally {
    closeSync(file);
  }
}

function writeWhole(file: number, chunk: Uint8Array): void {
  let at = 0;
  while (at < chunk.length) at += writeSync(file, chunk, at);
}

function photoIn(work: PrintWork, file: string): ReturnType<PhotoPath> {
  const made = work.photos.get(file);
  if (made === undefined) return undefined;
  return { path: join(work.aside.folder, made.large), width: made.width, height: made.height };
}

/** Everything that a PDF is made from: the program, the sheet, and the photos that the sheet names. */
function printKey(sheet: Sheet, work: PrintWork): string {
  const text = JSON.stringify(sheet);
  const photos = [...work.photos.values()].filter((photo) => text.includes(JSON.stringify(photo.file)));
  return hashOf([work.program, text, ...photos.map((photo) => photo.key)].join('\n'));
}
