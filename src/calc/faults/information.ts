// What a test is expected to tell: how far its outcomes would move the odds, each outcome as often as it is to be expected.
// The model: a set of causes S weighs the product of their odds; together with an outcome o it weighs share(o) times the
// product of what o says of the causes in S. So an outcome is to be expected in proportion to share(o) · Π(1 − p + p·f), the
// chance of a cause after it has the odds times f, and what a test tells of a cause is the mutual information of the two:
// the divergence of its chances after the outcomes from their own mean. Exact for this model, without listing the sets.
// A cause counts the more, the more of what was seen speaks for it.
import { moved, noPull, partsOf, type Evidence } from './evidence.ts';
import { chanceOf } from './cause-odds.ts';
import { fits } from './contradictions.ts';
import { engineRuns, rowsWith, type OddsCause, type OddsOutcome, type OddsTest } from './odds-table.ts';
import { relevance, strengths, surestUnseen } from './weights.ts';

export interface Expected {
  readonly outcome: string;
  /** 0 to 1; the outcomes of a test sum to 1. */
  readonly chance: number;
  /** In nats, weighted by what was seen. */
  readonly tells: number;
}

interface Known {
  /** Cause → odds now. */
  readonly odds: ReadonlyMap<string, number>;
  readonly evidence: Evidence;
  /** What was seen, and that the engine runs where it does: outcomes that cannot be so as well are not expected. */
  readonly seen: readonly string[];
}

/** Odds now, for asking about many tests. */
export function knownFrom(evidence: Evidence, running = false): Known {
  const odds = new Map(evidence.table.causes.map((cause) => [cause.id, questionOf(evidence, cause)]));
  const seen = running ? [...evidence.seen, engineRuns] : [...evidence.seen];
  return { odds, evidence, seen };
}

/** The odds as a question: a cause that nobody has seen is taken for no surer than `surestUnseen`. */
function questionOf(evidence: Evidence, { id, odds }: OddsCause): number {
  const now = odds * (evidence.times.get(id) ?? 1);
  return partsOf(evidence, id).some(({ times }) => times >= strengths.shows) ? now : Math.min(now, surestUnseen);
}

/** What is to be expected of a test; the sum of chance times tells is what it is worth. */
export function expectedOf(known: Known, test: OddsTest): readonly Expected[] {
  const open = test.outcomes.filter((outcome) => fits(known.evidence.table, `${test.id}=${outcome.id}`, known.seen));
  const each = open.map((outcome) => afterOutcome(known, test, outcome));
  const whole = each.reduce((sum, { share }) => sum + share, 0);
  if (whole === 0) return [];
  const touched = new Set(each.flatMap(({ chances }) => [...chances.keys()]));
  const chanceAfter = (one: After, cause: string): number =>
    one.chances.get(cause) ?? chanceOf(known.odds.get(cause) ?? 0);
  const tells = each.map(() => 0);
  for (const cause of touched) {
    const mean = each.reduce((sum, one) => sum + (one.share / whole) * chanceAfter(one, cause), 0);
    const weight = weightOf(known.evidence, cause);
    for (const [index, one] of each.entries())
      tells[index] = (tells[index] ?? 0) + weight * divergence(chanceAfter(one, cause), mean);
  }
  return each.map(({ outcome, share }, index) => ({ outcome, chance: share / whole, tells: tells[index] ?? 0 }));
}

interface After {
  readonly outcome: string;
  /** Weight of the outcome, not yet divided by that of all. */
  readonly share: number;
  /** Chances of the causes that it speaks of. */
  readonly chances: ReadonlyMap<string, number>;
}

function afterOutcome(known: Known, test: OddsTest, outcome: OddsOutcome): After {
  let { share } = outcome;
  const chances = new Map<string, number>();
  for (const [cause, factor] of factorsOf(known.evidence, test, outcome)) {
    const odds = known.odds.get(cause) ?? 0;
    if (odds === 0) continue;
    share *= 1 - chanceOf(odds) + chanceOf(odds) * factor;
    chances.set(cause, chanceOf(odds * factor));
  }
  return { outcome: outcome.id, share, chances };
}

/** What the outcome would multiply the odds of each cause by, over what was seen already. */
export function factorsOf(evidence: Evidence, test: OddsTest, outcome: OddsOutcome): ReadonlyMap<string, number> {
  const factors = new Map<string, number>();
  const already = evidence.pulls.get(test.looksAt);
  for (const { cause, times } of outcome.says) {
    const by = moved(already?.get(cause) ?? noPull, times);
    if (by !== undefined) factors.set(cause, (factors.get(cause) ?? 1) * by);
  }
  const ref = `${test.id}=${outcome.id}`;
  for (const index of rowsWith(evidence.table, ref)) {
    const row = evidence.table.together[index];
    if (row === undefined || evidence.rows.has(index)) continue;
    if (!row.saw.every((one) => one === ref || evidence.seen.has(one))) continue;
    for (const { cause, times } of row.says) factors.set(cause, (factors.get(cause) ?? 1) * times);
  }
  return factors;
}

/** How much the question of a cause counts, by what was seen. */
function weightOf(evidence: Evidence, cause: string): number {
  if (!evidence.speaks) return 1;
  const times = evidence.times.get(cause) ?? 1;
  if (times > 1) return Math.min(relevance.most, (Math.log(times) / Math.log(strengths.stronglyFor)) ** 2);
  return times === 1 ? relevance.silent : relevance.against;
}

/** Of one chance from another, in nats. */
function divergence(after: number, before: number): number {
  const part = (a: number, b: number): number => (a === 0 ? 0 : a * Math.log(a / b));
  return part(after, before) + part(1 - after, 1 - before);
}
