// What several jobs use up of one thing, added up: two fillings of oil are one can, four split pins are one bag.
import { printQuantity } from '../../figure/print.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import { inUnit, of } from '../../quantity/quantity.ts';
import type { Job } from '../../records/model.ts';
import { plainName } from '../names.ts';
import { impliedText } from '../plan/way-back-text.ts';
import type { Implied } from './implied.ts';

/** One thing, and every job that uses it up. */
export interface UsedTogether {
  readonly key: string;
  readonly text: string;
  readonly machines: readonly string[];
  readonly jobs: readonly Job[];
  /** Something that is off now asks for it too. */
  readonly forWhatIsOff: boolean;
}

type Asked = Implied & { readonly machine: string };

/** Fluids of one name and grade go out of one can, whatever machine they are for; pieces are of their machine. */
function identity({ key, fluid, machine, what }: Asked): string {
  return fluid?.grade === undefined ? `${machine}|${key}|${what}` : `${key}|${plainName(fluid.grade)}`;
}

/** What nobody counts (grease, a rag) is named once. */
function piecesText(first: Asked, all: readonly Asked[]): string {
  const counts = all.map(({ count }) => count ?? 1);
  const counted = all.some(({ count }) => count !== undefined);
  return impliedText(counted ? { ...first, count: counts.reduce((a, b) => a + b, 0) } : first);
}

/** Decimals that a unit so many times as large needs more. */
function finerBy(times: number): number {
  return Math.round(Math.log10(times));
}

/** Each filling by its own book; only what has a quantity is in the sum, and the rest is named. */
function fluidText(first: Asked, all: readonly Asked[]): string {
  const known = all.flatMap(({ fluid }) => fluid?.quantity ?? []);
  const [one] = known;
  if (all.length === 1 || one === undefined) return impliedText(first);
  const equal = known.every(({ quantity }) => quantity === one.quantity);
  const sum = known.reduce((total, { quantity }) => total + inUnit(quantity, one.unit), 0);
  // As fine as the finest of them: 650 ml and 0.8 l are 1.450 l, and not 1.5.
  const decimals = Math.max(0, ...known.map((each) => each.decimals + finerBy(one.unit.factor / each.unit.factor)));
  const together = printQuantity(of(sum, one.unit), one.unit, decimals);
  const missing = all.length - known.length;
  return [
    equal ? `${impliedText(first)} each` : [first.fluid?.name, first.fluid?.grade].filter(Boolean).join(', '),
    `${formatDecimal(known.length, 0)} fillings, ${together} together`,
    ...(missing === 0 ? [] : [`and ${formatDecimal(missing, 0)} with no quantity in the book`]),
  ].join('; ');
}

/** In the order in which they are first asked for; linear. */
export function usedTogether(implied: readonly Asked[]): readonly UsedTogether[] {
  const groups = new Map<string, [Asked, ...Asked[]]>();
  for (const one of implied) {
    const group = groups.get(identity(one));
    if (group === undefined) groups.set(identity(one), [one]);
    else group.push(one);
  }
  return [...groups.values()].map((all) => {
    const [first] = all;
    return {
      key: first.key,
      text: first.fluid === undefined ? piecesText(first, all) : fluidText(first, all),
      machines: [...new Set(all.map(({ machine }) => machine))],
      jobs: all.flatMap(({ job }) => job ?? []),
      forWhatIsOff: all.some(({ job }) => job === undefined),
    };
  });
}
