// data/binder.json: the whole computed model of one machine, in a fixed order, for other programs and for twenty years from now.
import type { Book } from '../book/book.ts';
import type { Working } from '../figure/figure.ts';
import { plain, plainFigure, type Names, type Plain, type Workings } from './plain.ts';

/** The number of the format; raised when a key changes its meaning or goes. */
export const dataFormat = 1;

/** Makes the data. The same book gives the same text, whatever the order of the files on the disk. */
export function binderData(book: Book): Readonly<Record<string, Plain>> {
  const names = namesIn(book);
  const { workings, list } = collectWorkings();
  const all = (values: readonly unknown[]): readonly Plain[] =>
    values.map((value) => plain(value, names, workings, true) ?? null);
  const one = (value: unknown): Plain => plain(value, names, workings, true) ?? null;
  const { records } = book;
  const parts: Readonly<Record<string, Plain>> = {
    $schema: 'binder.schema.json',
    format: dataFormat,
    today: book.today,
    recordsDate: book.recordsDate,
    recordsVersion: book.recordsVersion,
    machine: one(records.machine),
    odometer: one(book.odometer),
    off: one(book.off),
    holdPoints: book.holds.map((hold) => ({
      id: hold.point.id,
      title: hold.point.title,
      clear: hold.clear,
      because: hold.because ?? [],
      ...(hold.released === undefined ? {} : { released: one(hold.released) }),
      checks: all(hold.checks),
    })),
    torque: all(book.torque),
    due: all(book.due),
    measurements: all(book.series),
    // A plan's procedures are cut down to what applies; they are named here, and stand in the content.
    plans: all(book.plans.map((plan) => ({ ...plan, procedures: plan.procedures.map(({ id }) => id) }))),
    visits: (book.visits ?? []).map(({ day, lines }) => ({ day, services: lines.map(({ service }) => service.id) })),
    costs: one(book.costs),
    queries: all(book.queries),
    jobs: all(records.jobs),
    instruments: all(records.instruments),
    fasteners: all([...book.fasteners.values()]),
    limits: all([...book.limits.values()]),
    settings: all([...book.settings.values()]),
    fluids: all(records.maker.fluids),
    services: all(book.due.map((line) => line.service)),
    sources: all(records.maker.sources),
    checks: all(book.holds.flatMap((hold) => hold.point.checks)),
    unread: all(records.unread),
    kept: all(records.kept ?? []),
    ...(records.story === undefined ? {} : { story: one(records.story) }),
    ...(records.wiring === undefined ? {} : { wiring: one(records.wiring) }),
    ...(records.adopted === undefined ? {} : { adopted: one(records.adopted) }),
    ...(records.workshop === undefined ? {} : { workshop: one(records.workshop) }),
  };
  return { ...parts, workings: list() };
}

/** What is written out once, and named by its id wherever else it is met. */
function namesIn(book: Book): Names {
  const { records } = book;
  const named: readonly { readonly id: string }[] = [
    ...records.jobs,
    ...records.instruments,
    ...book.fasteners.values(),
    ...book.limits.values(),
    ...book.settings.values(),
    ...book.due.map((line) => line.service),
    ...book.holds.flatMap((hold) => hold.point.checks),
  ];
  return new Map(named.map((each) => [each, each.id]));
}

/** Workings refer to each other through their inputs; each is written once and named by its place in the list. */
function collectWorkings(): { readonly workings: Workings; readonly list: () => readonly Plain[] } {
  const met = new Map<Working, string>();
  const order: Working[] = [];
  const workings: Workings = {
    idOf: (working) => {
      const known = met.get(working);
      if (known !== undefined) return known;
      order.push(working);
      const id = 'w' + String(order.length);
      met.set(working, id);
      return id;
    },
  };
  return {
    workings,
    // The list grows while it is gone through: inputs bring in further workings.
    list: () => {
      const written: Plain[] = [];
      for (let index = 0; index < order.length; index += 1) {
        const working = order[index];
        if (working !== undefined) written.push(plainWorking(working, workings));
      }
      return written;
    },
  };
}

function plainWorking(working: Working, workings: Workings): Plain {
  return {
    id: workings.idOf(working),
    calculation: working.calculation,
    formula: working.formula,
    source: working.source,
    inputs: working.inputs.map(({ symbol, name, figure }) => ({ symbol, name, figure: plainFigure(figure, workings) })),
    remarks: working.remarks ?? [],
  };
}
