// What the page of the next test says to a set of outcomes: the same computation as on paper, in words.
import { causeOdds } from '../calc/faults/cause-odds.ts';
import { contradictions } from '../calc/faults/contradictions.ts';
import { partsOf, weigh } from '../calc/faults/evidence.ts';
import { nextTests, saysTurned } from '../calc/faults/next-tests.ts';
import { refParts } from '../calc/faults/odds-table.ts';
import type { BenchData, BenchTest } from './next-test-data.ts';

export interface BenchAnswer {
  /** Pairs that cannot both be so; nothing else is said then. */
  readonly impossible: readonly string[];
  readonly stops: readonly string[];
  readonly groups: readonly {
    readonly group: string;
    readonly causes: readonly {
      readonly name: string;
      readonly word: string;
      readonly why: string;
      readonly cure: string;
    }[];
  }[];
  readonly looks: readonly BenchTest[];
  readonly next: readonly BenchTest[];
  readonly held: readonly { readonly name: string; readonly by: string }[];
  /** What the machine is too far apart for, with what is off. */
  readonly apart: readonly { readonly name: string; readonly off: string }[];
  /** Hold points that the engine is past and the records do not prove. */
  readonly behind: readonly string[];
}

const mostCauses = 3;
const mostTests = 5;
const mostLooks = 3;
/** Odds below which a cause is not named, and from which one is that nothing speaks for. */
const leastToName = 0.1;
const possible = 0.2;

/** The answer to the outcomes chosen on the page. */
export function answer(data: BenchData, seen: readonly string[]): BenchAnswer {
  const words = (ref: string): string =>
    ref
      .split(' + ')
      .map((one) => wordsOf(data, one))
      .join(' + ');
  const impossible = contradictions(data.table, seen).map(([one, other]) => `${words(one)} — and — ${words(other)}`);
  const none = { impossible, stops: [], groups: [], looks: [], next: [], held: [], apart: [], behind: [] };
  if (impossible.length > 0) return none;
  const evidence = weigh(data.table, seen);
  const now = seen.filter((ref) => !data.seen.includes(ref));
  const ranked = nextTests(evidence, data.table.runs || saysTurned(data.table, now));
  const tests = new Map(data.tests.map((test) => [test.id, test]));
  const named = (ids: readonly { readonly id: string }[]): readonly BenchTest[] =>
    ids.flatMap(({ id }) => tests.get(id) ?? []);
  const odds = causeOdds(evidence).filter(({ now }) => now >= leastToName);
  const groups = [...new Set(data.causes.map(({ group }) => group))].map((group) => {
    const mine = new Map(data.causes.filter((cause) => cause.group === group).map((cause) => [cause.id, cause]));
    const some = odds.filter(({ id }) => mine.has(id));
    const raised = some.filter(({ now: after, before }) => after > before);
    const silentOnes = evidence.speaks ? some.filter((one) => one.now >= possible).slice(0, 1) : some;
    const causes = (raised.length > 0 ? raised : silentOnes).slice(0, mostCauses).flatMap(({ id, word }) => {
      const cause = mine.get(id);
      const speaking = partsOf(evidence, id).filter(({ times }) => times > 1);
      const why = speaking.map(({ from }) => words(from)).join('; ');
      return cause === undefined ? [] : [{ name: cause.name, word, why, cure: cause.cure }];
    });
    return { group, causes, raised: raised.length > 0 };
  });
  return {
    impossible,
    stops: seen.flatMap((ref) => stopOf(data, ref)),
    groups: groups.filter(({ causes }) => causes.length > 0).sort((a, b) => Number(b.raised) - Number(a.raised)),
    looks: named(ranked.looks).slice(0, mostLooks),
    next: named(ranked.next).slice(0, mostTests),
    behind: ranked.behind.map(([point = '']) => point),
    apart: ranked.apart.slice(0, mostTests).map(({ id, apart }) => ({ name: tests.get(id)?.short ?? id, off: apart })),
    held: ranked.held
      .slice(0, mostTests)
      .map(({ id, held }) => ({ name: tests.get(id)?.short ?? id, by: held[0] ?? '' })),
  };
}

function outcomeIn(data: BenchData, ref: string) {
  const { test: id, outcome } = refParts(ref);
  const test = data.tests.find((one) => one.id === id);
  return { test, outcome: test?.outcomes.find((one) => one.id === outcome) };
}

/** What was seen, in words: `spark: thin`. */
export function wordsOf(data: BenchData, ref: string): string {
  const { test, outcome } = outcomeIn(data, ref);
  const name = test?.short ?? ref;
  const words = outcome?.words ?? 'told nothing';
  // An outcome that names its test already is enough, as on the sheet.
  return words.toLowerCase().startsWith(name.toLowerCase()) ? words : `${name}: ${words}`;
}

function stopOf(data: BenchData, ref: string): readonly string[] {
  const { outcome } = outcomeIn(data, ref);
  return outcome === undefined || outcome.stop === '' ? [] : [`${wordsOf(data, ref)}: ${outcome.stop}.`];
}
