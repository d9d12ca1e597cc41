// A file of answers: one blank a line, `chain-slack//found: 24 mm`, as `--list` writes it; what begins with # is not read.
import type { Answer } from '../../entry/answer.ts';
import type { Blank } from '../../entry/blank.ts';
import { promptFor } from './prompt.ts';
import { sidesOf } from './sides-said.ts';

/** Every blank with what is asked above it; what the record says already stands behind it. */
export function answersList(blanks: readonly Blank[], job: string): readonly string[] {
  return blanks.flatMap((blank) => [
    `# ${promptFor(blank, undefined).replace(/: $/u, '')}`,
    ...(blank.caution === undefined ? [] : [`# ${blank.caution.grade} ${blank.caution.text}`]),
    `${nameOf(blank.id, job)}:${blank.given === undefined ? '' : ` ${blank.given}`}`,
  ]);
}

function nameOf(id: string, job: string): string {
  return id.startsWith(`${job}/`) ? id.slice(job.length + 1) : id;
}

/** The answers of a file; lines that name no blank are given back with their number. Notes are `<blank>/note`. */
export function answersOf(
  text: string,
  blanks: readonly Blank[],
  job: string,
): { readonly answers: readonly Answer[]; readonly strange: readonly string[] } {
  const names = blanks.map(({ id }) => ({ id, name: nameOf(id, job) }));
  const unprinted = ['odometer', 'time', 'state'].map((field) => ({
    id: `${job}/foot/${field}`,
    name: `foot/${field}`,
  }));
  const all = [...names, ...unprinted].flatMap((one) => [one, { id: `${one.id}/note`, name: `${one.name}/note` }]);
  // The longest name that a line begins with is meant: a part may be called like the beginning of another.
  const sorted = all.toSorted((a, b) => b.name.length - a.name.length);
  const answers: Answer[] = [];
  const strange: string[] = [];
  for (const [index, line] of text
    .replace(/^\uFEFF/u, '')
    .split(/\r\n|\r|\n/u)
    .entries()) {
    const words = line.trim();
    if (words === '' || words.startsWith('#')) continue;
    const found = sorted.find(({ name }) => words.startsWith(`${name}:`));
    if (found === undefined) strange.push(`line ${String(index + 1)}: ${words.slice(0, 60)}`);
    else answers.push(...said(found.id, words.slice(found.name.length + 1).trim(), blanks));
  }
  return { answers, strange };
}

/** One line may say both sides of a reading, `0.50 > 0.35`. */
function said(id: string, value: string, blanks: readonly Blank[]): readonly Answer[] {
  const left = blanks.find((blank) => blank.id === id.replace(/\/found$/u, '/left'));
  return left === undefined || left.id === id || !value.includes('>')
    ? [{ blank: id, value }]
    : sidesOf({ id }, left, value);
}

/** Answers as lines of such a file. */
export function answerLines(answers: readonly Answer[], job: string): string {
  return answers.map(({ blank, value }) => `${nameOf(blank, job)}: ${value}\n`).join('');
}
