// What a machine stands at once parts have moved from it or to it: said where money is, on its own pages and on the front page of a workshop.
import type { MovedWorth } from '../book/moved-worth.ts';
import { formatMoney } from '../quantity/money-arithmetic.ts';
import type { Say } from './wording/work.ts';

/** `150.00 GBP paid, ordered and agreed, fees apart; 40.00 GBP set for parts that left; 110.00 GBP left in it`; with what nothing was set for. */
export function movedWorthText(say: Say, paid: string, { gone, came, left, notSet }: MovedWorth): string {
  const stands =
    notSet.length > 0
      ? `${say('what is left in it is not known: no worth that counts for')} ${notSet.join(', ')}`
      : `${formatMoney(left)} ${say('left in it')}`;
  return [
    `${paid} ${say('paid, ordered and agreed, fees apart')}`,
    ...(gone.minor === 0 ? [] : [`${formatMoney(gone)} ${say('set for parts that left')}`]),
    ...(came.minor === 0 ? [] : [`${formatMoney(came)} ${say('set for parts that came')}`]),
    stands,
  ].join('; ');
}
