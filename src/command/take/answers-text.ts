// The text that a telephone gives, read back: see bench/phone-answers.ts for what it looks like. A message may stand before and after it.
import type { CameBack } from './match-answers.ts';

export type AnswersRead =
  | { readonly carries: string; readonly answers: readonly CameBack[] }
  /** Why it cannot be taken, and the line where that shows, from 1. */
  | { readonly line: number; readonly why: string };

/** First line of the answers. */
export const answersBegin = /^\W*Splitpin answers\s*$/mu;

const headLine = /^([a-z]+): ?(.*)$/u;
const answerLine = /^(was )?\[([^\]]+)\] (.*)$/u;
const endLine = /^End of (\d+) answers?\.$/u;

/** Reads the answers; a text that was cut or wrapped on its way is refused as a whole. */
export function readAnswersText(text: string): AnswersRead {
  const lines = text
    .replace(/^\uFEFF/u, '')
    .split(/\r\n|\r|\n/u)
    .map(unquoted);
  const begin = lines.findIndex((line) => line === 'Splitpin answers');
  if (begin < 0) return { line: 1, why: 'the answers do not begin anywhere' };
  const carries: Record<string, string> = {};
  const before = new Map<string, string>();
  const answers: CameBack[] = [];
  for (let at = begin + 1; at < lines.length; at += 1) {
    const line = lines[at] ?? '';
    const end = endLine.exec(line);
    if (end !== null) return ended(Number(end[1]), at, carries, answers);
    if (line === '' || line.startsWith('#')) continue;
    const answer = answerLine.exec(line);
    const [, was, id = '', value = ''] = answer ?? [];
    const head = headLine.exec(line);
    if (answer === null && head !== null && answers.length === 0 && before.size === 0) {
      carries[head[1] ?? ''] = head[2] ?? '';
      continue;
    }
    if (answer === null)
      return { line: at + 1, why: 'this line is no answer: the text was changed or broken on its way' };
    const blank = id.replaceAll('%5D', ']').replaceAll('%25', '%');
    if (was === undefined) answers.push({ blank, value, before: before.get(blank) ?? '' });
    else before.set(blank, value);
  }
  return { line: lines.length, why: 'the end is missing: the text was cut on its way' };
}

function ended(
  count: number,
  at: number,
  carries: Readonly<Record<string, string>>,
  answers: readonly CameBack[],
): AnswersRead {
  if (count !== answers.length)
    return { line: at + 1, why: 'there are more or fewer answers than were written: the text was changed on its way' };
  return { carries: JSON.stringify(carries), answers };
}

/** A message may have been quoted, and lines padded. */
function unquoted(line: string): string {
  return line
    .replace(/^(?:\s*>)+ ?/u, '')
    .replaceAll('\u00a0', ' ')
    .trim();
}
