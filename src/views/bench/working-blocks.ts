// A working as it stands on its page without a script: what the machine says, what comes out, and what is still needed.
import type { Calculation } from '../../calc/calculation.ts';
import { calculationById } from '../../calc/list.ts';
import type { Value } from '../../calc/calculation.ts';
import { calculationOn } from '../../book/taken/on-machine.ts';
import { resultLines, workingLines } from '../../calc/work-text.ts';
import type { Block, Row, Text } from '../../sheet/sheet.ts';
import { calculationFile } from '../calculations.ts';
import type { ViewContext } from '../view.ts';
import { calculationCautions } from '../wording/calculation-cautions.ts';
import { withLastDay } from '../wording/day.ts';
import { column, heading, lines, paragraphs, row, sentence, stack } from '../wording/blocks.ts';
import { resultText } from '../wording/figure.ts';
import { unitTables } from './unit-tables.ts';
import type { BenchWorking } from './workings-at-bench.ts';

/** All blocks of a working’s page; the script puts a form below the heading of each calculation. */
export function workingBlocks(context: ViewContext, working: BenchWorking): readonly Block[] {
  const { say } = context;
  return stack(
    paragraphs(say(working.about)),
    calculationCautions(context, working.calculations),
    ...(working.units === true ? [unitTables(context)] : []),
    ...working.calculations.flatMap((id) => {
      const one = calculationById(id);
      return one === undefined ? [] : [calculationBlocks(context, one)];
    }),
  );
}

function calculationBlocks(context: ViewContext, one: Calculation): readonly Block[] {
  const { say } = context;
  const page: Text = [
    `${say(one.purpose)} `,
    { kind: 'link', text: say('Formula, range and source'), to: `page:${calculationFile(one.id)}` },
  ];
  return [heading(2, say(one.name), one.id), paragraphs(page), ...onMachine(context, one)];
}

function onMachine(context: ViewContext, one: Calculation): readonly Block[] {
  const { book, say } = context;
  const onIt = calculationOn(book, one.id);
  const taken = onIt?.taken ?? [];
  const worked = onIt?.worked ?? one.run({});
  const results = resultLines(one, worked);
  const head = heading(3, say('As the machine stands'), `${one.id}-stands`);
  if (taken.length === 0) return [head, lines([say('The machine says none of these values.')])];
  const needed = worked.doubts.map(({ message }) => say(message));
  return [
    head,
    {
      type: 'table',
      columns: [column(say('What'), 5), column(say('Value'), 4, 'right'), column(say('From'), 8)],
      rows: taken.map(({ input: name, value, from }): Row => {
        return row(sentence(say(one.inputs[name]?.name ?? name)), valueText(value), withLastDay(from));
      }),
      empty: '',
      use: 'read',
    },
    ...(results.length === 0
      ? []
      : [lines(results.map((text): Text => [{ kind: 'strong', text: sentence(say(text)) }]))]),
    ...(results.length === 0 && needed.length > 0 ? [lines(needed)] : []),
    ...(results.length === 0 ? [] : [lines(workingLines(one, worked).map(say))]),
  ];
}

function valueText(value: Value): string {
  if (typeof value === 'string') return value;
  return 'unit' in value ? resultText(value) : value.map((one) => resultText(one)).join('; ');
}
