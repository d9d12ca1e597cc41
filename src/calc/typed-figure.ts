// A figure as it is typed into a field: plain spaces, and as many decimals as it takes to read the same value back.
import type { Figure } from '../figure/figure.ts';
import { printQuantity } from '../figure/print.ts';
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
