// A workshop of invented machines on a disk, for tests that build it.
import { mkdtempSync, readFileSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import type { ExitCode } from '../../src/command/exit-codes.ts';
import { keptTerminal } from '../../src/command/workshop/kept-terminal.ts';
import type { BuildJob } from '../../src/command/workshop/machine-build.ts';
import { buildWorkshop } from '../../src/command/workshop/workshop-build.ts';
import { findMachines } from '../../src/disk.ts';
import { put } from '../command/small-machine.ts';
import { machineFile } from '../evenings/evening.ts';

/** One record of a day; keys that a test does not speak of are the usual ones. */
export function record(title: string, date: string, lines = ''): string {
  return `---\ntitle: ${title}\ndate: ${date}\nkind: repair\nstate: done\nhands: [owner]\n${lines}\n---\n`;
}

export type Machines = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** machine.yaml of a machine with a name and a frame number of its own. */
export function named(name: string, frame: string): string {
  return machineFile({ name, model: name, numbers: `{frame: {stamped: ${frame}, known by: headstock}}` });
}

/** Writes the workshop `shed`: machines by folder, and what is shared beside them. */
export function shed(machines: Machines, shared: Readonly<Record<string, string>> = {}): string {
  const folder = join(realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-workshop-'))), 'shed');
  put(folder, shared);
  for (const [name, files] of Object.entries(machines)) put(join(folder, name), files);
  return folder;
}

export interface Built {
  readonly code: ExitCode;
  readonly said: string;
  readonly out: string;
}

/** One machine’s build, pages only, by a program that does not change while a test runs. */
export function jobOf(machine: string, out: string): BuildJob {
  return { machine, out, today: '2026-06-01', options: { siteOnly: true }, program: 'one', choices: 'one' };
}

/** Builds it beside itself, in this thread. */
export async function buildShed(folder: string, out = join(dirname(folder), 'out/shed')): Promise<Built> {
  const { terminal, lines } = keptTerminal(false);
  const jobs = findMachines(folder).value.map((machine) => jobOf(machine, join(out, basename(machine))));
  const code = await buildWorkshop({ folder, out, jobs, threads: 0 }, terminal);
  return { code, said: lines.map(({ line }) => line).join('\n'), out };
}

/** Every file below a folder, with its bytes or without. */
export function filesIn(
  folder: string,
  wanted: (file: string) => boolean = () => true,
): Readonly<Record<string, string>> {
  const all = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (name) => wanted(name) && statSync(join(folder, name)).isFile(),
  );
  return Object.fromEntries(all.toSorted().map((name) => [name, readFileSync(join(folder, name), 'latin1')]));
}

/** The text of a page, tags taken away, one space for every space. */
export function pageText(path: string): string {
  return readFileSync(path, 'utf8')
    .replaceAll(/<[^>]+>/gu, ' ')
    .replaceAll(/[\s\u00a0\u2009\u202f]+/gu, ' ');
}
