// Carries uncertainty and bands from what goes in to what comes out, by working the formula out again at their ends.
import type { Figure } from '../figure/figure.ts';
import { ofSi } from '../quantity/quantity.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { AnyResults, Result, Values } from './calculation.ts';

type Again = (values: Values) => AnyResults;
type Named = readonly [name: string, figure: Figure];
type Ends = readonly [number | undefined, number | undefined];

function shifted(figure: Figure, quantity: Quantity): Figure {
  return { unit: figure.unit, decimals: figure.decimals, origin: figure.origin, quantity };
}

function moved(figure: Figure, sign: 1 | -1): Figure {
  return shifted(figure, ofSi(figure.quantity + sign * (figure.uncertainty ?? 0)));
}

/** Figures given singly, with their names; lists keep their own scatter. */
function singles(values: Values): readonly Named[] {
  return Object.entries(values).flatMap(([name, value]): readonly Named[] => {
    if (value === undefined || typeof value === 'string' || !('unit' in value)) return [];
    return [[name, value]];
  });
}

/** Every choice of the low and high ends of the bands that went in (four bands at most are taken). */
function corners(values: Values, banded: readonly Named[]): readonly Values[] {
  let made: readonly Values[] = [values];
  for (const [name, figure] of banded.slice(0, 4)) {
    const ends = [figure.band?.low, figure.band?.high].map((end) => shifted(figure, end ?? figure.quantity));
    made = made.flatMap((one) => ends.map((end) => ({ ...one, [name]: end })));
  }
  return made;
}

function numbersOf(result: AnyResults[string]): readonly number[] {
  if (result === undefined || typeof result === 'string') return [];
  if (typeof result === 'number') return [result];
  return [result.low ?? result.value, result.high ?? result.value];
}

function widen(result: AnyResults[string], pairs: readonly Ends[], ends: readonly number[]): AnyResults[string] {
  if (result === undefined || typeof result === 'string') return result;
  const base: Result = typeof result === 'number' ? { value: result } : result;
  const squares = pairs.map(([up, down]) => (((up ?? base.value) - (down ?? base.value)) / 2) ** 2);
  const half = Math.sqrt(squares.reduce((sum, square) => sum + square, (base.uncertainty ?? 0) ** 2));
  const sure = half > 0 ? { ...base, uncertainty: half } : base;
  if (ends.length === 0) return sure;
  return { ...sure, low: Math.min(...ends), high: Math.max(...ends) };
}

/** The results with half widths and bands added, where what went in had any; `again` works the formula out once more. */
export function spread(values: Values, results: AnyResults, again: Again): AnyResults {
  const figures = singles(values);
  const unsure = figures.filter(([, figure]) => figure.uncertainty !== undefined);
  const banded = figures.filter(([, figure]) => figure.band !== undefined);
  if (unsure.length === 0 && banded.length === 0) return results;
  const pairs = unsure.map(
    ([name, figure]) =>
      [again({ ...values, [name]: moved(figure, 1) }), again({ ...values, [name]: moved(figure, -1) })] as const,
  );
  const ends = banded.length === 0 ? [] : corners(values, banded).map(again);
  const wider = Object.keys(results).map((name) => {
    const both = pairs.map(([up, down]): Ends => [numbersOf(up[name])[0], numbersOf(down[name])[0]]);
    return [
      name,
      widen(
        results[name],
        both,
        ends.flatMap((end) => numbersOf(end[name])),
      ),
    ] as const;
  });
  return Object.fromEntries(wider);
}
