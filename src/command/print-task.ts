// One PDF to be written: what goes in, what comes back, and the same in a form that another thread can be handed.
import { closeSync, openSync, writeFileSync, writeSync } from 'node:fs';
import type { Sheet } from '../build.ts';
import type { Attached } from '../pdf/attach.ts';
import type { Form } from '../pdf/form.ts';
import type { PlacedPage } from '../layout/placed.ts';
import { firstSide } from '../preview/first-side.ts';

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
  /** Where the small picture of its first side goes. */
  readonly preview: string;
}

export interface Printed {
  readonly pages: number;
  /** Characters that no typeface of ours has. */
  readonly missingCharacters: readonly string[];
}

export async function printTask({ sheet, path, photos, attach, preview }: PrintTask): Promise<Printed> {
  return writePrint(sheet, path, (file) => photos.get(file), { attach, preview });
}

/** Where a photo lies, and its size in pixels. */
export type PhotoPath = (file: string) => PhotoFile | undefined;

/** Writes one PDF to a path. The printer is loaded when the first PDF is wanted. */
export async function writePrint(
  sheet: Sheet,
  path: string,
  photo: PhotoPath,
  more: { readonly attach?: readonly Attached[]; readonly form?: Form; readonly preview?: string } = {},
): Promise<Printed> {
  const { writePdf } = await import('../pdf/write-pdf.ts');
  const { preview, ...options } = more;
  const file = openSync(path, 'w');
  try {
    const first = (page: PlacedPage, pages: number): void => {
      if (preview !== undefined) writeFileSync(preview, firstSide(page, pages));
    };
    return await writePdf(sheet, { out: (chunk) => writeWhole(file, chunk), photo, first, ...options });
  } finally {
    closeSync(file);
  }
}

function writeWhole(file: number, chunk: Uint8Array): void {
  let at = 0;
  while (at < chunk.length) at += writeSync(file, chunk, at);
}
