// Photos that came from a former owner stay as they came: each is read in pieces and compared with the hash that adopted.yaml keeps.
import { createHash } from 'node:crypto';
import { closeSync, openSync, readSync } from 'node:fs';
import type { Problem } from '../../problem/problem.ts';
import type { Adopted } from '../../records/model.ts';
import type { Asset } from '../../source/files.ts';

/** A problem for each photo that is not what it was. One that is gone is told with the records; one that cannot be read, by its picture. */
export function changedPhotos(adopted: Adopted | undefined, assets: readonly Asset[]): readonly Problem[] {
  if (adopted === undefined || adopted.photos.length === 0) return [];
  const there = new Map(assets.filter(({ link }) => link !== true).map((asset) => [asset.file, asset]));
  return adopted.photos.flatMap(({ file, hash }): readonly Problem[] => {
    const asset = there.get(file.normalize('NFC'));
    const is = asset === undefined ? undefined : hashOfFile(asset.absolute);
    if (asset === undefined || is === undefined || is === hash) return [];
    const message = 'This photo came with the machine from its former owner, and is not what it was.';
    const hint = 'Put it back from the package, and keep another picture under a name of its own.';
    return [{ code: 'adopted-photo-changed', severity: 'problem', at: { file: asset.file, path: [] }, message, hint }];
  });
}

const piece = 1 << 20;

function hashOfFile(path: string): string | undefined {
  let file: number | undefined;
  try {
    file = openSync(path, 'r');
    const hash = createHash('sha256');
    const bytes = Buffer.allocUnsafe(piece);
    for (let got = readSync(file, bytes); got > 0; got = readSync(file, bytes)) hash.update(bytes.subarray(0, got));
    return hash.digest('hex');
  } catch {
    return undefined;
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
