// What the makers' books and the instruments give to a calculation: fasteners, settings, wrenches.
import type { Value } from '../../calc/calculation.ts';
import { calculationById } from '../../calc/list.ts';
import type { Figure } from '../../figure/figure.ts';
import { isOf } from '../../figure/kind.ts';
import { written } from '../../figure/print.ts';
import { inUnit, of } from '../../quantity/quantity.ts';
import { crankDegree, degree, one, percent } from '../../quantity/units.ts';
import type { Fastener, Instrument } from '../../records/model.ts';
import { sourceLine } from '../torque.ts';
import type { Ask, Taken, Taker } from './taken.ts';
import { ofSetting, settingFrom } from './taken.ts';

function fastenerOf({ book, which }: Ask): Fastener | undefined {
  return which.fastener === undefined ? undefined : book.fasteners.get(which.fastener);
}

function told(fastener: Fastener, value: Value | undefined): Taken | undefined {
  return value === undefined ? undefined : { value, from: fastener.name + ' (' + sourceLine(fastener.source) + ')' };
}

const ofFastener =
  (value: (fastener: Fastener) => Value | undefined): Taker =>
  (ask) => {
    const fastener = fastenerOf(ask);
    return fastener === undefined ? undefined : told(fastener, value(fastener));
  };

export const thread = ofFastener((fastener) => fastener.thread);
export const boltClass = ofFastener((fastener) => fastener.class);
export const into = ofFastener((fastener) => fastener.into);
export const threadState = ofFastener((fastener) => fastener.threads);

/** The maker's torque of the fastener that is asked for; its low end where it is a span. */
export const torque: Taker = (ask) => {
  const row = ask.book.torque.find(({ fastener }) => fastener.id === ask.which.fastener);
  return row?.basis === 'maker' ? told(row.fastener, row.value?.low) : undefined;
};

/** Makers' torques of the other fasteners with the same thread. */
export const neighbours: Taker = (ask) => {
  const own = fastenerOf(ask);
  if (own?.thread === undefined) return undefined;
  const rows = ask.book.torque.filter(
    (row) => row.basis === 'maker' && row.fastener.thread === own.thread && row.fastener.id !== own.id,
  );
  const values = rows.flatMap((row) => (row.value === undefined ? [] : [row.value.low]));
  if (values.length === 0) return undefined;
  return {
    value: values,
    from: 'other fasteners ' + own.thread + ': ' + rows.map((row) => row.fastener.name).join(', '),
  };
};

/** A size of the fastener's thread, by the calculation of threads. */
export const sizeOfThread =
  (output: string): Taker =>
  (ask) => {
    const fastener = fastenerOf(ask);
    if (fastener?.thread === undefined) return undefined;
    return told(fastener, calculationById('thread-geometry')?.run({ thread: fastener.thread }).figures[output]);
  };

/** A setting by its id. */
export const setting =
  (id: string): Taker =>
  (ask) =>
    ofSetting(ask, id);

/** A timing that the book gives in millimetres of the piston. */
export const timingPosition: Taker = (ask) => {
  const taken = ofSetting(ask, 'ignition-timing');
  const value = figureIn(taken);
  return value !== undefined && isOf(value, 'length') ? taken : undefined;
};

/** A timing that the book gives as an angle of the crank. */
export const timingAngle: Taker = (ask) => {
  for (const id of ['ignition-timing-angle', 'ignition-timing']) {
    const taken = ofSetting(ask, id);
    const value = figureIn(taken);
    if (taken === undefined || value === undefined) continue;
    if (isOf(value, 'crank angle')) return taken;
    if (!isOf(value, 'angle')) continue;
    const { band: _band, uncertainty: _uncertainty, ...rest } = value;
    const quantity = of(inUnit<'angle'>(value.quantity, degree), crankDegree);
    return { ...taken, value: { ...rest, quantity, unit: crankDegree } };
  }
  return undefined;
};

/** The figure of a value, when it is one. */
export function figureIn(taken: Taken | undefined): Figure | undefined {
  const value = taken?.value;
  if (value === undefined || typeof value === 'string') return undefined;
  return 'unit' in value ? value : value[0];
}

/** The number on the main jet, `stamped 85`. */
export const jet: Taker = ({ book }) => {
  const main = book.settings.get('main-jet');
  if (main === undefined || main.value.kind === 'unknown') return undefined;
  const text = main.value.kind === 'words' ? main.value.text : main.value.written.text;
  const number = /\d+(?:\.\d+)?/.exec(text)?.[0];
  if (number === undefined) return undefined;
  const origin = { kind: 'written', at: main.at, source: sourceLine(main.source) } as const;
  const decimals = (number.split('.')[1] ?? '').length;
  return { value: { quantity: of(Number(number), one), unit: one, decimals, origin }, from: settingFrom(main) };
};

/** Settings in watts: what the generator gives, or everything else, which is taken as lit together. */
const inWatts =
  (generator: boolean): Taker =>
  ({ book }) => {
    const found = [...book.settings.values()].flatMap((each) => {
      if (each.value.kind !== 'read' || each.value.written.unit.dimension !== 'power') return [];
      if ((each.id.startsWith('generator') || each.id.startsWith('alternator')) !== generator) return [];
      return [{ figure: written(each.value.written, each.at, sourceLine(each.source)), from: settingFrom(each) }];
    });
    const [first] = found;
    if (first === undefined) return undefined;
    if (generator) return { value: first.figure, from: first.from };
    return { value: found.map(({ figure }) => figure), from: found.map(({ from }) => from).join('; ') };
  };

export const lamps = inWatts(false);
export const generator = inWatts(true);

function wrenchOf({ book, which }: Ask): Instrument | undefined {
  return book.records.instruments.find(
    (each) => each.measures === 'torque' && (which.wrench === undefined || each.id === which.wrench),
  );
}

const endOfWrench =
  (end: 'low' | 'high'): Taker =>
  (ask) => {
    const wrench = wrenchOf(ask);
    const quantity = wrench?.range?.[end];
    if (wrench?.range === undefined || quantity === undefined) return undefined;
    const { unit, decimals, text } = wrench.range;
    return { value: written({ quantity, unit, decimals, text }, wrench.at), from: wrench.name + ' (instruments)' };
  };

export const leastOfWrench = endOfWrench('low');
export const greatestOfWrench = endOfWrench('high');

/** The accuracy of the wrench, where it is given as a share. */
export const toleranceOfWrench: Taker = (ask) => {
  const wrench = wrenchOf(ask);
  const share = wrench?.accuracy?.share;
  if (wrench === undefined || share === undefined) return undefined;
  const quantity = of(share * 100, percent);
  const origin = { kind: 'written', at: wrench.at } as const;
  return { value: { quantity, unit: percent, decimals: 0, origin }, from: wrench.name + ' (instruments)' };
};

/** How the maker's book takes taper and out-of-round; without it the calculation says which rule it used. */
export const boreRule: Taker = ({ book }) => {
  const limit = book.limits.get('bore');
  return limit?.rule === undefined
    ? undefined
    : { value: limit.rule, from: `${limit.name} (${sourceLine(limit.source)})` };
};
