// Dates of a log: in which order day, month and year stand is found from all of them together, or asked; never guessed.

export const orders = ['day-month-year', 'month-day-year', 'year-month-day'] as const;
export type Order = (typeof orders)[number];

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

interface Parts {
  readonly numbers: readonly [string, string, string];
  /** Which of the three was written as a word, and so is the month. */
  readonly month?: 0 | 1;
}

/** Three numbers, or two and a month in words; a time of day after it is not looked at. */
function partsOf(text: string): Parts | undefined {
  const cut = text.trim().replace(/[T ,]+\d{1,2}:\d{2}(?::\d{2})?(?:\.\d+)?(?:Z| ?[ap]m)?$/iu, '');
  const three = /^(\d{1,4})[-./ ](\d{1,2})[-./ ](\d{1,4})\.?$/u.exec(cut);
  if (three !== null) return { numbers: [three[1] ?? '', three[2] ?? '', three[3] ?? ''] };
  const eight = /^(\d{4})(\d{2})(\d{2})$/u.exec(cut);
  if (eight !== null) return { numbers: [eight[1] ?? '', eight[2] ?? '', eight[3] ?? ''] };
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?[-. ]+(\p{L}{3,})\.?,?[-. ]+(\d{2}|\d{4})$/u.exec(cut);
  if (dayFirst !== null) return worded(dayFirst[2], 1, [dayFirst[1], undefined, dayFirst[3]]);
  const monthFirst = /^(\p{L}{3,})\.?[-. ]+(\d{1,2})(?:st|nd|rd|th)?,?[-. ]+(\d{2}|\d{4})$/u.exec(cut);
  return monthFirst === null ? undefined : worded(monthFirst[1], 0, [undefined, monthFirst[2], monthFirst[3]]);
}

function worded(word: string | undefined, month: 0 | 1, rest: readonly (string | undefined)[]): Parts | undefined {
  const number = months.indexOf((word ?? '').slice(0, 3).toLowerCase()) + 1;
  const [first, second, third] = rest.map((one) => one ?? String(number));
  if (number === 0 || first === undefined || second === undefined || third === undefined) return undefined;
  return { numbers: [first, second, third], month };
}

/** Orders in which a text could be a date. */
export function ordersOf(text: string): readonly Order[] {
  const parts = partsOf(text);
  if (parts === undefined) return [];
  const [first, second, third] = parts.numbers;
  if (parts.month !== undefined) return [parts.month === 1 ? 'day-month-year' : 'month-day-year'];
  if (first.length > 2) return ordered(['year-month-day'], first, second, third);
  if (third.length > 2) return ordered(['day-month-year', 'month-day-year'], first, second, third);
  return ordered(orders, first, second, third);
}

function ordered(which: readonly Order[], ...numbers: readonly [string, string, string]): readonly Order[] {
  return which.filter((order) => {
    const { month, day } = put(order, numbers);
    return month >= 1 && month <= 12 && day >= 1 && day <= 31;
  });
}

function put(order: Order, [first, second, third]: Parts['numbers']) {
  if (order === 'year-month-day') return { year: first, month: Number(second), day: Number(third) };
  if (order === 'day-month-year') return { year: third, month: Number(second), day: Number(first) };
  return { year: third, month: Number(first), day: Number(second) };
}

/** Orders that fit every date written in numbers; a month in words fits any. Empty when one date rules out what another needs. */
export function ordersOfAll(texts: readonly string[]): readonly Order[] {
  const numeric = texts.filter((text) => partsOf(text) !== undefined && partsOf(text)?.month === undefined);
  return orders.filter((order) => numeric.every((text) => ordersOf(text).includes(order)));
}

/** True when the date has a year of two digits. */
export function isShortYear(text: string, order: Order): boolean {
  const parts = partsOf(text);
  return parts !== undefined && put(orderOf(parts, order), parts.numbers).year.length <= 2;
}

function orderOf(parts: Parts, order: Order): Order {
  if (parts.month === undefined) return order;
  return parts.month === 1 ? 'day-month-year' : 'month-day-year';
}

/** The day as `2024-05-04`; undefined when it is not one. `century` (`19` or `20`) stands before years of two digits. */
export function dayIn(text: string, order: Order, century: string): string | undefined {
  const parts = partsOf(text);
  if (parts === undefined) return undefined;
  const { year, month, day } = put(orderOf(parts, order), parts.numbers);
  const full = year.length <= 2 ? century + year.padStart(2, '0') : year;
  const written = `${full}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const date = new Date(`${written}T00:00:00Z`);
  const real = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(written);
  return real ? written : undefined;
}
