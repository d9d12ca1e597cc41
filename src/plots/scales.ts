// From readings to places on the plot: two linear scales with rounded ends, and their ticks in words.
import { scaleLinear, scaleUtc } from 'd3-scale';
import type { PlotBlock } from '../sheet/sheet.ts';

export interface Tick {
  readonly at: number;
  readonly label: string;
}
export interface Scale {
  /** Place on the plot, in points, of a value. */
  readonly place: (value: number) => number;
  readonly ticks: readonly Tick[];
}
export interface Span {
  readonly from: number;
  readonly to: number;
}

const dayLength = 86_400_000;

/** A span that is never empty and leaves a little air at both ends. */
export function padded(values: readonly number[], air: number): Span {
  const known = values.filter((value) => Number.isFinite(value));
  if (known.length === 0) return { from: 0, to: 1 };
  const low = Math.min(...known);
  const high = Math.max(...known);
  const width = high - low || Math.abs(high) * 0.1 || 1;
  return { from: low - width * air, to: high + width * air };
}

/** Scale of plain numbers over a span, drawn from `start` to `end`, with about `count` ticks; `counts` where all values are whole. */
export function numberScale(span: Span, start: number, end: number, count: number, counts = false): Scale {
  const scale = scaleLinear().domain([span.from, span.to]).range([start, end]);
  const all = scale.ticks(count);
  const whole = all.filter((value) => Number.isInteger(value));
  // Where only whole numbers can stand, as in a count of things, nothing is marked between them.
  const values = counts && whole.length >= 2 ? whole : all;
  const decimals = decimalsOf(values);
  return {
    place: (value) => scale(value),
    ticks: values.map((value) => ({ at: scale(value), label: grouped(value, decimals) })),
  };
}

/** Scale of calendar days (day numbers since 1970-01-01); ticks fall on days, months or years. */
export function dayScale(span: Span, start: number, end: number, count: number): Scale {
  const domain = [new Date(Math.floor(span.from) * dayLength), new Date(Math.ceil(span.to) * dayLength)];
  const scale = scaleUtc().domain(domain).range([start, end]);
  const dates = scale.ticks(count).filter((date) => date.getTime() % dayLength === 0);
  const label = dayLabel(dates);
  return {
    place: (day) => scale(new Date(day * dayLength)),
    ticks: dates.map((date) => ({ at: scale(date), label: label(date) })),
  };
}

/** The x scale that a plot asks for. */
export function xScale(plot: PlotBlock, start: number, end: number): Scale {
  const values = plot.series.flatMap((series) => series.points.map((point) => point.x));
  const span = padded(values, 0.04);
  const count = Math.max(2, Math.floor((end - start) / 80));
  return plot.x.kind === 'day' ? dayScale(span, start, end, count) : numberScale(span, start, end, count);
}

/** The y scale that a plot asks for: it always takes in the limits. */
export function yScale(plot: PlotBlock, start: number, end: number): Scale {
  const values = plot.series.flatMap((series) => series.points.map((point) => point.y));
  const limits = plot.limits.map((limit) => limit.y);
  const count = Math.max(2, Math.floor(Math.abs(end - start) / 32));
  const all = [...values, ...limits];
  return numberScale(padded(all, 0.06), start, end, count, all.every(Number.isInteger));
}

/** ISO dates as short as the ticks allow: year, year and month, or the day. */
function dayLabel(dates: readonly Date[]): (date: Date) => string {
  const onlyMonths = dates.every((date) => date.getUTCDate() === 1);
  const onlyYears = onlyMonths && dates.every((date) => date.getUTCMonth() === 0);
  const length = onlyYears ? 4 : onlyMonths ? 7 : 10;
  return (date) => date.toISOString().slice(0, length);
}

/** The decimals that the ticks of a scale need, taken from the distance between them. */
function decimalsOf(values: readonly number[]): number {
  const [first, second] = values;
  if (first === undefined || second === undefined) return 0;
  return Math.max(0, Math.min(8, -Math.floor(Math.log10(Math.abs(second - first)) + 1e-9)));
}

/** A tick value with a thin space for thousands from five digits and a true minus. */
function grouped(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  const [whole = '', part] = text.split('.');
  const spaced = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  const sign = value < 0 && Number(text) !== 0 ? '\u2212' : '';
  return sign + spaced + (part === undefined ? '' : '.' + part);
}
