// What can be wrong with a folder and its files before any of them is read.
import type { ProblemCode } from './codes.ts';
import type { Problem, Severity } from './problem.ts';

export function notAMachine(path: string): Problem {
  return whole(
    path,
    'not-a-machine-folder',
    'problem',
    'This is not a machine folder: there is no machine.yaml in it, nor in the folders inside it.',
    'Give the folder that holds machine.yaml, or a folder of such folders.',
  );
}
export function linkNotFollowed(file: string): Problem {
  return whole(
    file,
    'link-not-followed',
    'problem',
    'This is a symbolic link, which could lead out of the machine folder; it is not followed.',
    'Copy the file or folder itself to this place.',
  );
}
export function notOpened(file: string): Problem {
  return whole(file, 'file-not-opened', 'problem', 'This cannot be opened.', 'Look whether you may read it.');
}
export function notAFile(file: string): Problem {
  return whole(
    file,
    'file-not-opened',
    'problem',
    'This is a pipe, a device or the like, not a file; it is not opened.',
    'Put a file of text in its place.',
  );
}
export function folderTooDeep(file: string): Problem {
  return whole(
    file,
    'file-not-opened',
    'problem',
    'This folder lies deeper than folders of a machine may; what is in it is not read.',
    'Move it further up.',
  );
}
export function strayFile(file: string): Problem {
  return whole(
    file,
    'file-not-read',
    'query',
    'This file is not read, because of its name.',
    'Records are jobs/*.md, the maker’s data maker/*.yaml, and machine.yaml, instruments.yaml, workshop.yaml and story.md.',
  );
}
export function conflictCopy(file: string, of: string): Problem {
  return whole(
    file,
    'conflict-copy',
    'problem',
    `By its name this is a second version of ${of}, left where two people or two computers wrote at once; it is not read.`,
    `Put what is true of the two into ${of}, then move this one out of the folder.`,
  );
}
export function formerState(file: string, of: string): Problem {
  return whole(
    file,
    'file-not-read',
    'query',
    `By its name this is a former state of ${of}, which an editor or a merge left; it is not read.`,
    'Move it out of the folder when you do not want it any more.',
  );
}
export function nameNotEverywhere(file: string, why: string): Problem {
  return whole(
    file,
    'name-not-everywhere',
    'query',
    `Not every system can keep a file of this name: ${why}.`,
    'Give it another name, and change it where records name it.',
  );
}
export function namesFallTogether(file: string, other: string): Problem {
  const same = file.normalize('NFC') === other.normalize('NFC');
  const message = same
    ? 'There are two files of this name, whose accents are only stored in two ways; they cannot be told apart.'
    : `On many systems this is the same name as ${other}: one of the two would be lost there.`;
  const hint = same
    ? 'Give one of the two another name.'
    : 'Give one another name, and change it where records name it.';
  return whole(file.normalize('NFC'), 'names-fall-together', 'problem', message, hint);
}

function whole(file: string, code: ProblemCode, severity: Severity, message: string, hint: string): Problem {
  return { code, severity, at: { file, path: [] }, message, hint };
}
