// A figure as it is typed into a field: plain spaces, and as many decimals as it takes to read the same value back.
import type { Figure } from '../figure/figure.ts';
import { printQuantity } from '../figure/print.ts';
import { inUnit, of } from '../quantity/quantity.ts';
import { readQuantity } from '../quantity/read-quantity.ts';

/** What may be lost on the way, as a share of the value: less than any result shows. */
const mayBeLost = 1e-7;
const mostDecimals = 8;

/** The text, with its own decimals where these say all of it. A band is typed as the point that it stands for. */
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

/** How wide a figure is, in its own unit: what a field cannot show of it. */
export interface Width {
  readonly uncertainty?: number;
  readonly low?: number;
  readonly high?: number;
}

/** The width of a figure that has one. */
export function widthOf({ unit, uncertainty, band }: Figure): Width | undefined {
  if (uncertainty === undefined && band === undefined) return undefined;
  const half = uncertainty === undefined || unit.inverse === true ? {} : { uncertainty: uncertainty / unit.factor };
  const ends = band === undefined ? {} : { low: inUnit(band.low, unit), high: inUnit(band.high, unit) };
  return { ...half, ...ends };
}

/** The figure as wide as it was before it was typed; its unit has to be the same. */
export function withWidth(figure: Figure, { uncertainty, low, high }: Width): Figure {
  const { unit } = figure;
  const half = uncertainty === undefined ? {} : { uncertainty: of(uncertainty, { ...unit, offset: 0 }) };
  const band = low === undefined || high === undefined ? {} : { band: { low: of(low, unit), high: of(high, unit) } };
  return { ...figure, ...half, ...band };
}
