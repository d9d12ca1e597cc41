// How a log is to be read: columns, order of the dates, decimal mark, unit, currency. Found where all rows agree, else said or asked.
import type { Machine } from '../../../records/model.ts';
import type { TakeWork } from '../reader.ts';
import { said } from '../said.ts';
import { cellOf, distanceUnit, type LogManner } from './entries.ts';
import { proposeColumns, roles, sayColumns, type Columns } from './columns.ts';
import { isShortYear, orders, ordersOfAll, type Order } from './dates.ts';
import { besideNumber, marksOf, type Decimal } from './numbers.ts';
import type { Row } from './rows.ts';

export interface FoundManner extends LogManner {
  /** Rows below the heading. */
  readonly rows: readonly Row[];
  /** Why each thing is read so, for the person. */
  readonly because: Readonly<Partial<Record<'date' | 'odometer' | 'cost', string>>>;
}

/** Undefined when something could not be found, and was neither said nor answered; then it has been told what to say. */
export async function mannerOf(
  all: readonly Row[],
  machine: Machine,
  today: string,
  work: TakeWork,
): Promise<FoundManner | undefined> {
  const columns = await columnsOf(all, work);
  if (columns === undefined) return undefined;
  const rows = columns.headed ? all.slice(1) : all;
  const dates = rows.map((row) => cellOf(row, columns, 'date')).filter((text) => text !== '');
  const order = await orderOf(dates, work);
  if (order === undefined) return undefined;
  const century = await centuryOf(dates, order, machine, today, work);
  if (century === undefined) return undefined;
  const decimal = await decimalOf(rows, columns, work);
  if (decimal === undefined) return undefined;
  const unit = await unitOf(rows, columns, machine, work);
  if (unit === undefined) return undefined;
  const currency = work.options.said['currency'] ?? machine.currency;
  const because = {
    date: `${order}${dates.some((text) => isShortYear(text, order)) ? `, years of two digits in the ${century}00s` : ''}`,
    odometer: unit === '' || unit === 'in words' ? unit : `${unit} where no unit is written`,
    cost: `${currency} where no currency is written, ${decimal} for decimals`,
  };
  return { rows, columns, order, century, decimal, unit: unit === '' ? undefined : unit, currency, because };
}

async function columnsOf(all: readonly Row[], work: TakeWork): Promise<Columns | undefined> {
  const { terminal } = work.around;
  const proposed = proposeColumns(all);
  const given = work.options.said['columns'];
  const first = given === undefined ? { columns: proposed } : sayColumns(proposed, given);
  if ('strange' in first) {
    terminal.tell(`“${first.strange}” is not a column of this file. ${columnsAre(proposed)}`);
    return undefined;
  }
  let { columns } = first;
  while (columns.of.date.length === 0 || columns.of.text.length === 0) {
    const missing = columns.of.date.length === 0 ? 'the date' : 'what was done';
    terminal.tell(`It is not clear which column holds ${missing}. ${columnsAre(columns)}`);
    const line =
      given === undefined
        ? await said(work, {
            name: 'columns',
            asks: 'Which columns are what, as date=1, text=3+4, odometer=2, cost=5:',
          })
        : undefined;
    const next = line === undefined ? undefined : sayColumns(columns, line);
    if (next === undefined) return undefined;
    if ('strange' in next) terminal.tell(`“${next.strange}” is not a column of this file.`);
    else ({ columns } = next);
    if (!work.asker.atTerminal && 'strange' in next) return undefined;
  }
  return columns;
}

function columnsAre({ headings }: Columns): string {
  return `The columns: ${headings.map((heading, index) => `${String(index + 1)} “${heading}”`).join(', ')}. They can be: ${roles.join(', ')}.`;
}

