// Money as written and summed: whole minor units, one currency at a time, changed only at a stated rate.
import { formatDecimal, roundTo } from './decimal.ts';
import type { Money } from './money.ts';
import type { Read } from './quantity.ts';
import { readNumber, refuse, tooLong } from './read-number.ts';

/** Codes of ISO 4217 that are accepted, with two decimals unless listed below. */
const twoDecimals = new Set(
  (
    'AED ALL AMD ANG ARS AUD AZN BAM BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CHF CNY COP CRC CUP CZK DKK DOP DZD EGP ETB EUR ' +
    'FJD GBP GEL GHS GIP GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KZT LAK LBP LKR LSL MAD MDL MKD MMK MNT MOP MUR MVR ' +
    'MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SEK SGD SOS SRD SZL THB TJS TMT TOP ' +
    'TRY TTD TWD TZS UAH USD UYU UZS VES WST XCD YER ZAR ZMW'
  ).split(' '),
);
const noDecimals = new Set('BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF'.split(' '));
const signs: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR', '¥': 'JPY', '₹': 'INR', zł: 'PLN' };
const before = /^([A-Za-z]{3}|[£€¥₹$])\s*([\d.,\s]+)$/;
const after = /^([\d.,\s]+?)\s*([A-Za-z]{3}|zł|[£€¥₹$])$/;
const how = 'write the amount and the currency, for example 18.50 GBP';

/** Decimals of a currency; undefined for a code that is not accepted. */
export function currencyDecimals(currency: string): number | undefined {
  if (noDecimals.has(currency)) return 0;
  return twoDecimals.has(currency) ? 2 : undefined;
}

/**
 * Reads `18.50 GBP`, `GBP 18.50`, `£18.50`, `1 250 EUR`. Refused: no currency, more decimals than the currency has, an
 * ambiguous comma, a dollar sign alone (several currencies use it), a negative amount.
 */
export function readMoney(text: string): Read<Money> {
  const trimmed = text.trim();
  const long = tooLong(trimmed);
  if (long !== undefined) return long;
  const front = before.exec(trimmed);
  const back = front === null ? after.exec(trimmed) : null;
  const amount = (front?.[2] ?? back?.[1] ?? '').trim();
  const mark = front?.[1] ?? back?.[2] ?? '';
  if (/^[-−]/.test(trimmed))
    return refuse(
      'money-unreadable',
      `“${trimmed}” is less than nothing`,
      'write the amount and say that it is a refund',
    );
  if (mark === '') return refuse('money-unreadable', `“${trimmed}” is not an amount with its currency`, how);
  if (mark === '$')
    return refuse(
      'money-unreadable',
      `“$” is the sign of several currencies`,
      `write ${amount} USD, ${amount} AUD or ${amount} CAD`,
    );
  const currency = signs[mark] ?? mark.toUpperCase();
  const decimals = currencyDecimals(currency);
  if (decimals === undefined) return refuse('money-unreadable', `“${mark}” is not a currency known here`, how);
  const number = readNumber(amount, ` ${currency}`);
  if (!number.ok) {
    // No currency has three decimals here: only the thousands can be proposed.
    const thousands = number.why.code === 'number-ambiguous' && decimals < 3;
    const hint = thousands ? `write “${amount.replace(',', ' ')} ${currency}”` : number.why.hint;
    return refuse('money-unreadable', number.why.message, hint);
  }
  if (number.value.decimals > decimals) {
    return refuse(
      'money-unreadable',
      `“${trimmed}” is finer than ${currency} goes`,
      decimals === 0 ? 'write a whole amount' : 'write at most two decimals',
    );
  }
  const minor = Math.round(number.value.value * 10 ** decimals);
  if (!Number.isSafeInteger(minor)) return refuse('money-unreadable', `“${trimmed}” is too large`);
  return { ok: true, value: { minor, currency } };
}

/** Adds amounts that are all in `currency`; another currency among them is a bug and throws RangeError. */
export function sum(amounts: readonly Money[], currency: string): Money {
  let minor = 0;
  for (const amount of amounts) {
    if (amount.currency !== currency) throw new RangeError('amounts in two currencies cannot be added');
    minor += amount.minor;
  }
  return { minor, currency };
}

/** One total per currency, in the order of their codes. */
export function totals(amounts: readonly Money[]): readonly Money[] {
  const codes = [...new Set(amounts.map((amount) => amount.currency))].toSorted();
  return codes.map((code) =>
    sum(
      amounts.filter((amount) => amount.currency === code),
      code,
    ),
  );
}

/**
 * An amount in another currency at a stated rate: `rates` holds the worth of one of theirs in `currency`. Undefined when
 * no rate is stated; the sum then names what it left out.
 */
export function inCurrency(
  amount: Money,
  currency: string,
  rates: Readonly<Record<string, number>>,
): Money | undefined {
  if (amount.currency === currency) return amount;
  const rate = Object.hasOwn(rates, amount.currency) ? rates[amount.currency] : undefined;
  const from = currencyDecimals(amount.currency);
  const to = currencyDecimals(currency);
  if (rate === undefined || from === undefined || to === undefined) return undefined;
  return { minor: roundTo((amount.minor / 10 ** from) * rate * 10 ** to, 0), currency };
}

/** `18.50 GBP` with a no-break space. */
export function formatMoney(amount: Money): string {
  const decimals = currencyDecimals(amount.currency) ?? 2;
  return formatDecimal(amount.minor / 10 ** decimals, decimals) + '\u00a0' + amount.currency;
}
