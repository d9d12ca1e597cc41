// Bought once for several machines: each bears its shares, and the shares come to what was paid, to the penny.
import type { MoneyEntry, Records, SharedPurchase } from '../../records/model.ts';
import { byText } from '../in-order.ts';
import { plainName } from '../names.ts';
import type { CostLine } from './cost-line.ts';

/**
 * Minor units that each machine bears, by its name. What does not divide goes penny by penny to the largest remainders, and
 * where these are equal by the order of the names, so that every machine's binder comes to the same division.
 */
export function sharesOf({ paid, between }: SharedPurchase): ReadonlyMap<string, number> {
  const whole = between.reduce((sum, { shares }) => sum + shares, 0);
  const exact = between.map(({ machine, shares }) => {
    const part = (paid.minor * shares) / whole;
    return { machine, minor: Math.floor(part), rest: part - Math.floor(part) };
  });
  const over = paid.minor - exact.reduce((sum, { minor }) => sum + minor, 0);
  const first = new Set(exact.toSorted((a, b) => b.rest - a.rest || byText(a.machine, b.machine)).slice(0, over));
  return new Map(exact.map((one) => [one.machine, one.minor + (first.has(one) ? 1 : 0)]));
}

/** This machine's part of what the workshop bought. */
export function sharedLines({ machine, workshop }: Records): readonly CostLine[] {
  return (workshop?.shared ?? []).flatMap((one): readonly CostLine[] => {
    const own = [...sharesOf(one)].find(([name]) => plainName(name) === plainName(machine.name));
    if (own === undefined) return [];
    const amount = { minor: own[1], currency: one.paid.currency };
    const entry: MoneyEntry = { kind: 'paid', amount, for: `${one.for}, its share`, group: one.group, at: one.at };
    return [{ day: one.date, entry, group: one.group, amount, sign: 1 }];
  });
}
