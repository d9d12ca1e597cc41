// All questions of an intake, answered by options, by a file of answers, at a terminal or through a pipe.
import { parse, YAMLParseError } from 'yaml';
import type { Asker } from '../asker.ts';
import type { Facts, Heard } from './heard.ts';
import { questions, type Question } from './questions.ts';

/** What is left for later is said like this, or with an empty line. */
const later = new Set(['', '?', 'later', 'unknown', 'not known', 'don’t know', "don't know"]);

/** What was said and gives no key, in the words it was said in. */
export interface SaidBesides {
  readonly question: string;
  readonly words: string;
  /** Why it was not taken; absent where it was understood. */
  readonly why?: string;
}

export type AllHeard =
  | {
      readonly ok: true;
      readonly facts: Facts;
      readonly later: readonly string[];
      readonly besides: readonly SaidBesides[];
    }
  | { readonly ok: false; readonly why: readonly string[] };

/**
 * Goes through the questions in their order. `given` holds answers by the question's id; what is not in it is asked, unless `ask` is
 * undefined. A wrong answer that was given beforehand stops it before anything is asked. At a terminal a wrong answer is asked again;
 * through a pipe it is put by in its words, what was understood of it counts, and the rest goes on.
 */
export async function hearAll(
  given: Readonly<Record<string, string>>,
  asker: Asker | undefined,
  tell: (line: string) => void,
): Promise<AllHeard> {
  const why = wrongBeforehand(given);
  if (why.length > 0) return { ok: false, why };
  const facts: Record<string, string> = {};
  const later: string[] = [];
  const besides: SaidBesides[] = [];
  for (const [index, question] of questions.entries()) {
    const { words, found } = await hearOne(question, index, given[question.id], asker, tell);
    if (found === 'later') {
      later.push(question.asks);
      continue;
    }
    Object.assign(facts, found.facts);
    if (!found.ok)
      besides.push({ question: question.id, words, why: `${found.why} For example: ${question.example}.` });
    else if (found.words !== undefined) besides.push({ question: question.id, words: found.words });
  }
  return { ok: true, facts, later, besides };
}

function wrongBeforehand(given: Readonly<Record<string, string>>): readonly string[] {
  return questions.flatMap((question) => {
    const answer = given[question.id];
    const found = answer === undefined ? 'later' : hear(question, answer);
    return found === 'later' || found.ok ? [] : [`${question.id}: ${found.why} For example: ${question.example}.`];
  });
}

interface One {
  readonly words: string;
  readonly found: Heard | 'later';
}

async function hearOne(
  question: Question,
  index: number,
  given: string | undefined,
  asker: Asker | undefined,
  tell: (line: string) => void,
): Promise<One> {
  if (given !== undefined) return { words: given, found: hear(question, given) };
  if (asker === undefined) return { words: '', found: 'later' };
  const prompt = `${String(index + 1).padStart(2)} of ${String(questions.length)}  ${question.asks}, as ${question.example}: `;
  for (;;) {
    const line = await asker.ask(prompt);
    const found = line === undefined ? 'later' : hear(question, line);
    if (found === 'later' || found.ok || !asker.atTerminal) return { words: line?.trim() ?? '', found };
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
  | { readonly ok: true; readonly answers: Readonly<Record<string, string>> }
  | { readonly ok: false; readonly why: string };

/** For whoever answers nothing at all. */
export const nothingSaid = 'Nothing was answered: nothing was made.';
