// The content folder, read once. The compiled program has a module of its own in place of this one (see tools/packed-manual.ts).
import { readContent } from '../build.ts';
import { readContentFolder } from '../disk.ts';

export interface Manual {
  readonly content: ReturnType<typeof readContent>;
  /** Text of a content file, for showing a problem in it. */
  readonly textOf: (file: string) => string | undefined;
}

let known: Manual | undefined;

/** The content with its problems, the same for every machine. */
export function readManual(): Manual {
  if (known !== undefined) return known;
  const files = readContentFolder();
  const texts = new Map(files.map(({ file, text }) => [file, text]));
  known = { content: readContent(files), textOf: (file) => texts.get(file) };
  return known;
}
