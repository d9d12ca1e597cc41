// What is still to come, with the owner's allowance on top; what a distance has cost; the hours, valued only where the owner says so.
import type { Figure } from '../../figure/figure.ts';
import type { Money } from '../../quantity/money.ts';
import { formatMoney, inCurrency } from '../../quantity/money-arithmetic.ts';
import { kilometre, mile } from '../../quantity/units.ts';
import type { Book } from '../book.ts';
import { distanceBetween, type Ends } from './distance-between.ts';
import { partLines } from '../shopping/part-lines.ts';

export interface Outlook {
  /** Spent, ordered and agreed, fees apart. */
  readonly machine: Money;
  /** Prices seen of what is wanted. */
  readonly wanted: Money;
  /** Wanted, and nobody has seen a price, or the price has no rate: by name. */
  readonly unpriced: readonly string[];
  /** The owner's share on top of what is ordered, agreed and wanted. */
  readonly allowance?: { readonly share: number; readonly amount: Money };
  /** Machine, wanted and allowance together. */
  readonly expected: Money;
  /** What is left of the owner's limit then; less than nothing when it is passed. */
  readonly left?: Money;
  readonly perDistance?: PerDistance;
  readonly hours: Hours;
}
export interface PerDistance {
  /** For 100 of the clock's unit. */
  readonly money: Money;
  readonly unit: 'km' | 'mi';
  readonly over: Figure<'distance ridden'>;
}
export interface Hours {
  /** Whole minutes on record. */
  readonly minutes: number;
  /** Finished records that say no time. */
  readonly without: number;
  /** At the owner's rate; kept apart from money that was paid. */
  readonly worth?: Money;
}

function priced(book: Book): Pick<Outlook, 'wanted' | 'unpriced'> {
  const { currency, rates } = book.records.machine;
  const wanted = partLines(book).filter(({ part }) => part.state === 'wanted');
  const each = wanted.map(({ part }) => {
    const worth = part.price === undefined ? undefined : inCurrency(part.price, currency, rates);
    const why = part.price === undefined ? '' : ` (${formatMoney(part.price)}: no rate for ${part.price.currency})`;
    return { worth, name: `${part.part}${why}` };
  });
  return {
    wanted: { minor: each.reduce((sum, { worth }) => sum + (worth?.minor ?? 0), 0), currency },
    unpriced: each.flatMap(({ worth, name }) => (worth === undefined ? [name] : [])),
  };
}

const ends: Ends = {
  formula: 'd = last reading on record − first reading on record',
  from: { symbol: 'first', name: 'distance at the first record' },
  to: { symbol: 'last', name: 'distance of the machine now' },
  source: 'records of this machine',
};

/** The distance on the records, first reading with a known distance to the last; undefined where it stood still. */
function distanceRidden({ odometer }: Book): Figure<'distance ridden'> | undefined {
  const first = odometer.readings.find(({ machine, job }) => machine !== undefined && job !== undefined)?.machine;
  const last = odometer.now.machine;
  if (first === undefined || last === undefined || last.quantity === first.quantity) return undefined;
  return distanceBetween(first, last, ends);
}

/** What each hundred has cost; nothing is said before the first hundred, of which it would be no measure. */
function perDistance(book: Book, money: Money): PerDistance | undefined {
  const over = distanceRidden(book);
  if (over === undefined) return undefined;
  const unit = over.unit.symbol === mile.symbol ? mile : kilometre;
  const hundreds = over.quantity / (100 * unit.factor);
  if (hundreds < 1) return undefined;
  const minor = Math.round(money.minor / hundreds);
  return { money: { minor, currency: money.currency }, unit: unit === mile ? 'mi' : 'km', over };
}

function hoursOf({ records }: Book): Hours {
  const done = records.jobs.filter(({ state }) => state === 'done');
  const minutes = Math.round(done.reduce((sum, { time }) => sum + (time?.quantity ?? 0), 0) / 60);
  const without = done.filter(({ time }) => time === undefined).length;
  const rate = records.machine.hourRate;
  const own = rate === undefined ? undefined : inCurrency(rate, records.machine.currency, records.machine.rates);
  const worth =
    own === undefined ? {} : { worth: { minor: Math.round((own.minor * minutes) / 60), currency: own.currency } };
  return { minutes, without, ...worth };
}

/** Everything beside the sum, for a machine at a date. */
export function outlookOf(book: Book): Outlook {
  const { total, fees, committed, limit } = book.costs;
  const { currency, allowance: share } = book.records.machine;
  const machine = { minor: total.minor - fees.minor, currency };
  const { wanted, unpriced } = priced(book);
  const extra =
    share === undefined ? undefined : { minor: Math.round((committed.minor + wanted.minor) * share), currency };
  const expected = { minor: machine.minor + wanted.minor + (extra?.minor ?? 0), currency };
  const own = limit === undefined ? undefined : inCurrency(limit, currency, book.records.machine.rates);
  const per = perDistance(book, machine);
  return {
    machine,
    wanted,
    unpriced,
    expected,
    hours: hoursOf(book),
    ...(share === undefined || extra === undefined ? {} : { allowance: { share, amount: extra } }),
    ...(own === undefined ? {} : { left: { minor: own.minor - expected.minor, currency } }),
    ...(per === undefined ? {} : { perDistance: per }),
  };
}
