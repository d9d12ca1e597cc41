// What a series of readings that is asked for gives: the newest reading against its limit, and the line of wear since the part was new.
import { inUnit, ofSi } from '../../quantity/quantity.ts';
import type { Quantity, WrittenRange } from '../../quantity/quantity.ts';
import { printQuantity, printRange, withUnit } from '../../figure/print.ts';
import type { Figure } from '../../figure/figure.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import { expandedUncertainty } from '../uncertainty.ts';
import type { Instrument } from '../../records/model.ts';
import type { Series } from '../book.ts';
import { figureOfPoint, readPoints, seriesOf } from './from-readings.ts';
import type { ReadPoint } from './from-readings.ts';
import { once } from './once.ts';
import type { Ask, Taken, Taker } from './taken.ts';

function asked(ask: Ask): Series | undefined {
  return ask.which.item === undefined ? undefined : seriesOf(ask, ask.which.item);
}

/**
 * Readings of one line of wear: the position asked for (else that of the newest reading), the condition of the newest, since the
 * part was renewed, with a known distance. Of pressures only those of the gauge that read the newest: two gauges differ by more
 * than an engine wears in years, so without the name of one there is no line.
 */
export function wearLine(series: Series, at?: string): readonly ReadPoint[] {
  return lineAt(series, at ?? '');
}

const lineAt = once((series: Series, at: string): readonly ReadPoint[] => {
  const points = readPoints(series, at);
  const last = points.at(-1);
  if (last === undefined) return [];
  const since = series.basis.findLast((one) => one.from <= last.point.day)?.from;
  const condition = last.point.condition.join(', ');
  const { instrument } = last.point;
  const byGauge = last.written.unit.dimension === 'gauge pressure';
  return points.filter(
    ({ point }) =>
      point.position === last.point.position &&
      point.condition.join(', ') === condition &&
      point.machineDistance !== undefined &&
      (!byGauge || (instrument !== undefined && point.instrument === instrument)) &&
      (since === undefined || point.day > since || (point.day === since && point.side === 'left')),
  );
});

function instrumentOf({ book }: Ask, id: string | undefined): Instrument | undefined {
  return book.records.instruments.find((one) => one.id === id);
}

function told(points: readonly ReadPoint[], value: Taken['value'] | undefined): Taken | undefined {
  const last = points.at(-1);
  if (value === undefined || last === undefined) return undefined;
  const { point } = last;
  return { value, from: 'readings: ' + [point.position, 'to ' + point.day].filter((part) => part !== '').join(', ') };
}

const ofLine =
  (value: (line: readonly ReadPoint[], ask: Ask) => Taken['value'] | undefined): Taker =>
  (ask) => {
    const series = asked(ask);
    const line = series === undefined ? [] : wearLine(series, ask.which.at);
    return told(line, line.length === 0 ? undefined : value(line, ask));
  };

export const lineDistances = ofLine((line) =>
  line.flatMap(({ point }) => (point.machineDistance === undefined ? [] : [point.machineDistance])),
);
export const lineReadings = ofLine((line) => line.map(figureOfPoint));

/** The first reading is of a new part when the part was renewed in its record. */
export const lineBegins = ofLine((line, ask) => {
  const first = line[0]?.point;
  const renewed = asked(ask)?.basis.some((one) => one.from === first?.day) === true;
  return renewed ? 'new' : 'as found';
});

/** Expanded uncertainty of the newest reading, from its instrument. */
export const lineUncertainty = ofLine((line, ask) => {
  const last = line.at(-1);
  if (last === undefined) return undefined;
  const half = expandedUncertainty(last.written, instrumentOf(ask, last.point.instrument));
  const figure = figureOfPoint(last);
  return half === 0 ? undefined : { ...figure, decimals: figure.decimals + 1, quantity: ofSi(half) };
});

/** The end of a limit that wear goes towards. */
export function boundOf(range: WrittenRange): Quantity {
  return range.high ?? range.low ?? ofSi(0);
}

/** The limit of the item as one value. */
export const lineLimit: Taker = (ask) => {
  const limit = asked(ask)?.limit;
  if (limit?.limit === undefined) return undefined;
  const { unit, decimals } = limit.limit;
  const figure: Figure = { quantity: boundOf(limit.limit), unit, decimals, origin: { kind: 'written', at: limit.at } };
  return { value: figure, from: limit.name + ', limit in force' };
};

function newestOf(ask: Ask): ReadPoint | undefined {
  return readPoints(asked(ask), ask.which.at).at(-1);
}

const inWords =
  (words: (last: ReadPoint, series: Series, ask: Ask) => string | undefined): Taker =>
  (ask) => {
    const series = asked(ask);
    const last = newestOf(ask);
    if (series === undefined || last === undefined) return undefined;
    return told([last], words(last, series, ask));
  };

export const readingWords = inWords(({ written: value }) => printQuantity(value.quantity, value.unit, value.decimals));
export const standardWords = inWords((_, { limit }) =>
  limit?.standard === undefined ? undefined : printRange(limit.standard),
);
export const limitWords = inWords((_, { limit }) => (limit?.limit === undefined ? undefined : printRange(limit.limit)));
export const uncertaintyWords = inWords((last, _, ask) => {
  const half = expandedUncertainty(last.written, instrumentOf(ask, last.point.instrument));
  const unit = { ...last.written.unit, offset: 0 };
  return half === 0 ? undefined : withUnit(formatDecimal(inUnit(ofSi(half), unit), last.written.decimals + 1), unit);
});

/** All readings of the newest record of the item, as repeats of one thing. */
export const repeats: Taker = (ask) => {
  const last = newestOf(ask);
  if (last === undefined) return undefined;
  const same = readPoints(asked(ask), ask.which.at).filter(
    ({ point }) => point.job === last.point.job && point.side === last.point.side,
  );
  return told([last], same.map(figureOfPoint));
};
