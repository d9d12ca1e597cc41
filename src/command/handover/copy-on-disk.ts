// The buyer's copy on the disk: records as texts, pictures without their notes, the list that the fingerprint is made of.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { BuyersCopy } from '../../handover/buyers-copy.ts';
import { fingerprintFile } from '../../handover/package-layout.ts';
import { cleanPicture } from '../../photos/clean-picture.ts';
import { fingerprintListOf } from '../fingerprint-of.ts';
import type { Terminal } from '../terminal.ts';

/** Writes the copy into a folder that is not there yet; instruments of the workshop go beside it, as they lay. */
export async function writeCopy(copy: BuyersCopy, folder: string, terminal: Terminal): Promise<void> {
  for (const { file, text } of [...copy.shared, ...copy.files]) put(join(folder, file), text);
  for (const [index, { asset, cover }] of copy.pictures.entries()) {
    terminal.progress(`Photos: ${String(index + 1)} of ${String(copy.pictures.length)}`);
    const parts = cover.map(({ left, top, width, height }) => ({
      left: left.quantity,
      top: top.quantity,
      width: width.quantity,
      height: height.quantity,
    }));
    await cleanPicture(asset.absolute, join(folder, asset.file), parts);
  }
  put(join(folder, fingerprintFile), fingerprintListOf([...copy.shared, ...copy.files]));
}

function put(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text, { flag: 'wx' });
}