async function orderOf(dates: readonly string[], work: TakeWork): Promise<Order | undefined> {
  const possible = ordersOfAll(dates);
  const [first, ...others] = possible;
  const given = work.options.said['dates'];
  if (given === undefined && first !== undefined && others.length === 0) return first;
  if (first === undefined) {
    // No order fits all; the rows that the chosen one does not fit are told as undated.
    work.around.terminal.tell('The dates are not all written in one order.');
  }
  const choices = first === undefined ? [...orders] : [...possible];
  const example = dates.find((text) => text !== '') ?? '';
  if (dates.length === 0 || (possible.length === orders.length && dates.every((text) => /\p{L}/u.test(text))))
    return first;
  const answer = await said(work, {
    name: 'dates',
    asks: `Dates such as ${example} can be read in several ways. Which is it?`,
    choices,
  });
  return orders.find((one) => one === answer);
}

async function centuryOf(
  dates: readonly string[],
  order: Order,
  machine: Machine,
  today: string,
  work: TakeWork,
): Promise<string | undefined> {
  const short = dates.filter((text) => isShortYear(text, order));
  if (short.length === 0) return '20';
  const years = short.map((text) => twoDigits(text, order));
  const made = Number(/\d{4}/u.exec(machine.year ?? '')?.[0] ?? '0');
  const now = Number(today.slice(0, 4));
  const fits = ['19', '20'].filter((century) =>
    years.every((year) => Number(century + year) <= now && Number(century + year) >= made),
  );
  const [only, second] = fits;
  if (only !== undefined && second === undefined && work.options.said['century'] === undefined) return only;
  return said(work, {
    name: 'century',
    asks: `Years of two digits, as in ${short[0] ?? ''}: of which century?`,
    choices: ['19', '20'],
  });
}

function twoDigits(text: string, order: Order): string {
  const numbers = text.match(/\d+/gu) ?? [];
  const year = order === 'year-month-day' ? numbers[0] : numbers[numbers.length === 3 ? 2 : 1];
  return (year ?? '').padStart(2, '0');
}

async function decimalOf(rows: readonly Row[], columns: Columns, work: TakeWork): Promise<Decimal | undefined> {
  const texts = rows.flatMap((row) => [cellOf(row, columns, 'odometer'), cellOf(row, columns, 'cost')]);
  const { said: found, doubtful } = marksOf(texts);
  const [only, second] = found;
  if (work.options.said['decimal'] === undefined) {
    if (only !== undefined && second === undefined) return only;
    if (only === undefined && doubtful === undefined) return 'point';
  }
  const asks =
    second === undefined
      ? `${doubtful ?? ''} may be thousands or decimals. Which sign parts the decimals?`
      : 'Some figures have a decimal point and some a decimal comma. Which is it?';
  const answer = await said(work, { name: 'decimal', asks, choices: ['point', 'comma'] });
  return answer === 'point' || answer === 'comma' ? answer : undefined;
}

/** The unit for odometer cells that have none: of the heading, of the machine's own clocks; empty where it is not needed. */
async function unitOf(
  rows: readonly Row[],
  columns: Columns,
  machine: Machine,
  work: TakeWork,
): Promise<string | undefined> {
  const given = work.options.said['unit'];
  if (given !== undefined) return said(work, { name: 'unit', asks: '', choices: ['mi', 'km', 'in words'] });
  const bare = rows.some(
    (row) => /\d/u.test(cellOf(row, columns, 'odometer')) && besideNumber(cellOf(row, columns, 'odometer')) === '',
  );
  if (!bare) return '';
  const heading = columns.of.odometer.map((index) => columns.headings[index] ?? '').join(' ');
  const inHeading = heading.match(/\p{L}+/gu)?.flatMap((word) => distanceUnit(word) ?? []) ?? [];
  if (inHeading[0] !== undefined) return inHeading[0];
  const clocks = new Set(machine.clock.map((period) => period.unit.symbol));
  const [one, other] = [...clocks];
  if (one !== undefined && other === undefined) return one;
  return said(work, { name: 'unit', asks: 'The odometer has no unit. Which is it?', choices: ['mi', 'km'] });
}
