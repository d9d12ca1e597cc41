// What a machine stands at once parts have moved: what was paid for it, less what the owner set for those that left, with those that came.
import type { Money } from '../quantity/money.ts';
import { formatMoney, inCurrency } from '../quantity/money-arithmetic.ts';
import { machineNamed, type MovedPart, type OneOfThem } from './beside-others.ts';
import { plainName } from './names.ts';

export interface MovedWorth {
  readonly gone: Money;
  readonly came: Money;
  /** Paid, less what is gone, with what came. */
  readonly left: Money;
  /** Parts that nothing was set for, or in money that no rate is stated for, by name: what is left is not known as long as there is one. */
  readonly notSet: readonly string[];
}

/** Undefined where no part is away or here from elsewhere. A part that came back is where it was. `rates` are the machine’s, into the currency of `paid`. */
export function movedWorth(
  paid: Money,
  moved: readonly MovedPart[],
  rates: Readonly<Record<string, number>>,
): MovedWorth | undefined {
  const gone = new Map<string, MovedPart>();
  const came = new Map<string, MovedPart>();
  for (const one of moved.toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))) {
    const key = plainName(one.part);
    if (one.from !== undefined && !gone.delete(key)) came.set(key, one);
    if (one.to !== undefined && !came.delete(key)) gone.set(key, one);
  }
  if (gone.size + came.size === 0) return undefined;
  const { currency } = paid;
  const notSet: string[] = [];
  const together = (parts: ReadonlyMap<string, MovedPart>): Money => {
    let minor = 0;
    for (const { part, worth } of parts.values()) {
      const own = worth === undefined ? undefined : inCurrency(worth, currency, rates);
      if (own === undefined)
        notSet.push(worth === undefined ? part : `${part} (${formatMoney(worth)}: no rate for ${worth.currency})`);
      minor += own?.minor ?? 0;
    }
    return { minor, currency };
  };
  const [out, here] = [together(gone), together(came)];
  return { gone: out, came: here, left: { minor: paid.minor - out.minor + here.minor, currency }, notSet };
}

/** The machines, with what the other side of a move set where their own says nothing. */
export function withOthersWorth<T extends OneOfThem>(machines: readonly T[]): readonly T[] {
  const named = machineNamed(machines);
  const between = (one: OneOfThem, { from, to, part }: MovedPart): string => {
    const other = named(to ?? from ?? '');
    if (other === undefined) return '';
    const [left, came] = to === undefined ? [other, one] : [one, other];
    return [left.folder, came.folder, plainName(part)].join('\n');
  };
  const set = new Map<string, Money>();
  for (const one of machines)
    for (const part of one.moved)
      if (part.worth !== undefined && !set.has(between(one, part))) set.set(between(one, part), part.worth);
  set.delete('');
  const asSet = (one: T, part: MovedPart): MovedPart => {
    const worth = part.worth ?? set.get(between(one, part));
    return worth === undefined ? part : { ...part, worth };
  };
  return machines.map((one) => ({ ...one, moved: one.moved.map((part) => asSet(one, part)) }));
}
