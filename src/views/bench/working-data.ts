// What the script of a working gets from the machine: its values as texts, what may be chosen between, and the words of its dialect.
import { count } from '../wording/count.ts';
import { torqueAsWritten, torqueInOtherUnits } from '../wording/torque.ts';
import { unitsInstead } from '../../book/asked-unit.ts';
import type { Page } from '../../sheet/sheet.ts';
import type { Which } from '../../book/taken/taken.ts';
import type { ViewContext } from '../view.ts';
import { filledFor } from './filled.ts';
import type { Filled } from './filled.ts';
import type { BenchWorking, Passed } from './workings-at-bench.ts';

/** One of several things of the machine: what is said of it, and the values that it brings, by calculation and input. */
interface Chosen {
  readonly name: string;
  readonly says: string;
  readonly values: Readonly<Record<string, Filled['values']>>;
}

type Wanted = Pick<BenchWorking, 'calculations' | 'choice' | 'units'> & { readonly passed?: readonly Passed[] };

/** The data as text; the script of the same name reads it. */
export function workingBench(context: ViewContext, working: Wanted): Page['bench'] {
  const { book, say } = context;
  const isAmerican = book.records.machine.spelling === 'us';
  const data = {
    workings: working.calculations.map((id) => ({ id, ...filledFor(book, id) })),
    passed: working.passed ?? [],
    choice: choiceOf(context, working),
    units: working.units === true,
    asked: unitsInstead(book.records.machine.units),
    words: isAmerican ? book.content.words : [],
  };
  return { script: 'workings.js', label: say('Work it out'), data: JSON.stringify(data) };
}

function choiceOf(context: ViewContext, { choice, calculations }: Wanted): object | undefined {
  const { say } = context;
  if (choice === 'fastener') return { label: say('Fastener of this machine'), among: fasteners(context, calculations) };
  if (choice === 'gear') return { label: say('Gear'), among: gears(context, calculations) };
  return undefined;
}

function fasteners(context: ViewContext, calculations: readonly string[]): readonly Chosen[] {
  const { book, say } = context;
  return book.torque.map((row): Chosen => {
    const { fastener, value } = row;
    const { units } = book.records.machine;
    const torque =
      value === undefined
        ? say('no value of the maker is recorded')
        : [torqueAsWritten(value, units), ...torqueInOtherUnits(value, units)].join(' · ');
    const thread = fastener.thread === undefined ? say('thread not recorded') : fastener.thread;
    const says = [thread, torque, row.note ?? ''].filter((text) => text !== '').join('; ');
    return { name: fastener.name, says, values: brought(context, calculations, { fastener: fastener.id }) };
  });
}

function gears(context: ViewContext, calculations: readonly string[]): readonly Chosen[] {
  const { gears: all } = context.book.records.machine.geometry;
  return all.map((_, index): Chosen => {
    const name = count(index + 1);
    return { name, says: '', values: brought(context, calculations, { 'in-gear': name }) };
  });
}

/** Only what differs from what the machine says when nothing is chosen. */
function brought({ book }: ViewContext, calculations: readonly string[], which: Which): Chosen['values'] {
  return Object.fromEntries(
    calculations.flatMap((id) => {
      const usual = filledFor(book, id).values;
      const here = Object.entries(filledFor(book, id, which).values).filter(([name, text]) => usual[name] !== text);
      return here.length === 0 ? [] : [[id, Object.fromEntries(here)] as const];
    }),
  );
}
