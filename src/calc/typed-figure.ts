// A figure as it is typed into a field: plain spaces, the decimals that a person would type, and beside it what the text does not say.
import type { Figure } from '../figure/figure.ts';
import { printQuantity } from '../figure/print.ts';
import { inUnit, of } from '../quantity/quantity.ts';
import { readQuantity } from '../quantity/read-quantity.ts';

/** What the text may leave out, as a share of the value: nobody at the bench types more. */
const mayBeLost = 5e-4;
/** Less than this is the arithmetic of the machine, not of the trade. */
const isNothing = 1e-12;
const mostDecimals = 8;

/** The text, with its own decimals where these say enough of it. A band is typed as the point that it stands for. */
export function typedFigure({ quantity, unit, decimals }: Figure): string {
  for (let places = decimals; places < mostDecimals; places += 1) {
    const text = plainSpaces(printQuantity(quantity, unit, places));
    const back = readQuantity(text, unit.dimension);
    if (back.ok && Math.abs(back.value.quantity - quantity) <= Math.abs(quantity) * mayBeLost) return text;
  }
  return plainSpaces(printQuantity(quantity, unit, mostDecimals));
}

function plainSpaces(text: string): string {
  return text.replaceAll(/[\u00a0\u2009\u202f]/gu, ' ');
}

/** What a field cannot show of a figure, in its own unit: how wide it is, and its value where the text is rounded. */
export interface Width {
  readonly exact?: number;
  readonly uncertainty?: number;
  readonly low?: number;
  readonly high?: number;
}

/** What goes with the text of a figure; undefined where the text says all of it. */
export function widthOf(figure: Figure): Width | undefined {
  const { unit, uncertainty, band } = figure;
  const exact = saysAll(figure) ? {} : { exact: inUnit(figure.quantity, unit) };
  if (uncertainty === undefined && band === undefined) return 'exact' in exact ? exact : undefined;
  const half = uncertainty === undefined || unit.inverse === true ? {} : { uncertainty: uncertainty / unit.factor };
  const ends = band === undefined ? {} : { low: inUnit(band.low, unit), high: inUnit(band.high, unit) };
  return { ...exact, ...half, ...ends };
}

function saysAll(figure: Figure): boolean {
  const back = readQuantity(typedFigure(figure), figure.unit.dimension);
  return back.ok && Math.abs(back.value.quantity - figure.quantity) <= Math.abs(figure.quantity) * isNothing;
}

/** The figure as exact and as wide as it was before it was typed; its unit has to be the same. */
export function withWidth(figure: Figure, { exact, uncertainty, low, high }: Width): Figure {
  const { unit } = figure;
  const value = exact === undefined ? {} : { quantity: of(exact, unit) };
  const half = uncertainty === undefined ? {} : { uncertainty: of(uncertainty, { ...unit, offset: 0 }) };
  const band = low === undefined || high === undefined ? {} : { band: { low: of(low, unit), high: of(high, unit) } };
  return { ...figure, ...value, ...half, ...band };
}
