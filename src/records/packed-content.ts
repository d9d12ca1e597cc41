// The content as one text, for the compiled program: what was read once when it was compiled need not be read at every start.
import type { Dimension, Unit } from '../quantity/quantity.ts';
import { units } from '../quantity/units.ts';
import type { Content } from './content-model.ts';

/** Keys that mark what JSON has no words for; no key of content begins like this. */
const mapMark = '$map';
const unitMark = '$unit';

/** Content as text. Units go as their names, so that what is unpacked has the very units of the list. */
export function packContent(content: Content): string {
  return JSON.stringify(content, (_, value: unknown) => {
    if (value instanceof Map) return { [mapMark]: [...value] };
    return isUnit(value) ? { [unitMark]: [value.dimension, value.symbol] } : value;
  });
}

/** Content from its text. Throws when the text was not packed by `packContent` of the same program. */
export function unpackContent(text: string): Content {
  const value: Content = JSON.parse(text);
  mend(value);
  return value;
}

/** Puts maps and units in place of their marks. By hand: a function given to the parser is called for every single text. */
function mend(inside: object): void {
  for (const key in inside) {
    const inner: unknown = Reflect.get(inside, key);
    if (typeof inner !== 'object' || inner === null) continue;
    mend(inner);
    if (mapMark in inner && Array.isArray(inner[mapMark])) Reflect.set(inside, key, new Map(inner[mapMark]));
    else if (unitMark in inner && Array.isArray(inner[unitMark])) Reflect.set(inside, key, unitNamed(inner[unitMark]));
  }
}

function unitNamed([dimension, symbol]: readonly unknown[]): Unit {
  const list = Object.entries(units).find(([name]) => name === dimension)?.[1] ?? [];
  const unit = list.find((each) => each.symbol === symbol);
  if (unit === undefined) throw new Error('the packed content names a unit that there is not');
  return unit;
}

function isUnit(value: unknown): value is Unit<Dimension> {
  return typeof value === 'object' && value !== null && 'symbol' in value && 'dimension' in value && 'factor' in value;
}
