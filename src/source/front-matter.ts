// Front matter is what stands between two lines `---` at the very top of a file.
import type { ProblemCode } from '../problem/codes.ts';
import type { Problem } from '../problem/problem.ts';
import { betweenFences } from './slow-splitter.ts';

/** `yaml` is the text between the fences and `yamlLine` the line on which it begins; `body` begins on `bodyLine`. */
export interface Split {
  readonly yaml: string;
  readonly yamlLine: number;
  readonly body: string;
  readonly bodyLine: number;
}

const fence = /\n---[^\n]*\n?/u;

/** Splits cleaned text, or says why it has no front matter. */
export function splitFrontMatter(text: string, file: string): Split | Problem {
  const refused = refusal(text, file);
  if (refused !== undefined) return refused;
  const close = fence.exec(text);
  const end = close?.index ?? text.length;
  const head = text.slice(0, end + (close?.[0].length ?? 0));
  // gray-matter agrees on a plain head (a property test holds it to that) but costs a quarter of reading a record.
  const yaml = head.startsWith('---\n') ? head.slice(4, end + 1) : betweenFences(head);
  return { yaml, yamlLine: 2, body: text.slice(head.length), bodyLine: linesOf(head) };
}

/** The number of the line after a text that ends in a newline. */
function linesOf(text: string): number {
  let lines = 1;
  for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) lines += 1;
  return lines;
}

function refusal(text: string, file: string): Problem | undefined {
  const say = (code: ProblemCode, line: number, message: string, hint: string): Problem => ({
    code,
    severity: 'problem',
    at: { file, path: [], line, column: 1 },
    message,
    hint,
  });
  const firstLine = text.slice(0, text.indexOf('\n') < 0 ? text.length : text.indexOf('\n'));
  if (!firstLine.startsWith('---')) {
    const late = /^\s*\n[ \t]*---[ \t]*(?:\n|$)|^[ \t]+---[ \t]*(?:\n|$)/u.test(text);
    if (late) {
      return say(
        'front-matter-late',
        1,
        'There is something before the first `---`, so what follows is not read as keys.',
        'Make `---` the very first line.',
      );
    }
    return say(
      'front-matter-missing',
      1,
      'The file has no front matter: nothing in it can be computed with.',
      'Begin the file with a line `---`, then keys, then another line `---`.',
    );
  }
  const language = firstLine.slice(3).trim();
  if (language !== '' && !/^ya?ml$/iu.test(language)) {
    return say(
      'front-matter-language',
      1,
      `The first line asks for another language than YAML (${language.slice(0, 20)}); it is not read and never run.`,
      'Make the first line `---` and nothing else.',
    );
  }
  const close = fence.exec(text);
  if (close === null) {
    return say(
      'front-matter-open',
      1,
      'The front matter is opened and never closed.',
      'Put a line `---` after the last key.',
    );
  }
  if (close[0].trim() !== '---') {
    const line = text.slice(0, close.index).split('\n').length + 1;
    return say(
      'front-matter-fence',
      line,
      'A line begins with `---` and goes on; it would end the front matter here.',
      'Write `---` alone to close, or put the text in quotes under its key.',
    );
  }
  return undefined;
}
