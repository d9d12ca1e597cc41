// What a copy for the next owner should not carry: names, addresses, telephone numbers, e-mail and key numbers in open text.
import type { Place, Problem } from '../../problem/problem.ts';
import { keptWith } from '../../records/kept-with.ts';
import { keptFlat } from '../../records/runs.ts';
import type { Job, Machine } from '../../records/model.ts';
import type { OpenText } from '../open-text.ts';
import { allWordsOfJob, handsNamed, openTexts, wordsOfJob } from '../open-text.ts';
import { isAPersonsName, mayHoldPrivateWords, privateWords } from '../private-words.ts';
import type { Ground } from '../ground.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Fewer characters than this are found in any text. */
const fewestCharacters = 4;

interface Said {
  readonly at: Place;
  readonly hint: string;
  /** In how many more places it stands. */
  more: number;
}

/** The place of a word in a running text is its line and column; elsewhere it is the value that holds it. */
function placeOf({ at, text, line }: OpenText, index: number): Place {
  if (line === undefined) return at;
  const before = text.slice(0, index).split('\n');
  return { ...at, line: line + before.length - 1, column: (before.at(-1)?.length ?? 0) + 1 };
}

function hintFor({ hand, at }: OpenText): string {
  if (hand === true) return 'say what they are (`helper`), or write initials';
  return at.path.length === 0 ? 'leave it out of the words' : 'say it without, or write `{value: …, private: yes}`';
}

interface ClosedNumber {
  readonly gives: string;
  readonly pattern: RegExp;
}

/** Numbers that machine.yaml keeps private, or that open a lock. The same list while the machine is the same, so that what it finds is kept. */
const closedNumbers = keptWith((machine: Machine): readonly ClosedNumber[] =>
  machine.numbers
    .filter((one) => one.private || one.name === 'key')
    .filter(({ stamped }) => stamped.length >= fewestCharacters && !stamped.includes('?'))
    .map(({ name, stamped }) => ({
      gives: `the ${name} number`,
      pattern: new RegExp(
        String.raw`(?<![\p{L}\d])${stamped.replaceAll(/[^\p{L}\d]+/gu, String.raw`[\s-]*`)}(?![\p{L}\d])`,
        'iu',
      ),
    })),
);

/** The records that hold any private word at all; most hold none, and are looked over once. */
const withPrivateWords = keptFlat((job: Job, closed: readonly ClosedNumber[]): readonly Job[] =>
  holdsPrivateWords(job, closed) ? [job] : [],
);

function holdsPrivateWords(job: Job, closed: readonly ClosedNumber[]): boolean {
  const all = allWordsOfJob(job);
  if (closed.some(({ pattern }) => pattern.test(all))) return true;
  return mayHoldPrivateWords(all) && wordsOfJob(job).some(({ text }) => privateWords(text).length > 0);
}

/** Each word once, at its first place, in the order of the records. */
export const privateInOpenText: Look = ({ ground }) => {
  const closed = closedNumbers(ground.records.machine);
  const found = new Map<string, Said>();
  const say = (gives: string, word: string, one: OpenText, index: number): void => {
    const what = `${word}: ${gives}`;
    const known = found.get(what);
    if (known === undefined) found.set(what, { at: placeOf(one, index), hint: hintFor(one), more: 0 });
    else known.more += 1;
  };
  for (const one of openTexts(ground.records, withPrivateWords(ground.all, closed))) {
    for (const word of privateWords(one.text)) say(word.gives, word.text, one, word.index);
    for (const { gives, pattern } of closed) {
      const match = pattern.exec(one.text);
      if (match !== null) say(gives, match[0], one, match.index);
    }
  }
  for (const one of handsNamed(ground.records, ground.all)) {
    if (isAPersonsName(one.text)) say('a name', one.text, one, 0);
  }
  return [...openKey(ground), ...[...found].map(([what, said]) => asked(what, said))];
};

/** The number of a key that is not marked: whoever reads it can have the key cut. */
function openKey({ records: { machine } }: Ground): readonly Problem[] {
  return machine.numbers
    .filter(({ name, stamped, private: kept }) => name === 'key' && !kept && stamped !== '?')
    .map(({ stamped }) =>
      query(
        'private-in-open-text',
        { file: machine.file, path: ['numbers', 'key'] },
        `key number ${stamped} is not marked private: whoever reads it can have the key cut`,
        'write `private: yes` beside it',
      ),
    );
}

function asked(what: string, { at, more, hint }: Said): Problem {
  const elsewhere = more === 0 ? '' : ` (and in ${String(more)} more ${more === 1 ? 'place' : 'places'})`;
  const message = `${what} in open text${elsewhere}; whoever is given the records or the printed history reads it`;
  return query('private-in-open-text', at, message, hint);
}
