// The calculations that a binder may use: formula, range, source, tables, and the example that a test runs.
import { calculations as list } from '../calc/list.ts';
import type { Calculation } from '../calc/calculation.ts';
import type { Block } from '../sheet/sheet.ts';
import { fact, heading, paragraphs } from './wording/blocks.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const calculations = defineView({
  id: 'calculations',
  purpose: 'Every calculation with its formula, range, source and example.',
  needs: 'machine',
  options: [],
  blocks: (context) => list.flatMap((one) => blocksOf(context, one)),
});

function blocksOf({ say }: ViewContext, one: Calculation): readonly Block[] {
  const pairs = (values: Readonly<Record<string, string>>): string =>
    Object.entries(values)
      .map(([name, value]) => `${name} ${value}`)
      .join('; ');
  return [
    heading(2, say(one.name), one.id),
    paragraphs(say(one.purpose)),
    {
      type: 'facts',
      facts: [
        ...fact(say('Formula'), one.formula),
        ...fact(say('Holds for'), say(one.range)),
        ...fact(say('Source'), one.source),
        ...fact(say('Tables'), one.tables.join(', ')),
        ...fact(say('Example'), `${pairs(one.example.given)}: ${pairs(one.example.gives)}`),
      ],
    },
  ];
}
