// A step of the way back in words: what is done with it, where it lies, what is tightened and to what, what is missing for it.
import { printFigure, printRange } from '../../figure/print.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Fluid } from '../../records/model.ts';
import type { Book, OpenLine, TorqueRow } from '../book.ts';
import type { Implied } from '../shopping/implied.ts';
import type { BackStep, Goal, WayBack } from './way-back.ts';

/** Both ways, as they are headed. */
export const goals: readonly { readonly goal: Goal; readonly title: string }[] = [
  { goal: 'pushed', title: 'Shortest way back to where it can be pushed' },
  { goal: 'running', title: 'Shortest way back to where the engine can run' },
];

export const nothingOff = 'nothing that is off stands in the way of it, by the records';

/** The hold point that comes after the last step, with how much of it is open. */
export function thenText({ comesNext }: WayBack): string | undefined {
  if (comesNext === undefined) return undefined;
  const open = comesNext.because?.length ?? 0;
  if (open === 0) return `then: “${comesNext.point.title}”, clear on the records; the person at the machine decides`;
  return `then: “${comesNext.point.title}”, ${formatDecimal(open, 0)}\u00a0${open === 1 ? 'check' : 'checks'} open`;
}

const doing: Readonly<Record<OpenLine['state'], string>> = {
  off: 'refit',
  loose: 'tighten',
  empty: 'fill',
  disconnected: 'connect',
  open: 'close',
  'sent out': 'wait for, then refit',
  temporary: 'take away',
};

function nameOf(book: Book, thing: string): string {
  const { fluids } = book.records.maker;
  return (book.fasteners.get(thing)?.name ?? fluids.find(({ id }) => id === thing)?.name ?? thing).trim();
}

/** `tighten Head nuts: 22 N·m, threads dry, crosswise`; without a value in the book the blank stays a blank. */
function tightenText(row: TorqueRow): string {
  return `tighten ${row.fastener.name}: ${torqueText(row)}`;
}

function torqueText({ fastener, basis, value }: TorqueRow): string {
  const threads = fastener.threads === undefined ? '' : `, threads ${fastener.threads}`;
  const order = fastener.order === undefined ? '' : `, ${fastener.order}`;
  if (basis === 'maker' && value !== undefined && fastener.torque !== undefined)
    return `${printRange(fastener.torque)}${threads}${order}`;
  if (basis === 'computed' && value !== undefined)
    return `no value in the book; computed band ${printFigure(value.low)}${value.high === undefined ? '' : ` to ${printFigure(value.high)}`}`;
  return 'no value in the book, the blank stays open';
}

/** `650 ml, SAE 10W-30`; what the book does not say is said to be unknown. */
export function fluidText({ quantity, grade, at }: Fluid): string {
  const much =
    quantity === undefined ? 'quantity not known' : printFigure({ ...quantity, origin: { kind: 'written', at } });
  return grade === undefined ? much : `${much}, ${grade}`;
}

const noFluidText = 'kind and quantity not in the book';

/** `split pin for Rear spindle nut`, `2 × base gasket`, `Gearbox oil: 650 ml, SAE 10W-30`. */
export function impliedText({ what, count, fastener, fluid, notInBook }: Implied): string {
  if (fluid !== undefined) return `${fluid.name}: ${fluidText(fluid)}`;
  if (notInBook === true) return `${what}: ${noFluidText}`;
  const many = count === undefined || count === 1 ? '' : `${formatDecimal(count, 0)}\u00a0× `;
  const of = fastener === undefined || fastener.name === what ? '' : ` for ${fastener.name}`;
  return `${many}${what}${of}`;
}

function needText(one: Implied): string {
  if (one.notInBook === true) return noFluidText;
  return one.fluid === undefined ? `new: ${impliedText(one)}` : fluidText(one.fluid);
}

/** The step in pieces of a sentence. */
export function backText(book: Book, step: BackStep): readonly string[] {
  const { line, tighten, needs, because } = step;
  const { entry, state } = line;
  const lost = entry.verb === 'lost';
  const name = nameOf(book, entry.thing);
  return [
    `${doing[state]} ${name}`,
    ...(lost ? ['it is lost: to get first'] : []),
    ...(entry.bag === undefined || lost ? [] : [`from bag ${entry.bag}`]),
    ...(entry.to === undefined
      ? []
      : [`at ${entry.to}${entry.promised === undefined ? '' : `, promised for ${entry.promised}`}`]),
    ...(entry.wayRound === undefined ? [] : [entry.wayRound]),
    ...needs.map(needText),
    ...tighten.map((row) => (state === 'loose' && row.fastener.name === name ? torqueText(row) : tightenText(row))),
    ...(because === undefined ? [] : [`before what follows: ${because}`]),
  ];
}
