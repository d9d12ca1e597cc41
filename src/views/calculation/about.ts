// What stands at the head of the page of a calculation: purpose, formula, cautions, signs with units and bounds, range, source, example.
import type { Calculation } from '../../calc/calculation.ts';
import type { Input, Output } from '../../calc/input.ts';
import { withUnit } from '../../figure/print.ts';
import { table } from '../../table/table.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Block, Inline, Text } from '../../sheet/sheet.ts';
import { column, fact, heading, row, stack } from '../wording/blocks.ts';
import { calculationCautions } from '../wording/calculation-cautions.ts';
import type { ViewContext } from '../view.ts';
import { formulaBlock } from './formula.ts';

/** Purpose and formula, the signs, and the facts. */
export function aboutBlocks(context: ViewContext, one: Calculation): readonly Block[] {
  const { say } = context;
  return stack(
    {
      type: 'prose',
      paragraphs: [{ kind: 'paragraph', text: say(one.purpose) }, formulaBlock(one)],
    },
    calculationCautions(context, [one.id]),
    signs(context, one),
    {
      type: 'facts',
      facts: [
        ...fact(say('Holds for'), say(one.range)),
        ...fact(say('Source'), one.source),
        ...fact(say('Published tables'), tableLinks(say, one)),
      ],
    },
    example(context, one),
  );
}

function tableLinks(say: ViewContext['say'], one: Calculation): Text {
  return one.tables.flatMap((id, index): readonly Inline[] => [
    ...(index === 0 ? [] : ['; ']),
    { kind: 'link', text: say(table(id).about.title), to: `page:tables/${id}.html` },
  ]);
}

function bound(value: number, input: Exclude<Input, { kind: 'words' }>): string {
  const decimals = (String(value).split('.')[1] ?? '').length;
  return withUnit(formatDecimal(value, decimals), input.unit);
}

function fromTo(say: (words: string) => string, input: Exclude<Input, { kind: 'words' }>): string {
  const low = input.low === undefined ? undefined : bound(input.low, input);
  const high = input.high === undefined ? undefined : bound(input.high, input);
  if (low !== undefined && high !== undefined) return `${low} ${say('to')} ${high}`;
  if (low !== undefined) return `${low} ${say('or more')}`;
  return high === undefined ? '' : `${high} ${say('at most')}`;
}

/** In words, what an input may be. */
function bounds(say: (words: string) => string, input: Input): string {
  if (input.kind === 'words') return (input.among ?? []).map(say).join(', ');
  const texts = [
    input.above === undefined ? '' : `${say('more than')} ${bound(input.above, input)}`,
    fromTo(say, input),
    input.whole === true ? say('whole') : '',
    input.usual === undefined
      ? ''
      : `${say('asked about outside')} ${bound(input.usual[0], input)} ${say('to')} ${bound(input.usual[1], input)}`,
  ];
  return texts.filter((text) => text !== '').join(', ');
}

function unitText(say: (words: string) => string, one: Input | Output): string {
  if (one.kind === 'words') return say('words');
  const several = one.kind === 'list' ? `, ${say('several')}` : '';
  return `${one.unit.symbol === '' ? say('a number') : one.unit.symbol}${several}`;
}

function sign(text: string): Text {
  return text === '' ? '' : [{ kind: 'em', text }];
}

function signs({ say }: ViewContext, one: Calculation): Block {
  const goesIn = Object.entries(one.inputs).map(([name, input]) => {
    const may = input.optional === true ? say('may be left out') : '';
    const told = [bounds(say, input), may].filter((text) => text !== '').join('; ');
    return row(say(input.name), sign(input.symbol), [{ kind: 'code', text: name }], unitText(say, input), told);
  });
  const comesOut = Object.entries(one.outputs).map(([name, output]) =>
    row(
      say(output.name),
      sign(output.kind === 'quantity' ? output.symbol : ''),
      [{ kind: 'code', text: name }],
      unitText(say, output),
      '',
    ),
  );
  return {
    type: 'table',
    columns: [
      column(say('What'), 7),
      column(say('Sign'), 2),
      column(say('Written as'), 4),
      column(say('Unit'), 3),
      column(say('Bounds'), 7),
    ],
    rows: [
      { kind: 'band', text: say('What goes in') },
      ...goesIn,
      { kind: 'band', text: say('What comes out') },
      ...comesOut,
    ],
    empty: '',
    use: 'read',
  };
}

function example({ say }: ViewContext, one: Calculation): readonly Block[] {
  const given = Object.entries(one.example.given).map(([name, value]) => `'${name}=${value}'`);
  const gives = Object.entries(one.example.gives).map(
    ([name, value]) => `${say(one.outputs[name]?.name ?? name)}: ${value}`,
  );
  return [
    heading(2, say('Example'), 'example'),
    {
      type: 'prose',
      paragraphs: [
        { kind: 'code', text: ['splitpin work', one.id, ...given].join(' ') },
        { kind: 'paragraph', text: gives.join('; ') },
      ],
    },
  ];
}
