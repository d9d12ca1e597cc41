// The lists around a package (RFC 8493), written last: what is in it, and a hash of each file.
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { infoText, oxumText, type InfoLine } from '../../handover/package-info.ts';
import { declarationFile, infoFile, manifestFile, readMeFile, tagManifestFile } from '../../handover/package-layout.ts';
import { manifestText } from '../../handover/package-manifest.ts';
import { sha256 } from '../fingerprint-of.ts';

export interface TagWork {
  /** The package. */
  readonly folder: string;
  /** Every file below `data/`, as paths from the package. */
  readonly payload: readonly string[];
  readonly readMe: string;
  readonly info: readonly InfoLine[];
}

/** Writes all of them. */
export function writeTagFiles({ folder, payload, readMe, info }: TagWork): void {
  const sizes = payload.map((file) => statSync(join(folder, file)).size);
  const listed = (files: readonly string[]): string =>
    manifestText(files.map((path) => ({ path, hash: sha256(readFileSync(join(folder, path))) })));
  const put = (file: string, text: string): void => writeFileSync(join(folder, file), text, { flag: 'wx' });
  put(declarationFile, 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n');
  put(readMeFile, readMe);
  put(infoFile, infoText([...info, ['Payload-Oxum', oxumText(sizes)]]));
  put(manifestFile, listed(payload));
  put(tagManifestFile, listed([declarationFile, infoFile, manifestFile, readMeFile]));
}
