// Which columns stand side by side and which go into a second tier below them, where the paper is narrow.
import { gutter, leading, readRow, workRow } from '../scale.ts';
import type { Tier } from './columns.ts';
import type { ColumnNeed } from './prepare.ts';

/** On paper as wide as this, columns that fit side by side stay so. */
const wide = 400;

/** One tier is easier to read: a second must make the table lower by more than this. */
const dearer = 1.03;

/** Ways of setting the columns in tiers, by their numbers; always at least one. */
export function possibleTiers(
  needs: readonly ColumnNeed[],
  labels: readonly number[],
  width: number,
  secondTier: number | undefined,
): readonly (readonly (readonly number[])[])[] {
  const all = needs.map((_need, index) => index);
  const fitsInOne = roomOf(all, needs, []) <= width + 0.01;
  if (fitsInOne && (width >= wide || secondTier !== undefined)) return [[all]];
  const splits = all
    .slice(1)
    .map((from) => [all.slice(0, from), all.slice(from)] as const)
    .filter(
      ([first, second]) => roomOf(first, needs, []) <= width + 0.01 && roomOf(second, needs, labels) <= width + 0.01,
    );
  const asked = splits.filter(([, second]) => second[0] === secondTier);
  if (asked.length > 0) return asked;
  const whole = fitsInOne ? [[all]] : [];
  const found = [...whole, ...splits];
  return found.length > 0 ? found : [packed(all, needs, labels, width)];
}

function roomOf(columns: readonly number[], needs: readonly ColumnNeed[], labels: readonly number[]): number {
  return columns.reduce((sum, index) => sum + (needs[index]?.least ?? 0) + (labels[index] ?? 0) + gutter, -gutter);
}

/** As many columns in every tier as fit at their narrowest. */
function packed(
  all: readonly number[],
  needs: readonly ColumnNeed[],
  labels: readonly number[],
  width: number,
): readonly (readonly number[])[] {
  const tiers: number[][] = [[]];
  for (const index of all) {
    const tier = tiers.at(-1) ?? [];
    if (tier.length === 0 || roomOf([...tier, index], needs, tiers.length > 1 ? labels : []) <= width + 0.01)
      tier.push(index);
    else tiers.push([index]);
  }
  return tiers;
}

/** Height of the first rows, as far as the lengths of their texts tell it. */
export function estimatedHeight(tiers: readonly Tier[], needs: readonly ColumnNeed[], work: boolean): number {
  const rows = needs.reduce((most, need) => Math.max(most, need.texts.length), 0);
  let height = 0;
  for (let row = 0; row < rows; row += 1) {
    for (const [at, tier] of tiers.entries()) height += tierEstimate(tier, needs, row, at === 0 && work);
  }
  return tiers.length > 1 ? height * dearer : height;
}

function tierEstimate(tier: Tier, needs: readonly ColumnNeed[], row: number, work: boolean): number {
  const lines = tier.reduce((most, { index, width }) => {
    const text = needs[index]?.texts[row] ?? 0;
    // A column without a word in it may have no width at all.
    return text === 0 ? most : Math.max(most, Math.ceil((text * 1.1) / width));
  }, 0);
  const boxed = tier.some((place) => (needs[place.index]?.boxed ?? false) || (needs[place.index]?.written ?? false));
  const least = work || boxed ? workRow : lines === 0 ? 0 : readRow;
  return Math.max(least, lines * leading + 6);
}
