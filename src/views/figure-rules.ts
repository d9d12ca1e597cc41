// What is worked out from the boxes of an engine sheet: each figure with its rule printed, and a box a cylinder.
import { sourceLine } from '../book/torque.ts';
import type { Block } from '../sheet/sheet.ts';
import { column, heading, paragraphs, row } from './wording/blocks.ts';
import { boxHead, cylindersOf } from './measures.ts';
import { defineView } from './view.ts';

interface Rule {
  readonly letter: string;
  readonly name: string;
  readonly rule: string;
  readonly stroke?: 'two' | 'four';
  /** As it is where the book halves differences of diameters. */
  readonly halved?: string;
}

const common =
  'Rules of common practice. Makers differ, some take half the difference: the book’s own rule goes before.';

/** Common practice; the maker's own rule goes before each of them. */
const rules: readonly Rule[] = [
  { letter: 'C', name: 'Piston clearance', rule: 'C = smallest bore − skirt' },
  {
    letter: 'T',
    name: 'Taper',
    rule: 'T = largest − smallest down the bore, in one direction',
    halved: 'T = ½ (largest − smallest down the bore, in one direction)',
  },
  {
    letter: 'R',
    name: 'Out-of-round',
    rule: 'R = fore-aft − across at one height, the largest',
    halved: 'R = ½ (fore-aft − across at one height, the largest)',
  },
  { letter: 'W', name: 'Bore wear', rule: 'W = largest bore − standard in force' },
  { letter: 'Si', name: 'Inlet stem in its guide', rule: 'S = guide − stem', stroke: 'four' },
  { letter: 'Se', name: 'Exhaust stem in its guide', rule: 'S = guide − stem', stroke: 'four' },
  { letter: 'Li', name: 'Inlet cam lift', rule: 'L = lobe − base', stroke: 'four' },
  { letter: 'Le', name: 'Exhaust cam lift', rule: 'L = lobe − base', stroke: 'four' },
];

export const figureRules = defineView({
  id: 'figure-rules',
  purpose: 'The figures that are worked out from an engine sheet, each with its rule and a box a cylinder.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => {
    const { book, say } = context;
    const { stroke } = book.records.machine.features;
    const names = cylindersOf(context);
    const inches = book.records.machine.units === 'imperial' ? 'in' : 'mm';
    const bore = book.limits.get('bore');
    const unit = bore?.unit.symbol ?? inches;
    const isHalved = bore?.rule === 'half the difference';
    return [
      heading(2, say('Worked out from the boxes'), 'figure-rules'),
      paragraphs(
        bore?.rule === undefined
          ? say(common)
          : `${say('Taper and out-of-round by the rule of the book')}: ${sourceLine(bore.source)}. ${say('The others are common practice.')}`,
      ),
      {
        type: 'table',
        columns: [
          column(say('Figure'), 5),
          column(say('Rule'), 7),
          ...names.map((name) => column(boxHead(context, name), 3.5)),
        ],
        rows: rules
          .filter((one) => one.stroke === undefined || one.stroke === stroke)
          .map(({ letter, name, rule, halved }) =>
            row(
              [{ kind: 'strong', text: say(name) }],
              say(isHalved ? (halved ?? rule) : rule),
              ...names.map(
                (cylinder) => ({ box: 'write', unit, id: `inspection/rule-${letter}/${cylinder}/found` }) as const,
              ),
            ),
          ),
        empty: '',
        use: 'work',
      },
    ];
  },
});
