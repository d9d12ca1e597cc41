// Answers held against the blanks as they are now: what is new, what was there already, and where record and answers part.
import type { Blank } from '../../entry/blank.ts';
import { cleanAnswer } from '../../entry/clean-answer.ts';

/** One field as it came back. */
export interface CameBack {
  readonly blank: string;
  readonly value: string;
  /** What stood in it when it was handed out; empty where nothing did. */
  readonly before: string;
}
export interface Met {
  readonly blank: Blank;
  readonly value: string;
}
export interface Matched {
  /** Written where the record says what it said when the form was made. */
  readonly fresh: readonly Met[];
  /** Written where the record says something else by now. */
  readonly parted: readonly Met[];
  /** Taken out of the form; a record is not emptied by that. */
  readonly emptied: readonly Blank[];
  /** Written for a blank that the sheets do not have. */
  readonly unknown: readonly CameBack[];
  /** Said by the record already. */
  readonly already: number;
  /** Blanks of the sheets that did not come back at all. */
  readonly missing: readonly Blank[];
}

/** Every field goes to one of these, but those that nobody touched. `saysMore` tells an answer from the same one in other digits. */
export function matchAnswers(
  blanks: readonly Blank[],
  came: readonly CameBack[],
  saysMore: (met: Met) => boolean,
): Matched {
  const byId = new Map(blanks.map((blank) => [blank.id, blank]));
  const fresh: Met[] = [];
  const parted: Met[] = [];
  const emptied: Blank[] = [];
  const unknown: CameBack[] = [];
  let already = 0;
  for (const one of came) {
    const value = cleanAnswer(one.value);
    const before = cleanAnswer(one.before);
    if (value === before) continue;
    const blank = byId.get(one.blank);
    const now = cleanAnswer(blank?.given ?? '');
    if (blank === undefined) unknown.push(one);
    else if (value === '') emptied.push(blank);
    else if (value === now) already += 1;
    else if (now === before) fresh.push({ blank, value });
    else if (saysMore({ blank, value })) parted.push({ blank, value });
    else already += 1;
  }
  const back = new Set(came.map(({ blank }) => blank));
  const missing = blanks.filter(({ id }) => !back.has(id));
  return { fresh, parted, emptied, unknown: unknown.filter(({ value }) => value.trim() !== ''), already, missing };
}
