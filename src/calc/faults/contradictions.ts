// Sets of observations that cannot all be so: two outcomes of one test, or two that the tables say cannot stand together.
import { byText } from './evidence.ts';
import { outcomeOf, refParts, silent, type OddsTable } from './odds-table.ts';

/** Pairs that cannot both be so, in a fixed order whatever the order of the observations. */
export function contradictions(table: OddsTable, refs: readonly string[]): readonly (readonly [string, string])[] {
  const seen = [...new Set(refs)].filter((ref) => refParts(ref).outcome !== silent).sort(byText);
  return seen.flatMap((one, index) =>
    seen.slice(index + 1).flatMap((other): readonly (readonly [string, string])[] => {
      const sameTest = refParts(one).test === refParts(other).test;
      return sameTest || excludesOther(table, one, other) || excludesOther(table, other, one) ? [[one, other]] : [];
    }),
  );
}

function excludesOther(table: OddsTable, one: string, other: string): boolean {
  return outcomeOf(table, one)?.notWith.includes(other) === true;
}

/** Whether an observation fits with all of these. */
export function fits(table: OddsTable, ref: string, refs: readonly string[]): boolean {
  const { test } = refParts(ref);
  return refs.every((other) => {
    if (refParts(other).outcome === silent || other === ref) return true;
    return refParts(other).test !== test && !excludesOther(table, ref, other) && !excludesOther(table, other, ref);
  });
}
