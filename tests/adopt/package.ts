// Packages for tests of adopting: written with the program's own lists, around whatever records a test wants in them.
import { mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { adoptCommand, type AdoptOptions } from '../../src/command/adopt-command.ts';
import { answersBeforehand, type Asker } from '../../src/command/asker.ts';
import type { ExitCode } from '../../src/command/exit-codes.ts';
import { sha256 } from '../../src/command/fingerprint-of.ts';
import { writeTagFiles } from '../../src/command/handover/tag-files.ts';
import { keptTerminal } from '../../src/command/workshop/kept-terminal.ts';
import { fingerprintFile, infoKeys, recordsFolder } from '../../src/handover/package-layout.ts';
import { fingerprintList } from '../../src/records/fingerprint.ts';
import { isRecord } from '../../src/source/machine-files.ts';
import { machineFile } from '../evenings/evening.ts';

export const wagtail: Readonly<Record<string, string>> = {
  'machine.yaml': machineFile({
    numbers: '{frame: {stamped: LW125-01234, known by: headstock}, key: {stamped: "?", private: yes}}',
  }),
  'story.md': 'It stood in a barn.\n',
  'jobs/2025-05-01-plug.md':
    '---\ntitle: Plug looked at\ndate: 2025-05-01\nkind: service\nstate: done\nhands: [hand 1]\n---\nSooty.\n',
  'jobs/2025-06-01-wheel.md': '---\ntitle: Rear wheel out\ndate: 2025-06-01\nkind: strip\nstate: planned\n---\n',
};

/** Writes a package whose lists are right. Files that begin with `../` lie beside the machine folder. */
export function writePackage(folder: string, records: Readonly<Record<string, string | Buffer>> = wagtail): string {
  const listed = Object.entries(records)
    .filter(([file]) => isRecord(file.replace(/^\.\.\//u, '')))
    .map(([file, text]) => ({ file, hash: sha256(text) }));
  const list = fingerprintList(listed);
  for (const [file, text] of Object.entries({ ...records, [fingerprintFile]: list })) {
    const path = join(folder, recordsFolder, 'wagtail', file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  writeTagFiles({
    folder,
    payload: filesBelow(join(folder, 'data')).map((file) => `data/${file}`),
    readMe: 'Read me.\n',
    info: [
      [infoKeys.machineFolder, 'wagtail'],
      [infoKeys.fingerprint, sha256(list)],
    ],
  });
  return folder;
}

/** Every file below a folder, sorted. */
export function filesBelow(folder: string): readonly string[] {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return names.filter((name) => statSync(join(folder, name)).isFile()).toSorted();
}

/** Every file with its bytes. */
export function contents(folder: string): Readonly<Record<string, string>> {
  return Object.fromEntries(filesBelow(folder).map((file) => [file, readFileSync(join(folder, file), 'latin1')]));
}

export interface Adopted {
  readonly code: ExitCode;
  readonly said: string;
}

/** Runs `adopt` in a folder. */
export async function adopt(
  here: string,
  path: string,
  more: {
    readonly into?: string;
    readonly options?: AdoptOptions;
    readonly asker?: Asker;
    readonly step?: (name: string) => void;
  } = {},
): Promise<Adopted> {
  const { terminal, lines } = keptTerminal(false);
  const around = { terminal, folder: here, clock: () => new Date('2026-11-20T12:00:00') };
  const asker = more.asker ?? answersBeforehand([]);
  const code = await adoptCommand(path, more.into, more.options ?? {}, around, asker, more.step);
  return { code, said: lines.map(({ line }) => line).join('\n') };
}
