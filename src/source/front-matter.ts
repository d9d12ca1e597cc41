// Front matter is what stands between two lines `---` at the very top. gray-matter only splits; nothing in a record is ever run.
import matter from 'gray-matter';
import type { ProblemCode } from '../problem/codes.ts';
import type { Problem } from '../problem/problem.ts';

/** `yaml` is the text between the fences and `yamlLine` the line on which it begins; `body` begins on `bodyLine`. */
export interface Split {
  readonly yaml: string;
  readonly yamlLine: number;
  readonly body: string;
  readonly bodyLine: number;
}

/** gray-matter runs `---js` front matter unless told not to; any of its engines being reached is a bug of ours. */
const never = {
  parse: (): never => {
    throw new Error('a front matter engine was reached that must never run');
  },
};

/** Splits cleaned text, or says why it has no front matter. */
export function splitFrontMatter(text: string, file: string): Split | Problem {
  const refused = refusal(text, file);
  if (refused !== undefined) return refused;
  let yaml = '';
  const keep = {
    parse: (between: string): object => {
      yaml = between;
      return {};
    },
  };
  // The options object is not only for the engines: called without one, gray-matter hands out one shared object per text.
  const split = matter(text, {
    language: 'yaml',
    engines: {
      yaml: keep,
      yml: keep,
      js: never,
      javascript: never,
      json: never,
      coffee: never,
      toml: never,
      cson: never,
    },
  });
  const after = text.length - split.content.length;
  // Spaces behind the closing fence are left at the head of what gray-matter takes for the body.
  const body = text[after - 1] === '\n' ? split.content : split.content.replace(/^[ \t]*\n?/u, '');
  const front = text.slice(0, text.length - body.length);
  return { yaml: yaml.replace(/^\n/u, ''), yamlLine: 2, body, bodyLine: front.split('\n').length };
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
  const close = /\n---[^\n]*/u.exec(text);
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
