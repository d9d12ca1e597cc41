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
export function linkOutside(file: string): Problem {
  return whole(
    file,
    'link-outside',
    'problem',
    'This is a symbolic link that leads out of the machine folder; it is not followed.',
    'Copy the file itself into the folder.',
  );
}
export function linkBroken(file: string): Problem {
  return whole(
    file,
    'link-outside',
    'problem',
    'This is a symbolic link that leads nowhere.',
    'Copy the file itself into the folder, or remove the link.',
  );
}
export function fileTooLarge(file: string): Problem {
  return whole(
    file,
    'record-too-large',
    'problem',
    'This file is over 1 MB, which is more than anybody writes; it was not read.',
    'Keep pictures in photos/ and papers in documents/, and name them from the record.',
  );
}
export function notText(file: string, encoding: boolean): Problem {
  return whole(
    file,
    'file-not-text',
    'problem',
    encoding ? 'This file is not UTF-8 text.' : 'This file cannot be opened.',
    encoding ? 'Save it as UTF-8 in your editor.' : 'Look whether you may read it.',
  );
}
export function strayFile(file: string): Problem {
  return whole(
    file,
    'file-not-read',
    'query',
    'This file is not read, because of its name.',
    'Records are jobs/*.md, the maker’s data maker/*.yaml, and machine.yaml, instruments.yaml and story.md.',
  );
}

function whole(file: string, code: ProblemCode, severity: Severity, message: string, hint: string): Problem {
  return { code, severity, at: { file, path: [] }, message, hint };
}
