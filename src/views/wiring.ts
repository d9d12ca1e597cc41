// This machine's own wires, earths and runs where they were written down; the general form to be filled in where not.
import { wireResistance } from '../book/wiring-readings.ts';
import type { Run, Wire } from '../records/wiring-model.ts';
import type { Block, Cell, Row, Text } from '../sheet/sheet.ts';
import { earthsBlocks, generalEarths } from './earth-drop.ts';
import { anchor, column, heading, joined, paragraphs, row, stack } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { formBlocks, formNamed } from './wording/form.ts';
import { ours } from './wording/ours.ts';
import { lastOfWiring } from './wording/last-of-wiring.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** Lines for what was not written down yet. */
const spare = 2;

/** How volts lost to earth are read; common practice. */
const aboutEarths =
  'Meter from the battery’s earth post to the place; a reading well above its neighbours is a bad joint.';

const part = { wires: 'wires', earths: 'earths', runs: 'runs' } as const;

export const wiring = defineView({
  id: 'wiring',
  purpose:
    'Wires, earths or runs (`of`) of this machine as recorded, with boxes to measure again; the blanks of a form (`form`, `write`) where none are.',
  needs: 'machine',
  options: ['of', 'form', 'write'],
  blocks: (context) => {
    const { wires = [], runs = [], earths = [] } = context.book.records.wiring ?? {};
    const { of } = context.options;
    if (of === part.wires && wires.length > 0) return wiresBlocks(context, wires);
    if (of === part.earths && earths.length > 0)
      return earthsBlocks(context, earths, asRecorded(context, context.say(aboutEarths)));
    if (of === part.runs && runs.length > 0) return runsBlocks(context, runs);
    return blanks(context);
  },
});

function blanks(context: ViewContext): readonly Block[] {
  const form = formNamed(context, context.options['form']);
  if (form === undefined) return [];
  if (context.options['of'] === part.earths) return generalEarths(context, form);
  const write = (context.options['write'] ?? '').split('|').map((head) => head.trim());
  const blocks = formBlocks(context, form, { write, numbered: false });
  return blocks.length === 0 ? [] : [heading(2, ours(context, form.at, form.title), anchor(form.id)), ...blocks];
}

/** `As recorded, read off the machine on 5 May 2024.` */
function asRecorded({ book, say }: ViewContext, more: string): Block {
  const { read } = book.records.wiring ?? {};
  const since =
    read === undefined ? say('As recorded.') : `${say('As recorded, read off the machine on')} ${dayText(read)}.`;
  return paragraphs(`${since} ${more}`);
}

function wiresBlocks(context: ViewContext, wires: readonly Wire[]): readonly Block[] {
  const { say } = context;
  const groups = [...new Set(wires.map(({ circuit }) => circuit ?? ''))];
  const rows = groups.flatMap((group): readonly Row[] => [
    ...(group === '' ? [] : [{ kind: 'band', text: [{ kind: 'strong', text: group }] } as const]),
    ...wires.filter(({ circuit = '' }) => circuit === group).map((wire) => wireRow(context, wire)),
  ]);
  return stack(
    heading(2, say('Wires of this machine'), 'wires'),
    asRecorded(context, say('Both halves of each connector get the same tag before they part.')),
    {
      type: 'table',
      columns: [
        column(say('Tag'), 1, 'centre'),
        column(say('From, to'), 6),
        column(say('Colours'), 4),
        column(say('Connector'), 4),
        column(say('Last'), 3, 'right'),
        column(say('Through, now'), 3),
      ],
      rows: [...rows, ...spareRows(5, 'wire')],
      empty: '',
      use: 'work',
    },
  );
}

function wireRow(context: ViewContext, wire: Wire): Row {
  const { say } = context;
  const way: Text = [{ kind: 'strong', text: `${wire.from} ${say('to')} ${wire.to}` }];
  return row(
    { box: 'tick', id: `wiring/${wire.id}/tag` },
    joined([way, wire.note], ': '),
    wire.colours,
    wire.connector ?? '',
    lastOfWiring(context, wireResistance, wire.id, wire.through),
    { box: 'write', unit: wire.through?.unit.symbol ?? 'Ω', id: `wiring/${wire.id}/through` },
  );
}

function runsBlocks(context: ViewContext, runs: readonly Run[]): readonly Block[] {
  const { say } = context;
  return stack(
    heading(2, say('How cables and hoses run'), 'runs'),
    asRecorded(context, say('Bars turned to both locks before the tank goes on.')),
    {
      type: 'table',
      columns: [
        column(say('Back'), 1, 'centre'),
        column(say('What'), 4),
        column(say('Which way'), 8),
        column(say('Clips and ties'), 5),
      ],
      rows: [
        ...runs.map((one) =>
          row(
            { box: 'tick', id: `wiring/${one.id}/back` },
            [{ kind: 'strong', text: one.name }],
            joined([one.way, one.note]),
            one.clips ?? '',
          ),
        ),
        ...spareRows(3, 'run'),
      ],
      empty: '',
      use: 'work',
    },
  );
}

/** Ruled lines with a tick before each. */
function spareRows(columns: number, name: string): readonly Row[] {
  return Array.from({ length: spare }, (_, index) => {
    const line: readonly Cell[] = Array.from({ length: columns }, () => ({ box: 'line' }));
    return row({ box: 'tick', id: `wiring/spare-${name}-${count(index + 1)}` }, ...line);
  });
}
