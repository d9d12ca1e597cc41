// The shelf as lines: every calculation by group, and one of them with its inputs and its example.
import { groups } from './groups.ts';
import { calculationById, calculations } from './list.ts';
import { inputLines } from './work-text.ts';

/** Every calculation by group, a line each. */
export function groupedLines(): readonly string[] {
  return groups().flatMap((group, index) => [
    ...(index === 0 ? [] : ['']),
    group.name,
    ...group.calculations.map((one) => '  ' + one.id.padEnd(24) + one.purpose),
  ]);
}

/** What a calculation is for, its formula, its inputs with units, its range and its example; undefined when there is none. */
export function aboutLines(id: string): readonly string[] | undefined {
  const one = calculationById(id);
  if (one === undefined) return undefined;
  const gives = Object.entries(one.example.gives).map(
    ([name, value]) => '    ' + (one.outputs[name]?.name ?? name) + ': ' + value,
  );
  return [
    one.name + ': ' + one.purpose,
    '  ' + one.formula,
    'values',
    ...inputLines(one),
    ...gives,
    'holds for: ' + one.range,
    'source: ' + one.source,
  ];
}

/** Ids of the calculations that say a word of themselves, in their name or in what they are for: `sprocket`. */
export function calculationsThatSay(word: string): readonly string[] {
  const small = word.toLowerCase();
  return calculations
    .filter(({ name, purpose }) => `${name} ${purpose}`.toLowerCase().includes(small))
    .map(({ id }) => id);
}

/** Ids of all calculations. */
export function calculationIds(): readonly string[] {
  return calculations.map((one) => one.id);
}
