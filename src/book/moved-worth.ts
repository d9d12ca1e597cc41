// What a machine stands at once parts have moved: what was paid for it, less what the owner set for those that left, with those that came.
import type { Money } from '../quantity/money.ts';
import { sum } from '../quantity/money-arithmetic.ts';
import { machineNamed, type MovedPart, type OneOfThem } from './beside-others.ts';
import { plainName } from './names.ts';

export interface MovedWorth {
  readonly gone: Money;
  readonly came: Money;
  /** Paid, less what is gone, with what came. */
  readonly left: Money;
  /** Parts that nothing was set for, by name: what is left is not known as long as there is one. */
  readonly notSet: readonly string[];
}

/** Undefined where no part is away or here from elsewhere. A part that came back is where it was. All money is in the currency of `paid`. */
export function movedWorth(paid: Money, moved: readonly MovedPart[]): MovedWorth | undefined {
  const gone = new Map<string, MovedPart>();
  const came = new Map<string, MovedPart>();
  for (const one of moved.toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))) {
    const key = plainName(one.part);
    if (one.from !== undefined && !gone.delete(key)) came.set(key, one);
    if (one.to !== undefined && !came.delete(key)) gone.set(key, one);
  }
  const both = [...gone.values(), ...came.values()];
  if (both.length === 0) return undefined;
  const worth = (parts: ReadonlyMap<string, MovedPart>): Money =>
    sum(
      [...parts.values()].flatMap((one) => one.worth ?? []),
      paid.currency,
    );
  const [out, here] = [worth(gone), worth(came)];
  return {
    gone: out,
    came: here,
    left: { minor: paid.minor - out.minor + here.minor, currency: paid.currency },
    notSet: both.filter((one) => one.worth === undefined).map(({ part }) => part),
  };
}

/** The moves of each machine, with what the other side set where this one says nothing, in the same currency. */
export function withOthersWorth<T extends OneOfThem>(
  machines: readonly T[],
  currencyOf: (one: T) => string,
): readonly T[] {
  const named = machineNamed(machines);
  const set = new Map<string, Money>();
  const key = (from: OneOfThem, to: OneOfThem, part: string): string =>
    [from.folder, to.folder, plainName(part)].join('\n');
  const sides = (one: T, { from, to, part }: MovedPart): string | undefined => {
    const other = named(to ?? from ?? '');
    if (other === undefined) return undefined;
    return to === undefined ? key(other, one, part) : key(one, other, part);
  };
  for (const one of machines)
    for (const part of one.moved) {
      const side = sides(one, part);
      if (side !== undefined && part.worth !== undefined && !set.has(side)) set.set(side, part.worth);
    }
  return machines.map((one) => ({
    ...one,
    moved: one.moved.map((part) => {
      const theirs = part.worth ?? set.get(sides(one, part) ?? '');
      return theirs?.currency === currencyOf(one) ? { ...part, worth: theirs } : part;
    }),
  }));
}
