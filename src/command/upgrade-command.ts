// `upgrade`: records of an earlier form are rewritten as this program writes them, with a copy of each as it was.
import { mkdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { findMachines, readMachineFolder, type MachineFolder } from '../disk.ts';
import { upgradeRecord, withFirstComment } from '../entry/upgrade-record.ts';
import { readRecords } from '../records/read.ts';
import type { SourceFile } from '../source/files.ts';
import type { Asker } from './asker.ts';
import { count } from './count.ts';
import { editorSchemas, schemaLine } from './editor-schemas.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { reportFolderProblems, reportProblems } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import { wouldBe } from './take/would-be.ts';
import { freeBackup, putSchemas } from './upgrade-files.ts';
import { writeFault } from './write-fault.ts';
import { writeWhole } from './write-whole.ts';

export interface UpgradeOptions {
  readonly today?: string;
  readonly yes?: boolean;
  /** Schemas for editors too, and the line in each record that names its own. */
  readonly editor?: boolean;
}

interface Rewrite {
  readonly before: SourceFile;
  readonly text: string;
  readonly says: string;
}

/** Runs `splitpin upgrade`. */
export async function upgradeCommand(
  folder: string,
  options: UpgradeOptions,
  around: Surroundings,
  asker: Asker,
): Promise<ExitCode> {
  const found = findMachines(resolve(around.folder, folder));
  if (found.value.length === 0) return reportFolderProblems(found.problems, around.terminal);
  let worst: ExitCode = exitCodes.fine;
  try {
    for (const machine of found.value) {
      const code = await upgradeMachine(machine, options, around, asker);
      if (code > worst) worst = code;
    }
  } finally {
    asker.close();
  }
  return worst;
}

async function upgradeMachine(
  machine: string,
  options: UpgradeOptions,
  around: Surroundings,
  asker: Asker,
): Promise<ExitCode> {
  const { terminal } = around;
  const read = readMachineFolder(machine).value;
  if (read === undefined) return exitCodes.problems;
  const cannot = read.files.flatMap((file) => {
    const upgrade = upgradeRecord(file);
    return upgrade.kind === 'cannot' ? [`${file.file}: ${upgrade.why}`] : [];
  });
  for (const line of cannot) terminal.tell(line);
  if (cannot.length > 0) return nothingWritten(around, exitCodes.problems);
  const came = cameWithIt(read);
  const rewrites = read.files.filter(({ file }) => !came.has(file)).flatMap((file) => rewriteOf(file, options));
  const left = read.files.filter((file) => came.has(file.file) && rewriteOf(file, options).length > 0);
  if (left.length > 0) {
    const names = left.map(({ file }) => file).join(', ');
    terminal.say(`From the former owner, and left as they came (${count(left.length, 'record')}): ${names}`);
  }
  if (rewrites.length === 0 && options.editor !== true) {
    const own = left.length === 0 ? 'every record' : 'every record of yours';
    terminal.say(`${read.name}: ${own} is as this program writes it.`);
    return exitCodes.fine;
  }
  for (const { before, says } of rewrites) terminal.say(`${before.file}: ${says}`);
  const day = dayFor(options.today, around);
  const after = wouldBe(
    machine,
    day,
    rewrites.map(({ before, text }) => ({ file: before.file, text })),
  );
  if (after !== undefined && after.problems.length > 0) {
    await reportProblems(after.problems, after.textOf, terminal);
    return nothingWritten(around, exitCodes.problems);
  }
  if (rewrites.length > 0 && !(await agreed(rewrites.length, options, around, asker)))
    return nothingWritten(around, exitCodes.fine);
  return write(machine, rewrites, options, day, around);
}

/** Records that adopted.yaml holds to what they were: rewritten they would be told as changed. */
function cameWithIt({ files, assets }: MachineFolder): ReadonlySet<string> {
  const mark = files.filter(({ file }) => file === 'adopted.yaml' || file === 'machine.yaml');
  return new Set(readRecords(mark, assets).value?.adopted?.records.map(({ file }) => file.normalize('NFC')) ?? []);
}

function rewriteOf(before: SourceFile, options: UpgradeOptions): readonly Rewrite[] {
  const upgrade = upgradeRecord(before);
  const first = upgrade.kind === 'changed' ? upgrade : { text: before.text, says: '' };
  const comment = options.editor === true ? schemaLine(before.file) : undefined;
  const marked = comment === undefined ? undefined : withFirstComment({ file: before.file, text: first.text }, comment);
  const says = [first.says, marked === undefined ? '' : 'the line that names its schema is added'].filter(
    (part) => part !== '',
  );
  return says.length === 0 ? [] : [{ before, text: marked ?? first.text, says: says.join('; ') }];
}

async function agreed(
  many: number,
  options: UpgradeOptions,
  { terminal }: Surroundings,
  asker: Asker,
): Promise<boolean> {
  if (options.yes === true) return true;
  const line = await asker.ask(`Rewrite ${count(many, 'file')}, each copied first? (yes or no): `);
  if (line === undefined && !asker.atTerminal) terminal.tell('Write them with --yes.');
  return line !== undefined && /^y(?:es)?$/iu.test(line.trim());
}

function write(
  machine: string,
  rewrites: readonly Rewrite[],
  options: UpgradeOptions,
  day: string,
  around: Surroundings,
): ExitCode {
  const { terminal } = around;
  try {
    if (options.editor === true) {
      putSchemas(machine, editorSchemas());
      terminal.say('Schemas for editors: ' + Object.keys(editorSchemas()).join(', '));
    }
    if (rewrites.length === 0) return exitCodes.fine;
    const backup = freeBackup(machine, day);
    for (const { before } of rewrites) {
      const copy = join(machine, backup, before.file);
      mkdirSync(dirname(copy), { recursive: true });
      writeWhole(copy, before.text, undefined);
    }
    const missed = rewrites.filter(
      ({ before, text }) => writeWhole(join(machine, before.file), text, before.text) !== 'written',
    );
    for (const { before } of missed) terminal.tell(`${before.file} was changed meanwhile and was not touched.`);
    terminal.say(`${count(rewrites.length - missed.length, 'file')} rewritten; as they were: ${backup}`);
    return missed.length === 0 ? exitCodes.fine : exitCodes.problems;
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    terminal.tell(told);
    return exitCodes.writing;
  }
}

function nothingWritten({ terminal }: Surroundings, code: ExitCode): ExitCode {
  terminal.tell('Nothing was written.');
  return code;
}
