// Parts from nowhere, and money that is still out.
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { Job, MoneyEntry, PartEntry } from '../../records/model.ts';
import { keptFlat } from '../../records/runs.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

const ofItself: ReadonlySet<string> = new Set(['original', 'made', 'repaired']);

function saysWhence({ from, price, movedFrom, class: kind }: PartEntry): boolean {
  return (
    from !== undefined || price !== undefined || movedFrom !== undefined || (kind !== undefined && ofItself.has(kind))
  );
}

const withoutWhence = keptFlat(({ parts }: Job) =>
  parts.filter((part) => part.state === 'fitted' && !saysWhence(part)),
);
const paid = keptFlat(({ money }: Job) => money);

/** A part fitted that was never bought, found or moved. */
export const partFromNowhere: Look = ({ ground }) => {
  if (withoutWhence(ground.jobs).length === 0) return [];
  const got = new Set<string>();
  return ground.jobs.flatMap((job) =>
    job.parts.flatMap((part) => {
      const key = ground.key(part.part);
      const known = saysWhence(part) || got.has(key);
      if (known || part.state !== 'fitted') got.add(key);
      if (known || part.state !== 'fitted') return [];
      return [
        query(
          'part-from-nowhere',
          part.at,
          `${part.part} fitted, and no record says where it came from`,
          'write `from:`, `price:` or `moved from:`',
        ),
      ];
    }),
  );
};

/** Deposits for which no equal amount came back. */
function depositsOut(entries: readonly MoneyEntry[]): readonly MoneyEntry[] {
  const back = new Map<string, number>();
  const name = (one: MoneyEntry): string => `${String(one.amount.minor)} ${one.amount.currency}`;
  for (const one of entries) if (one.kind === 'deposit back') back.set(name(one), (back.get(name(one)) ?? 0) + 1);
  return entries.filter((one) => {
    if (one.kind !== 'deposit') return false;
    const came = back.get(name(one)) ?? 0;
    back.set(name(one), came - 1);
    return came <= 0;
  });
}

/** Money that is still out, or past the owner's own limit. */
export const moneyOut: Look = ({ ground, costs }) => {
  const open = depositsOut(paid(ground.jobs)).map((one) =>
    query(
      'deposit-not-back',
      one.at,
      `deposit of ${formatMoney(one.amount)} for ${one.for} is not back`,
      'send the old part, or write the deposit off',
    ),
  );
  if (ground.records.machine.spendingLimit === undefined) return open;
  const { limit, total, fees } = costs();
  const bike = { minor: total.minor - fees.minor, currency: total.currency };
  if (limit === undefined || limit.currency !== bike.currency || bike.minor <= limit.minor) return open;
  const at = { file: ground.records.machine.file, path: ['spending limit'] };
  return [
    ...open,
    query(
      'spending-limit-passed',
      at,
      `${formatMoney(bike)} spent or ordered, fees apart, and the limit you set is ${formatMoney(limit)}`,
      'stop, or set a new limit on purpose',
    ),
  ];
};
