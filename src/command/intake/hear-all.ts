// All questions of an intake, answered by options, by a file of answers, at a terminal or through a pipe.
import { parse, YAMLParseError } from 'yaml';
import type { Asker } from '../asker.ts';
import type { Facts, Heard } from './heard.ts';
import { questions, type Question } from './questions.ts';

/** What is left for later is said like this, or with an empty line. */
const later = new Set(['', '?', 'later']);

export type AllHeard =
  | { readonly ok: true; readonly facts: Facts; readonly later: readonly string[] }
  | { readonly ok: false; readonly why: readonly string[] };

/**
 * Goes through the questions in their order. `given` holds answers by the question's id; what is not in it is asked, unless `ask` is
 * undefined. At a terminal a wrong answer is asked again; anywhere else it ends the intake.
 */
export async function hearAll(
  given: Readonly<Record<string, string>>,
  asker: Asker | undefined,
  tell: (line: string) => void,
): Promise<AllHeard> {
  const facts: Record<string, string> = {};
  const open: string[] = [];
  const wrong: string[] = [];
  for (const [index, question] of questions.entries()) {
    const one = await hearOne(question, index, given[question.id], asker, tell);
    if (one === 'later') open.push(question.asks);
    else if (one.ok) Object.assign(facts, one.facts);
    else wrong.push(`${question.id}: ${one.why} For example: ${question.example}.`);
  }
  return wrong.length > 0 ? { ok: false, why: wrong } : { ok: true, facts, later: open };
}

async function hearOne(
  question: Question,
  index: number,
  given: string | undefined,
  asker: Asker | undefined,
  tell: (line: string) => void,
): Promise<Heard | 'later'> {
  if (given !== undefined) return hear(question, given);
  if (asker === undefined) return 'later';
  const prompt = `${String(index + 1).padStart(2)} of ${String(questions.length)}  ${question.asks}, as ${question.example}: `;
  for (;;) {
    const line = await asker.ask(prompt);
    const found = line === undefined ? 'later' : hear(question, line);
    if (found === 'later' || found.ok || !asker.atTerminal) return found;
    tell('   ' + found.why + ' Enter alone leaves it for later.');
  }
}

function hear(question: Question, answer: string): Heard | 'later' {
  const words = answer.normalize('NFC').trim();
  return later.has(words.toLowerCase()) ? 'later' : question.hear(words);
}

/** Answers from a file, `make: Larkmoor` a line, by the ids of the questions; `name` is the machine's own. */
export function answersIn(text: string): AllAnswers {
  const known = new Set(['name', ...questions.map((question) => question.id)]);
  try {
    const read: unknown = parse(text.replace(/^\ufeff/u, ''), { schema: 'failsafe', maxAliasCount: 0 });
    if (typeof read !== 'object' || read === null || Array.isArray(read))
      return { ok: false, why: 'Write one answer a line, as `make: Larkmoor`.' };
    const answers = Object.entries(read).map(([key, value]: [string, unknown]) => [key, value] as const);
    const strange = answers.find(([key, value]) => !known.has(key) || (typeof value !== 'string' && value !== null));
    if (strange !== undefined)
      return { ok: false, why: `“${strange[0]}” is not one of the questions: ${[...known].join(', ')}.` };
    return {
      ok: true,
      answers: Object.fromEntries(answers.map(([key, value]) => [key, typeof value === 'string' ? value : ''])),
    };
  } catch (cause) {
    if (!(cause instanceof YAMLParseError)) throw cause;
    return { ok: false, why: cause.message };
  }
}

type AllAnswers =
  { readonly ok: true; readonly answers: Readonly<Record<string, string>> } | Extract<Heard, { readonly ok: false }>;

/** For whoever answers nothing at all. */
export const nothingSaid = 'Nothing was answered: nothing was made.';
