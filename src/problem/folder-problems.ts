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

function whole(file: string, code: ProblemCode, severity: Severity, message: string, hint: string): Problem {
  return { code, severity, at: { file, path: [] }, message, hint };
}
