// Is a package whole? What was changed, is missing or was added, each by its name; pure: the hashes are made elsewhere.
import { fingerprintList, type HashedRecord } from '../records/fingerprint.ts';
import { isRecord } from '../source/machine-files.ts';
import { sha256 } from '../source/sha256.ts';
import { infoValue, oxumText, readInfo } from './package-info.ts';
import {
  declarationFile,
  infoFile,
  infoKeys,
  manifestFile,
  payloadFolder,
  recordsFolder,
  fingerprintFile,
  tagManifestFile,
} from './package-layout.ts';
import { readManifest, type ManifestLine } from './package-manifest.ts';
import { wrongPath } from './package-paths.ts';

/** A file of a package as it was found. */
export interface FoundFile {
  readonly path: string;
  readonly size: number;
  /** SHA-256, hexadecimal, in small letters; empty where its bytes could not be read. */
  readonly hash: string;
}

export interface PackageFault {
  readonly kind: 'changed' | 'missing' | 'added' | 'broken';
  readonly path: string;
  /** What is the matter, where the kind does not say it all. */
  readonly more?: string;
}

export interface CheckedPackage {
  readonly faults: readonly PackageFault[];
  /** As bag-info.txt gives them. */
  readonly fingerprint?: string;
  readonly machine?: string;
  /** Name of the machine folder below the records. */
  readonly machineFolder?: string;
}

/** Everything that does not agree; `textOf` gives a tag file, or undefined where there is none. */
export function checkPackage(
  files: readonly FoundFile[],
  textOf: (path: string) => string | undefined,
): CheckedPackage {
  const declared = declaration(textOf(declarationFile));
  if (declared.length > 0) return { faults: declared };
  const info = readInfo(textOf(infoFile) ?? '');
  const payload = files.filter(({ path }) => path.startsWith(`${payloadFolder}/`));
  const tags = files.filter(({ path }) => !path.startsWith(`${payloadFolder}/`) && path !== tagManifestFile);
  const fingerprint = infoValue(info, infoKeys.fingerprint);
  const machine = infoValue(info, infoKeys.machine);
  const machineFolder = infoValue(info, infoKeys.machineFolder);
  const faults = [
    ...against(payload, manifestFile, textOf(manifestFile)),
    ...against(tags, tagManifestFile, textOf(tagManifestFile)),
    ...sumOf(payload, infoValue(info, 'Payload-Oxum')),
    ...printOf(payload, fingerprint, machineFolder),
  ];
  return {
    faults,
    ...(fingerprint === undefined ? {} : { fingerprint }),
    ...(machine === undefined ? {} : { machine }),
    ...(machineFolder === undefined ? {} : { machineFolder }),
  };
}

function declaration(text: string | undefined): readonly PackageFault[] {
  if (text === undefined) return [{ kind: 'missing', path: declarationFile, more: 'this is no package' }];
  const lines = readInfo(text);
  const version = infoValue(lines, 'BagIt-Version');
  const encoding = infoValue(lines, 'Tag-File-Character-Encoding');
  if (version === undefined || !/^(?:0\.9[67]|1\.\d+)$/u.test(version))
    return [{ kind: 'broken', path: declarationFile, more: 'it names no form of package that is read here' }];
  if (encoding?.toUpperCase() !== 'UTF-8')
    return [{ kind: 'broken', path: declarationFile, more: 'its texts are not UTF-8' }];
  return [];
}

/** Files against a manifest, both ways. */
function against(files: readonly FoundFile[], manifest: string, text: string | undefined): readonly PackageFault[] {
  if (text === undefined) return [{ kind: 'missing', path: manifest }];
  const { lines, wrong } = readManifest(text);
  const listed = new Map(lines.map((line) => [line.path.normalize('NFC'), line]));
  const found = new Map(files.map((file) => [file.path.normalize('NFC'), file]));
  const faults: PackageFault[] = wrong.map((line) => ({
    kind: 'broken',
    path: manifest,
    more: `line ${String(line)} is no hash and path`,
  }));
  if (lines.length > listed.size) faults.push({ kind: 'broken', path: manifest, more: 'it names a file twice' });
  for (const line of listed.values()) {
    const fault = ofLine(line, found.get(line.path.normalize('NFC')), manifest);
    if (fault !== undefined) faults.push(fault);
  }
  for (const [path] of found) if (!listed.has(path)) faults.push({ kind: 'added', path });
  return faults;
}

function ofLine({ path, hash }: ManifestLine, file: FoundFile | undefined, manifest: string): PackageFault | undefined {
  const wrong = wrongPath(path);
  if (wrong !== undefined) return { kind: 'broken', path: manifest, more: `“${path}” ${wrong}` };
  if (file === undefined) return { kind: 'missing', path };
  return file.hash === hash ? undefined : { kind: 'changed', path };
}

function sumOf(payload: readonly FoundFile[], said: string | undefined): readonly PackageFault[] {
  const is = oxumText(payload.map(({ size }) => size));
  if (said === undefined || said === is) return [];
  return [{ kind: 'broken', path: infoFile, more: `it says ${said} (bytes and files), there are ${is}` }];
}

/**
 * The fingerprint is the hash of the list of records, so whoever wrote new manifests over changed records has to change it too, and then
 * it is not the one on paper. It is made anew from the records themselves: the list that lies beside them could be the old one.
 */
function printOf(
  payload: readonly FoundFile[],
  said: string | undefined,
  folder: string | undefined,
): readonly PackageFault[] {
  if (said === undefined || folder === undefined) return [];
  const records = payload.flatMap(({ path, hash }): readonly HashedRecord[] => {
    if (path === `${recordsFolder}/instruments.yaml`) return [{ file: '../instruments.yaml', hash }];
    const start = `${recordsFolder}/${folder}/`;
    const file = path.startsWith(start) ? path.slice(start.length) : '';
    return isRecord(file) ? [{ file, hash }] : [];
  });
  const list = `${recordsFolder}/${folder}/${fingerprintFile}`;
  const found = [sha256(fingerprintList(records)), payload.find(({ path }) => path === list)?.hash ?? ''];
  if (found.every((is) => is === said)) return [];
  return [{ kind: 'broken', path: infoFile, more: 'the fingerprint in it is not that of the records' }];
}
