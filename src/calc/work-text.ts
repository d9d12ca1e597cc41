// A calculation as text for the command line: what was given, the result, how it was worked out, and from which sources.
import { isOf } from '../figure/kind.ts';
import type { Figure } from '../figure/figure.ts';
import { printFigure, printIn, printWithUncertainty } from '../figure/print.ts';
import { kilogramForceMetre, newtonMetre, poundForceFoot } from '../quantity/units.ts';
import { table } from '../table/table.ts';
import type { Calculation, Doubt, Worked } from './calculation.ts';
import { calculationById, calculations } from './list.ts';
import { workOut } from './work.ts';

export interface WorkText {
  readonly lines: readonly string[];
  readonly doubts: readonly Doubt[];
}

/** `bore=50 mm` and `stroke = 44.5 mm` as names and values; a word without `=` is told apart. */
export function readGiven(words: readonly string[]): {
  readonly given: Readonly<Record<string, string>>;
  readonly strange: readonly string[];
} {
  const pairs = words.filter((word) => word.includes('='));
  const given = pairs.map(
    (word) => [word.slice(0, word.indexOf('=')).trim(), word.slice(word.indexOf('=') + 1).trim()] as const,
  );
  return { given: Object.fromEntries(given), strange: words.filter((word) => !word.includes('=')) };
}

/** A torque in the three units of the trade, any other figure in its own with its uncertainty. */
function resultText(figure: Figure): string {
  if (!isOf(figure, 'torque')) return printWithUncertainty(figure);
  const three = [
    printIn(figure, newtonMetre, 1),
    printIn(figure, kilogramForceMetre, 2),
    printIn(figure, poundForceFoot, 1),
  ];
  return three.join(' · ');
}

/** Where a figure that went in comes from: as given, or a row of a published table with its source. */
function originText(figure: Figure): string {
  if (figure.origin.kind !== 'published') return '';
  const row = table(figure.origin.table).byId.get(figure.origin.row);
  return (
    ' (' +
    table(figure.origin.table).about.title +
    ', ' +
    figure.origin.row +
    (row === undefined ? '' : '; ' + row.source) +
    ')'
  );
}

/** Each result as a line: its name, and the figure or the words. */
export function resultLines(calculation: Calculation, worked: Worked): readonly string[] {
  return Object.entries(calculation.outputs).flatMap(([name, output]) => {
    const figure = worked.figures[name];
    const said = worked.words[name];
    if (figure !== undefined) return [output.name + ': ' + resultText(figure)];
    return said === undefined ? [] : [output.name + ': ' + said];
  });
}

/** How it was worked out, a line each: formula, inputs, remarks, range, source. */
export function workingLines(calculation: Calculation, worked: Worked): readonly string[] {
  const origin = Object.values(worked.figures)[0]?.origin;
  const inputs = origin?.kind === 'worked out' ? origin.working.inputs : [];
  return [
    'formula: ' + calculation.formula,
    ...inputs.map(
      ({ symbol, name, figure }) =>
        [symbol, name].filter((part) => part !== '').join(', ') + ' = ' + printFigure(figure) + originText(figure),
    ),
    ...worked.remarks,
    'holds for: ' + calculation.range,
    'source: ' + calculation.source,
  ];
}

/** Works a calculation out from words of the command line; results first, then the working. */
export function workText(id: string, words: readonly string[]): WorkText {
  const calculation = calculationById(id);
  const { given, strange } = readGiven(words);
  const worked = workOut(id, given);
  const odd = strange.map((word): Doubt => ({
    code: 'calculation-value-wrong',
    severity: 'problem',
    message: '“' + word + '” is not name=value',
  }));
  const doubts = [...odd, ...worked.doubts];
  if (calculation === undefined || odd.length > 0) return { lines: [], doubts };
  const results = resultLines(calculation, worked);
  if (results.length === 0) return { lines: ['values of ' + id + ':', ...inputLines(calculation)], doubts };
  return { lines: [calculation.name, ...results, '', ...workingLines(calculation, worked)], doubts };
}

/** The values that a calculation takes, one a line, and its example. */
export function inputLines(calculation: Calculation): readonly string[] {
  const lines = Object.entries(calculation.inputs).map(([name, input]) => {
    const unit = input.kind === 'words' ? (input.among ?? []).join(' | ') : input.unit.symbol;
    const several = input.kind === 'list' ? 'several, with ; between them' : '';
    const notes = [input.name, unit, several, input.optional === true ? 'may be left out' : ''].filter(
      (note) => note !== '',
    );
    return '  ' + name + ': ' + notes.join(', ');
  });
  const example = Object.entries(calculation.example.given).map(([name, value]) => "'" + name + '=' + value + "'");
  return [...lines, 'example: splitpin work ' + calculation.id + ' ' + example.join(' ')];
}

/** Every calculation: id and purpose. */
export function listLines(): readonly string[] {
  return calculations.map((calculation) => calculation.id.padEnd(24) + calculation.purpose);
}
