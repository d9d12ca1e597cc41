// Finds a unit by any spelling of it; the maps are made once, so that reading thousands of values stays cheap.
import type { Dimension, Unit } from './quantity.ts';
import { dimensions, units } from './units.ts';

/** One spelling for all the ways to set the same letters: without spaces, points, hyphens; squares and micro signs as one. */
export function spellingKey(text: string): string {
  return text
    .replace(/\s+per\s+/gi, '/')
    .replace(/[\s·•⋅∙*.\-\u2010\u2011\u2013_]/g, '')
    .replace(/\^?[2²]$|²|\^2/g, '2')
    .replace(/\^?[3³]$|³|\^3/g, '3')
    .replace(/[º˚]/g, '°')
    .replaceAll('\u2126', '\u03a9')
    .replaceAll('\u00b5', '\u03bc');
}

interface Spellings {
  readonly exact: ReadonlyMap<string, Unit>;
  /** Without regard to capitals; a spelling that then means two units is left out. */
  readonly loose: ReadonlyMap<string, Unit>;
}

function spellingsOf(list: readonly Unit[]): Spellings {
  const exact = new Map<string, Unit>();
  const loose = new Map<string, Unit>();
  const torn = new Set<string>();
  for (const unit of list) {
    for (const spelling of [unit.symbol, ...unit.spellings]) {
      const key = spellingKey(spelling);
      if (!exact.has(key)) exact.set(key, unit);
      const lower = key.toLowerCase();
      const other = loose.get(lower);
      if (other === undefined) loose.set(lower, unit);
      else if (other !== unit && other.dimension === unit.dimension) torn.add(lower);
    }
  }
  for (const key of torn) loose.delete(key);
  return { exact, loose };
}

const byDimension = new Map<Dimension, Spellings>();
let anyDimension: Spellings | undefined;

function spellings(dimension: Dimension): Spellings {
  const known = byDimension.get(dimension);
  if (known !== undefined) return known;
  const made = spellingsOf(units[dimension]);
  byDimension.set(dimension, made);
  return made;
}

function allSpellings(): Spellings {
  anyDimension ??= spellingsOf(dimensions.flatMap((dimension): readonly Unit[] => units[dimension]));
  return anyDimension;
}

function lookUp(maps: Spellings, text: string): Unit | undefined {
  const direct = maps.exact.get(text);
  if (direct !== undefined) return direct;
  const key = spellingKey(text);
  return maps.exact.get(key) ?? maps.loose.get(key.toLowerCase());
}

/** The unit of that dimension with this spelling. */
export function unitOf<D extends Dimension>(text: string, dimension: D): Unit<D> | undefined {
  // The map of a dimension holds units of that dimension only.
  return lookUp(spellings(dimension), text) as Unit<D> | undefined;
}

/** The unit with this spelling in whatever dimension it is likeliest to be meant. */
export function anyUnitOf(text: string): Unit | undefined {
  return lookUp(allSpellings(), text);
}

/** Every spelling key of a dimension with its unit, for near misses. */
export function spellingEntries(dimension: Dimension): Iterable<readonly [string, Unit]> {
  return spellings(dimension).exact;
}
