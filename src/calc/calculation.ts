// The common shape of every calculation: declared inputs and outputs, a source, an example, and one function that works it out.
import { isOf } from '../figure/kind.ts';
import type { Figure, Working } from '../figure/figure.ts';
import { codes } from '../problem/codes.ts';
import type { ProblemCode } from '../problem/codes.ts';
import type { Severity } from '../problem/problem.ts';
import { of } from '../quantity/quantity.ts';
import { checkInputs } from './check-inputs.ts';
import { makeGiven } from './given.ts';
import type { Given, Notes } from './given.ts';
import type { Inputs, Outputs, QuantityOutput } from './input.ts';
import { spread } from './spread.ts';

/** What is given, by the names of the inputs. */
export type Value = Figure | readonly Figure[] | string;
export type Values = Readonly<Record<string, Value | undefined>>;

/** Something wrong or unlikely with what was given; the place is added by whoever knows it. */
export interface Doubt {
  readonly code: ProblemCode;
  readonly severity: Severity;
  readonly message: string;
  readonly hint?: string;
  readonly input?: string;
}

/** A result in the unit of its output: a number, or one with its band or its own half width of uncertainty. */
export interface Result {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly uncertainty?: number;
}

export type Results<O extends Outputs> = { readonly [K in keyof O]?: number | Result | string | undefined };

/** The same, by name only. */
export type AnyResults = Readonly<Record<string, number | Result | string | undefined>>;

/** What a calculation gives: named figures with their working, named words, and doubts. */
export interface Worked {
  readonly figures: Readonly<Record<string, Figure>>;
  readonly words: Readonly<Record<string, string>>;
  readonly remarks: readonly string[];
  readonly doubts: readonly Doubt[];
}

export interface Example {
  /** As a person would write it. */
  readonly given: Readonly<Record<string, string>>;
  /** As it is printed. */
  readonly gives: Readonly<Record<string, string>>;
}

export interface Definition<I extends Inputs, O extends Outputs> {
  /** Permanent: the name in the list, on the command line, and of its page. */
  readonly id: string;
  readonly name: string;
  /** What it is for, in one sentence. */
  readonly purpose: string;
  /** As it is set on paper. */
  readonly formula: string;
  readonly inputs: I;
  readonly outputs: O;
  /** Where the formula holds. */
  readonly range: string;
  readonly source: string;
  /** Tables whose rows it uses or is tested against. */
  readonly tables: readonly string[];
  /** Ids of cautions of the content: what can hurt where its values are read or its result is used. */
  readonly cautions: readonly string[];
  readonly example: Example;
  /** Plain numbers in the units of the inputs in, plain numbers in the units of the outputs out. */
  readonly work: (given: Given<I>) => Results<O>;
}

/** A calculation as the list holds it: typed by name only. */
export interface Calculation extends Omit<Definition<Inputs, Outputs>, 'work'> {
  readonly run: (values: Values) => Worked;
}

/** A doubt with the severity of its code. */
export function doubtOf(code: ProblemCode, message: string, input?: string): Doubt {
  const base = { code, severity: codes[code], message };
  return input === undefined ? base : { ...base, input };
}

/** The unit that a result is printed in, and its decimals there. */
function printedIn(output: QuantityOutput, values: Values): Pick<Figure, 'unit' | 'decimals'> {
  const like = output.like === undefined ? undefined : values[output.like];
  const figure = like === undefined || typeof like === 'string' ? undefined : 'unit' in like ? like : like[0];
  if (figure === undefined || !isOf(figure, output.unit.dimension) || figure.unit === output.unit) return output;
  const step = Math.round(Math.log10(figure.unit.factor / output.unit.factor));
  return { unit: figure.unit, decimals: Math.max(0, Math.min(6, output.decimals + step)) };
}

function figureFrom(result: Result, output: QuantityOutput, values: Values, working: Working): Figure {
  const { unit, decimals } = printedIn(output, values);
  const base = {
    quantity: of(result.value, output.unit),
    unit,
    decimals,
    origin: { kind: 'worked out', working },
  } as const;
  const zero = of(0, output.unit);
  const sure =
    result.uncertainty === undefined
      ? base
      : { ...base, uncertainty: differ(of(result.uncertainty, output.unit), zero, output) };
  if (result.low === undefined || result.high === undefined) return sure;
  return { ...sure, band: { low: of(result.low, output.unit), high: of(result.high, output.unit) } };
}

/** A half width on a scale with an offset is a step, not a point of the scale. */
function differ(end: Figure['quantity'], zero: Figure['quantity'], output: QuantityOutput): Figure['quantity'] {
  const unit = output.unit;
  if (unit.offset === undefined) return end;
  return of((end - zero) / unit.factor, { ...unit, offset: 0 });
}

function normal(value: number | Result | string | undefined): Result | string | undefined {
  return typeof value === 'number' ? { value } : value;
}

/**
 * Declares a calculation; add it to list.ts. Running it checks what is given (missing, of another kind, out of range),
 * works it out once, and again at the ends of each uncertainty and band that went in, so that uncertainty is carried to
 * the result (first order, independent inputs: JCGM 100). A result that is not a finite number is withheld.
 */
export function calculation<const I extends Inputs, const O extends Outputs>(
  definition: Definition<I, O>,
): Calculation {
  const { work, ...declared } = definition;
  const run = (values: Values): Worked => {
    const wrong = checkInputs(definition.inputs, values);
    if (wrong.some((doubt) => doubt.severity === 'problem'))
      return { figures: {}, words: {}, remarks: [], doubts: wrong };
    const notes: Notes = { used: [], remarks: [], doubts: [...wrong] };
    const results = work(makeGiven(definition.inputs, values, notes));
    const again = (changed: Values): AnyResults =>
      work(makeGiven(definition.inputs, changed, { used: [], remarks: [], doubts: [] }));
    return finish(definition, values, notes, spread(values, results, again));
  };
  return { ...declared, run };
}

function finish(
  definition: Pick<Calculation, 'id' | 'formula' | 'source' | 'outputs'>,
  values: Values,
  notes: Notes,
  results: AnyResults,
): Worked {
  const working: Working = {
    calculation: definition.id,
    formula: definition.formula,
    inputs: notes.used,
    source: definition.source,
    remarks: notes.remarks,
  };
  const figures: Record<string, Figure> = {};
  const words: Record<string, string> = {};
  for (const [name, output] of Object.entries(definition.outputs)) {
    const found = normal(results[name]);
    if (typeof found === 'string') words[name] = found;
    else if (found !== undefined && output.kind === 'quantity' && Number.isFinite(found.value))
      figures[name] = figureFrom(found, output, values, working);
    else if (found !== undefined)
      notes.doubts.push(doubtOf('calculation-out-of-range', output.name + ' cannot be worked out from these values'));
  }
  return { figures, words, remarks: notes.remarks, doubts: notes.doubts };
}
