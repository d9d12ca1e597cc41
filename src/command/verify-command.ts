// `verify`: is a package what it was when it was made? Every file that was changed, is missing or was added is named.
import { resolve } from 'node:path';
import { checkPackage, type PackageFault } from '../handover/check-package.ts';
import { fingerprintText } from '../records/fingerprint.ts';
import { count } from './count.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { hashedFiles, openPackage, topTexts } from './open-package.ts';
import type { Surroundings } from './surroundings.ts';

/** Runs `splitpin verify`. */
export async function verifyCommand(path: string, around: Surroundings): Promise<ExitCode> {
  const { terminal } = around;
  const opened = await openPackage(resolve(around.folder, path), path);
  if ('wrong' in opened) {
    for (const line of opened.wrong) terminal.tell(line);
    terminal.tell(`${path} was not opened.`);
    return exitCodes.problems;
  }
  try {
    terminal.progress('Reading every file');
    const files = await hashedFiles(opened);
    const texts = await topTexts(opened);
    terminal.progress('');
    const checked = checkPackage(files, (file) => texts.get(file));
    for (const fault of checked.faults) terminal.tell(faultLine(fault));
    if (checked.faults.length > 0) {
      terminal.tell(`${path} is not as it was made: ${count(checked.faults.length, 'thing')} to look at.`);
      return exitCodes.problems;
    }
    terminal.say(`${path}: ${count(files.length, 'file')}, all as their lists say.`);
    if (checked.machine !== undefined) terminal.say(`Machine      ${checked.machine}`);
    if (checked.fingerprint !== undefined) {
      terminal.say(`Fingerprint  ${fingerprintText(checked.fingerprint)}`);
      terminal.say(
        'Compare it with the one on the printed history. The lists inside a package show what was changed by',
      );
      terminal.say(
        'accident; who changes a package on purpose can write new lists, but not what is printed on your paper.',
      );
    }
    return exitCodes.fine;
  } finally {
    opened.close();
  }
}

const words = { changed: 'changed', missing: 'missing', added: 'added  ', broken: 'broken ' } as const;

/** A line of what is wrong: the kind, the file, and more where the kind does not say it all. */
export function faultLine({ kind, path, more }: PackageFault): string {
  return `${words[kind]}  ${path}${more === undefined ? '' : `: ${more}`}`;
}
