// The sums in a few facts: together, fees apart, what is not here yet, what is wanted, the allowance, the limit, a distance, the hours.
import type { Outlook } from '../book/costs/outlook.ts';
import { outlookOf } from '../book/costs/outlook.ts';
import { movedParts } from '../book/beside-others.ts';
import { movedWorth } from '../book/moved-worth.ts';
import { minutesText } from '../book/plan/estimate.ts';
import { printFigure } from '../figure/print.ts';
import { formatDecimal } from '../quantity/decimal.ts';
import type { Money } from '../quantity/money.ts';
import { formatMoney } from '../quantity/money-arithmetic.ts';
import type { Block } from '../sheet/sheet.ts';
import { fact, paragraphs, stack } from './wording/blocks.ts';
import { movedWorthText } from './moved-worth.ts';
import type { Fact } from './wording/blocks.ts';
import { countOf } from './wording/count.ts';
import type { Say } from './wording/work.ts';
import type { ViewContext } from './view.ts';

/** A sum that is nothing is not said. */
function some(name: string, money: Money, note?: string): readonly Fact[] {
  return money.minor === 0 ? [] : fact(name, formatMoney(money), note);
}

/** What is left, or by how much it is passed. */
function leftText(say: Say, { left }: Outlook): string | undefined {
  if (left === undefined) return undefined;
  const plain = formatMoney({ minor: Math.abs(left.minor), currency: left.currency });
  return left.minor < 0
    ? `${say('passed by')} ${plain}`
    : `${plain} ${say('left, with what is to be expected taken off')}`;
}

function toCome(say: Say, { wanted, unpriced, allowance, expected }: Outlook): readonly Fact[] {
  const open = unpriced.length === 0 ? undefined : `${say('without a price')}: ${unpriced.join(', ')}`;
  const share = allowance === undefined ? '' : `${formatDecimal(allowance.share * 100, 0)}\u00a0%`;
  const more = wanted.minor > 0 || allowance !== undefined;
  return [
    ...(wanted.minor === 0 && unpriced.length === 0
      ? []
      : wanted.minor === 0
        ? fact(say('Wanted'), say('no price seen'), unpriced.join(', '))
        : fact(say('Wanted, by prices seen'), formatMoney(wanted), open)),
    ...(allowance === undefined
      ? []
      : fact(
          `${say('Allowance')}, ${share}`,
          formatMoney(allowance.amount),
          say('on what is ordered, agreed and wanted'),
        )),
    ...(more ? fact(say('To be expected'), formatMoney(expected), say('fees apart')) : []),
  ];
}

/** The facts, and the hours in a line of their own. */
export function costFacts({ book, say }: ViewContext): readonly Block[] {
  const { total, fees, committed, limit } = book.costs;
  // A sum of nothing would be a claim.
  if (book.copy === 'buyer' && total.minor === 0 && committed.minor === 0)
    return [paragraphs(say('No amount goes with this copy, so nothing is summed.'))];
  const outlook = outlookOf(book);
  const per = outlook.perDistance;
  const facts = [
    ...(book.costs.entries.length + book.costs.leftOut.length === 0 ? [] : fact(say('Together'), formatMoney(total))),
    ...some(say('Of it fees'), fees),
    ...(fees.minor === 0 ? [] : fact(say('The machine, fees apart'), formatMoney(outlook.machine))),
    ...some(say('Of it ordered or agreed, not here'), committed),
    ...toCome(say, outlook),
    ...(limit === undefined ? [] : fact(say('The limit I will spend'), formatMoney(limit), leftText(say, outlook))),
    ...(per === undefined
      ? []
      : fact(
          `${say('For every')} 100\u00a0${per.unit}`,
          formatMoney(per.money),
          `${say('fees apart, over')} ${printFigure(per.over)} ${say('on record')}`,
        )),
  ];
  return stack(
    facts.length === 0 ? undefined : { type: 'facts', across: 2, facts },
    movedLine({ book, say }, outlook),
    hours(say, outlook),
  );
}

/** A machine that gives its parts away is worth less; a sum of what was paid alone would hide it. */
function movedLine({ book, say }: Pick<ViewContext, 'book' | 'say'>, { machine }: Outlook): Block | undefined {
  const worth = movedWorth(machine, movedParts(book), book.records.machine.rates);
  if (worth === undefined) return undefined;
  return paragraphs(
    `${say('Parts that moved between machines')}: ${movedWorthText(say, formatMoney(machine), worth)}.`,
  );
}

/** Hours are counted; valued only at the owner's own rate, and never added to money. */
function hours(say: Say, { hours: { minutes, without, worth } }: Outlook): Block | undefined {
  if (minutes === 0) return undefined;
  const none = without === 0 ? '' : `; ${countOf(without, say('record says no time'), say('records say no time'))}`;
  const value = worth === undefined ? '' : `; ${formatMoney(worth)} ${say('at your rate, not in the sums')}`;
  return paragraphs(`${say('Own time on record')}: ${minutesText(minutes)}${none}${value}.`);
}
