// One PDF to be written: what goes in, what comes back, and the same in a form that another thread can be handed.
import { closeSync, openSync, writeSync } from 'node:fs';
import type { Sheet } from '../build.ts';
import type { Attached } from '../pdf/attach.ts';
import type { Form } from '../pdf/form.ts';

export interface PhotoFile {
  readonly path: string;
  readonly width: number;
  readonly height: number;
}

export interface PrintTask {
  readonly sheet: Sheet;
  /** Where the PDF goes. */
  readonly path: string;
  /** Where the photos lie that the sheet names, by their names in it. */
  readonly photos: ReadonlyMap<string, PhotoFile>;
  readonly attach: readonly Attached[];
}

export interface Printed {
  readonly pages: number;
  /** Characters that no typeface of ours has. */
  readonly missingCharacters: readonly string[];
}

export async function printTask({ sheet, path, photos, attach }: PrintTask): Promise<Printed> {
  return writePrint(sheet, path, (file) => photos.get(file), { attach });
}

/** Where a photo lies, and its size in pixels. */
export type PhotoPath = (file: string) => PhotoFile | undefined;

/** Writes one PDF to a path. The printer is loaded when the first PDF is wanted. */
export async function writePrint(
  sheet: Sheet,
  path: string,
  photo: PhotoPath,
  more: { readonly attach?: readonly Attached[]; readonly form?: Form } = {},
): Promise<Printed> {
  const { writePdf } = await import('../pdf/write-pdf.ts');
  const file = openSync(path, 'w');
  try {
    return await writePdf(sheet, { out: (chunk) => writeWhole(file, chunk), photo, ...more });
  } finally {
    closeSync(file);
  }
}

function writeWhole(file: number, chunk: Uint8Array): void {
  let at = 0;
  while (at < chunk.length) at += writeSync(file, chunk, at);
}
