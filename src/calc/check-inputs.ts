// Checks what is given to a calculation before anything is worked out: missing, of another kind, outside the range of the formula.
import type { Figure } from '../figure/figure.ts';
import { printQuantity } from '../figure/print.ts';
import { inUnit, of } from '../quantity/quantity.ts';
import type { Doubt, Value, Values } from './calculation.ts';
import { doubtOf } from './calculation.ts';
import type { Input, Inputs, ListInput, QuantityInput } from './input.ts';

function missing(name: string, input: Input): readonly Doubt[] {
  if (input.optional === true) return [];
  return [doubtOf('calculation-value-missing', input.name + ' is not given', name)];
}

function outside(name: string, input: QuantityInput | ListInput, figure: Figure): readonly Doubt[] {
  if (figure.unit.dimension !== input.unit.dimension) {
    return [
      doubtOf(
        'calculation-value-wrong',
        input.name + ' is given as ' + figure.unit.dimension + '; ' + input.unit.dimension + ' is wanted',
        name,
      ),
    ];
  }
  const value = inUnit(figure.quantity, input.unit);
  return isPlainlyInside(value, input) ? [] : whyOutside(name, input, figure, value);
}

/** Nearly every value is; the words about the others are made only for them. */
function isPlainlyInside(value: number, input: QuantityInput | ListInput): boolean {
  if (!Number.isFinite(value) || input.whole === true) return false;
  const [least, most] = input.usual ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const low = Math.max(least, input.low ?? Number.NEGATIVE_INFINITY);
  const high = Math.min(most, input.high ?? Number.POSITIVE_INFINITY);
  return value >= low && value <= high && value > (input.above ?? Number.NEGATIVE_INFINITY);
}

function whyOutside(name: string, input: QuantityInput | ListInput, figure: Figure, value: number): readonly Doubt[] {
  const told = input.name + ' of ' + printQuantity(figure.quantity, figure.unit, figure.decimals);
  const bound = (limit: number): string =>
    printQuantity(of(limit, input.unit), input.unit, Number.isInteger(limit) ? 0 : 2);
  // A value written in another unit may miss a bound by rounding only.
  const slack = 1e-9 * Math.max(1, Math.abs(value));
  const wrong = (why: string): readonly Doubt[] => [doubtOf('calculation-out-of-range', told + why, name)];
  if (!Number.isFinite(value)) return wrong(' is not a number');
  if (input.above !== undefined && value <= input.above) return wrong(' must be more than ' + bound(input.above));
  if (input.low !== undefined && value < input.low - slack)
    return wrong(' is below ' + bound(input.low) + ', where the formula begins');
  if (input.high !== undefined && value > input.high + slack)
    return wrong(' is above ' + bound(input.high) + ', where the formula ends');
  if (input.whole === true && Math.abs(value - Math.round(value)) > slack) return wrong(' must be a whole number');
  if (input.usual === undefined || (value >= input.usual[0] - slack && value <= input.usual[1] + slack)) return [];
  const usual = ' is outside the usual ' + bound(input.usual[0]) + ' to ' + bound(input.usual[1]);
  return [doubtOf('calculation-unlikely', told + usual, name)];
}

function checkOne(name: string, input: Input, value: Value | undefined): readonly Doubt[] {
  if (value === undefined || value === '' || (Array.isArray(value) && value.length === 0)) return missing(name, input);
  if (input.kind === 'words') {
    if (typeof value !== 'string')
      return [doubtOf('calculation-value-wrong', input.name + ' is given as a quantity; words are wanted', name)];
    if (input.among === undefined || input.among.includes(value)) return [];
    return [
      doubtOf(
        'calculation-value-wrong',
        input.name + ' is “' + value + '”; one of ' + input.among.join(', ') + ' is wanted',
        name,
      ),
    ];
  }
  if (typeof value === 'string')
    return [doubtOf('calculation-value-wrong', input.name + ' is “' + value + '”; a quantity is wanted', name)];
  const figures = 'unit' in value ? [value] : value;
  if (input.kind === 'quantity' && figures.length !== 1) {
    return [doubtOf('calculation-value-wrong', 'several values are given for ' + input.name + '; one is wanted', name)];
  }
  return figures.flatMap((figure) => outside(name, input, figure));
}

/** Every doubt about what is given, in the order of the inputs; names that are not inputs at the end. */
export function checkInputs(inputs: Inputs, values: Values): readonly Doubt[] {
  const known = Object.entries(inputs).flatMap(([name, input]) => checkOne(name, input, values[name]));
  const strange = Object.keys(values).filter((name) => values[name] !== undefined && inputs[name] === undefined);
  return [
    ...known,
    ...strange.map((name) =>
      doubtOf('calculation-value-wrong', '“' + name + '” is not a value of this calculation', name),
    ),
  ];
}
