// Odds of each cause after what was seen: each its own, several may be so at once; and their strength in words.
import { partsOf, type Evidence, type Part } from './evidence.ts';

export type Word = 'ruled out' | 'unlikely' | 'possible' | 'likely' | 'very likely' | 'almost certain';

export interface CauseOdds {
  readonly id: string;
  /** Before anything was seen. */
  readonly before: number;
  readonly now: number;
  readonly word: Word;
  readonly parts: readonly Part[];
}

/** Least odds of a word; judgement, as all weights of the tables are. */
const words = [
  ['almost certain', 16],
  ['very likely', 4],
  ['likely', 1],
  ['possible', 0.2],
] as const satisfies readonly (readonly [Word, number])[];

/** Odds (1 is as likely as not) in a word. */
export function wordOf(odds: number): Word {
  if (odds === 0) return 'ruled out';
  return words.find(([, least]) => odds >= least)?.[0] ?? 'unlikely';
}

/** All causes: first those that what was seen speaks for, the likeliest first; equal ones in the order of the table. */
export function causeOdds(evidence: Evidence): readonly CauseOdds[] {
  return evidence.table.causes
    .map(({ id, odds }) => {
      const now = odds * (evidence.times.get(id) ?? 1);
      return { id, before: odds, now, word: wordOf(now), parts: partsOf(evidence, id) };
    })
    .sort((a, b) => Number(isRaised(b)) - Number(isRaised(a)) || b.now - a.now);
}

/** The chance that goes with odds. */
export function chanceOf(odds: number): number {
  return odds / (1 + odds);
}

function isRaised({ before, now }: CauseOdds): boolean {
  return now > before;
}
