// A site on disk, as it would be handed over: written into a folder of its own for checks and for the browser.
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { readAsset, siteAssets } from '../../src/render/assets.ts';

export interface WrittenFile {
  readonly file: string;
  readonly content: string | Uint8Array;
}

/** Writes files and the site's assets into a new folder and returns its path. */
export function writeSite(files: readonly WrittenFile[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'splitpin site '));
  const assets = siteAssets().map((asset) => ({ file: asset.file, content: readAsset(asset) }));
  for (const { file, content } of [...files, ...assets]) {
    const path = join(folder, file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  }
  return folder;
}
