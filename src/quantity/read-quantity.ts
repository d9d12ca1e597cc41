// One value with its unit, as a person writes it: `2.2 kgf·m`, `14 thou`, `25:1`, `3 h 20 min`.
import { of } from './quantity.ts';
import type { Dimension, Quantity, Read, Unit, Written } from './quantity.ts';
import { readNumber, refuse, tooLong } from './read-number.ts';
import { aKind, symbolsOf, unitRefusal } from './unit-refusal.ts';
import { anyUnitOf, unitOf } from './unit-spelling.ts';
import { oneTo, toOne } from './units.ts';

const numberThenUnit =
  /^([+\-−]?\s*[\d.,½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞](?:[\d.,/\u2044\s½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞-]*[\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])?)\s*(.*)$/;
const ratioForm = /^([\d.,\s/½¼¾]+?)\s*:\s*([\d.,\s/½¼¾]+)$/;
const clockForm = /^(\d+):([0-5]\d)$/;
const pieces = /(\d[\d.,]*)\s*([^\d\s.,][^\d]*)/g;
const rangeForm = /\d\s*(?:[-–—…]|to)\s*[\d.]|±|\+\/-/;
/** Dimensions that people write in two units at once, the larger first. */
const compound: ReadonlySet<Dimension> = new Set(['duration', 'running time', 'length', 'mass', 'calendar time']);
const bare: ReadonlySet<Dimension> = new Set(['count', 'specific gravity', 'ratio']);

type Find = (text: string) => Unit | undefined;

function written(quantity: Quantity, unit: Unit, decimals: number, text: string): Read<Written> {
  return { ok: true, value: { quantity, unit, decimals, text } };
}

function readRatio(text: string): Read<Written> | undefined {
  const parts = ratioForm.exec(text);
  if (parts === null) return undefined;
  const left = readNumber(parts[1] ?? '');
  const right = readNumber(parts[2] ?? '');
  if (!left.ok) return left;
  if (!right.ok) return right;
  if (left.value.value <= 0 || right.value.value <= 0) return refuse('number-unreadable', `“${text}” is not a ratio`);
  if (left.value.value === 1 && right.value.value !== 1) {
    return written(of(right.value.value, oneTo), oneTo, right.value.decimals, text);
  }
  const value = left.value.value / right.value.value;
  const decimals = right.value.value === 1 ? left.value.decimals : 3;
  return written(of(value, toOne), toOne, decimals, text);
}

/** `3 h 20 min`, `5 ft 6 in`: one dimension, each unit smaller than the one before; kept in the last unit. */
function readCompound(text: string, find: Find): Read<Written> | undefined {
  const found = [...text.matchAll(pieces)];
  if (found.length < 2 || found.map((piece) => piece[0]).join('').length !== text.length) return undefined;
  let total = 0;
  let last: { unit: Unit; decimals: number } | undefined;
  for (const [, digits = '', name = ''] of found) {
    const number = readNumber(digits);
    const unit = find(name.trim());
    if (!number.ok || unit === undefined || !compound.has(unit.dimension)) return undefined;
    if (last !== undefined && (unit.dimension !== last.unit.dimension || unit.factor >= last.unit.factor))
      return undefined;
    total += of(number.value.value, unit);
    last = { unit, decimals: number.value.decimals };
  }
  return last === undefined ? undefined : written(total as Quantity, last.unit, last.decimals, text);
}

/** The text goes on after the digits in a way that no unit does: `6?.8 bar`, `1e3 mm`. */
function notUnderstood(text: string): Read<Written> {
  const read = readNumber(text);
  return read.ok ? refuse('number-unreadable', `“${text}” is not a value with a unit`) : read;
}

function missingUnit(text: string, dimension: Dimension | undefined): Read<Written> {
  const message = `“${text}” has no unit`;
  if (dimension === undefined)
    return refuse('unit-missing', message, 'write the unit after the number, for example “' + text + ' mm”');
  return refuse(
    'unit-missing',
    `${message}; ${aKind(dimension)} is wanted here`,
    `write one of ${symbolsOf(dimension)} after it`,
  );
}

function read(text: string, find: Find, dimension: Dimension | undefined): Read<Written> {
  const trimmed = text.trim();
  const long = tooLong(trimmed);
  if (long !== undefined) return long;
  const parts = numberThenUnit.exec(trimmed);
  if (parts === null)
    return refuse(
      'number-unreadable',
      `“${trimmed}” does not begin with a number`,
      'write a number and its unit, or ? while it is not known',
    );
  const digits = parts[1] ?? '';
  const name = parts[2] ?? '';
  const unit = name === '' && (dimension === undefined || !bare.has(dimension)) ? undefined : find(name);
  const mayBeRatio = name.startsWith(':') && (dimension === undefined || dimension === 'ratio');
  const ratio = mayBeRatio ? readRatio(trimmed) : undefined;
  if (ratio !== undefined) return ratio;
  const [, hours, minutes] = (dimension === 'duration' ? clockForm.exec(trimmed) : null) ?? [];
  if (hours !== undefined && minutes !== undefined)
    return refuse('number-unreadable', `“${trimmed}” may be hours and minutes`, `write “${hours} h ${minutes} min”`);
  const number = readNumber(digits, unit === undefined ? '' : trimmed.slice(digits.length));
  if (!number.ok) {
    if (!rangeForm.test(trimmed)) return number;
    return refuse('number-unreadable', `“${trimmed}” is a range; one value is wanted here`, 'write one value');
  }
  if (unit !== undefined) return written(of(number.value.value, unit), unit, number.value.decimals, trimmed);
  if (name === '' && dimension === 'ratio')
    return written(of(number.value.value, toOne), toOne, number.value.decimals, trimmed);
  if (name === '') return missingUnit(trimmed, dimension);
  if (/^(?:[^\p{L}"'″′°µ%×]|e[+−-]?\d)/iu.test(name)) return notUnderstood(trimmed);
  const several = readCompound(trimmed, find);
  if (several !== undefined) return several;
  if (rangeForm.test(trimmed)) {
    return refuse('number-unreadable', `“${trimmed}” is a range; one value is wanted here`, 'write one value');
  }
  return { ok: false, why: unitRefusal(name, digits, dimension) };
}

/**
 * Reads one value of a known dimension. A bare number is read only where the dimension has no unit (count, ratio,
 * specific gravity). The written unit, decimals and text are kept.
 * @example readQuantity('2.5 m-kg', 'torque') // kgf·m, one decimal, 24.517 N·m inside
 */
export function readQuantity<D extends Dimension>(text: string, dimension: D): Read<Written<D>> {
  // Units come from the map of this dimension only, so the quantity is of it.
  return read(text, (name) => unitOf(name, dimension), dimension) as Read<Written<D>>;
}

/** Reads one value whose unit tells the dimension; of a unit that several have, the likeliest (`psi` is gauge pressure). */
export function readAnyQuantity(text: string): Read<Written> {
  return read(text, anyUnitOf, undefined);
}
