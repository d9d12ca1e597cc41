// What a series of readings comes to: wear projected to its limit, the elongation of a chain, the charge of a battery.
import type { Book, Series } from '../../book/book.ts';
import type { Figure } from '../../figure/figure.ts';
import { linksIn } from '../../book/taken/from-chain.ts';
import { calculationOn } from '../../book/taken/on-machine.ts';
import type { OnMachine } from '../../book/taken/on-machine.ts';
import { anchor } from '../wording/blocks.ts';
import type { NamedFigure } from './figure-on.ts';
import { figureOn } from './figure-on.ts';

export interface SeriesFigure extends NamedFigure {
  readonly position: string;
  /** What the calculation says besides, in its words. */
  readonly remark?: string;
}

const tooFew = 2;

/**
 * What wears towards a limit, by the kind of its readings. Resistances, volts and times do neither: a coil fails at once, a joint
 * corrodes with the weather, a battery and a fluid age by the month.
 */
const projections: Readonly<Record<string, string>> = {
  length: 'wear-to-limit',
  'gauge pressure': 'compression-to-limit',
};

function positions(series: Series): readonly string[] {
  return [...new Set(series.points.map((point) => point.position))];
}

function projection(book: Book, series: Series, position: string, by: string): OnMachine | undefined {
  return calculationOn(book, by, {}, { item: series.item, at: position });
}

/** Where each line of wear reaches its limit; nothing where there is no limit, no wear or too little to go by. */
export function wearFigures(book: Book, series: Series): readonly SeriesFigure[] {
  const by = series.limit?.limit === undefined ? undefined : projections[series.limit.unit.dimension];
  // A tyre is pumped up and a fork aired: their pressures are set, and wear towards nothing.
  if (by === undefined || (by === 'compression-to-limit' && !/compression/iu.test(`${series.item} ${series.name}`)))
    return [];
  if (series.points.length < tooFew) return [];
  return positions(series).flatMap((position): readonly SeriesFigure[] => {
    const worked = projection(book, series, position, by)?.worked;
    const reached = worked?.figures['reached'];
    if (reached === undefined) return [];
    const name = position === '' ? series.name : `${series.name}, ${position}`;
    const remark = worked?.words['remark'];
    return [
      {
        id: anchor('wear', series.item, position),
        name: `Limit reached: ${name}`,
        figure: reached,
        position,
        ...(remark === undefined ? {} : { remark }),
      },
    ];
  });
}

/** Elongation of a chain measured over so many links. */
export function chainFigures(book: Book, series: Series): readonly NamedFigure[] {
  if (linksIn(series.item) === undefined) return [];
  return figureOn(book, {
    id: 'chain-elongation',
    name: 'Chain, elongation at the last reading',
    calculation: 'chain-wear',
    output: 'elongation',
  });
}

/** Both common limits for the chain as a length over the same links, to mark on the rule. */
export function chainLimits(book: Book): readonly (NamedFigure & { readonly rule: string })[] {
  const worked = calculationOn(book, 'chain-wear')?.worked;
  return (['common limit', 'industrial limit'] as const).flatMap((rule) => {
    const share = worked?.figures[rule];
    if (share === undefined) return [];
    const name =
      rule === 'common limit'
        ? 'Chain at the limit of motorcycle practice'
        : 'Chain at the limit of the industrial rule';
    const found = figureOn(book, {
      id: rule === 'common limit' ? 'chain-at-common' : 'chain-at-industrial',
      name,
      calculation: 'chain-worn-length',
      output: 'length',
      given: { elongation: share },
    });
    return found.map((one) => ({ ...one, figure: inUnitOfChain(book, one.figure), rule }));
  });
}

/** As the rule of this machine reads: millimetres to a tenth, inches to a hundredth. */
function inUnitOfChain(book: Book, figure: Figure): Figure {
  const unit = book.series.find((one) => linksIn(one.item) !== undefined)?.limit?.unit;
  if (unit?.dimension !== 'length') return figure;
  return { ...figure, unit, decimals: unit.symbol === 'in' ? 2 : 1 };
}

/** Charge of a rested battery by its volts. */
export function batteryFigures(book: Book, series: Series): readonly NamedFigure[] {
  if (series.item !== 'battery-volts') return [];
  return figureOn(book, {
    id: 'battery-charge',
    name: 'Charge of the battery by its rested volts, last reading',
    calculation: 'battery-volts',
    output: 'charge',
  });
}

/** All of a series. */
export function seriesFigures(book: Book, series: Series): readonly NamedFigure[] {
  const chain = chainFigures(book, series);
  return [
    ...wearFigures(book, series),
    ...chain,
    ...(chain.length === 0 ? [] : chainLimits(book)),
    ...batteryFigures(book, series),
  ];
}
