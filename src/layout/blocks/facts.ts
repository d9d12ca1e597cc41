// Names and values, one to three pairs a line, with a thin rule below each line.
import type { FactsBlock } from '../../sheet/sheet.ts';
import type { Tag } from '../placed.ts';
import { gutter, half, small, text as textType, thin } from '../scale.ts';
import { heightOf, setLines, type SetLine } from '../set-line.ts';
import { linesOf, under, widthOf, type Setting } from '../setting.ts';
import { spaced, type Slab } from '../slab.ts';

type Fact = FactsBlock['facts'][number];

/** How many pairs stand side by side: three need less room each, as whoever asks for three has short values. */
function pairsAcross(asked: number, width: number): number {
  if (asked >= 3 && width >= 3 * 150) return 3;
  return asked >= 2 && width >= 2 * 190 ? 2 : 1;
}

export function* factsSlabs(block: FactsBlock, setting: Setting): Generator<Slab> {
  const across = pairsAcross(block.across ?? 1, setting.width);
  const pair = (setting.width - gutter * 2 * (across - 1)) / across;
  const names = block.facts.map((fact) => widthOf(fact.name, small, setting));
  const nameWidth = Math.min(pair * 0.42, Math.max(0, ...names) + gutter);
  const whole = under(setting.section, 'Table');
  const slabs: Slab[] = [];
  for (let from = 0; from < block.facts.length; from += across) {
    const facts = block.facts.slice(from, from + across);
    slabs.push(...factLine(facts, { across, pair, nameWidth, setting, row: under(whole, 'TR') }));
  }
  yield* spaced(slabs, half);
}

interface Measures {
  readonly across: number;
  readonly pair: number;
  readonly nameWidth: number;
  readonly setting: Setting;
  readonly row: Tag;
}

/** One line of pairs; a line too tall for a page is set line by line. */
function factLine(facts: readonly Fact[], measures: Measures): readonly Slab[] {
  const { across, pair, nameWidth, setting, row } = measures;
  // The last value of a line with fewer pairs reaches to its end, so that all rows are of one length.
  const reach = 1 + 2 * (across - facts.length);
  const set = facts.map((fact, index) => ({
    name: linesOf(fact.name, small, nameWidth - 4, setting),
    value: [
      ...linesOf(fact.value, textType, pair - nameWidth, setting),
      ...(fact.note === undefined ? [] : linesOf(fact.note, small, pair - nameWidth, setting)),
    ],
    head: under(row, 'TH', { heads: 'Row' }),
    cell: under(row, 'TD', index === facts.length - 1 && reach > 1 ? { span: reach } : {}),
  }));
  const tallest = set.reduce(
    (most, one) => Math.max(most, heightOf(one.value), heightOf(one.name) + 1.5),
    textType.leading,
  );
  const parts = Math.max(1, Math.ceil((tallest + 4) / (setting.height - 2 * textType.leading)));
  return Array.from({ length: parts }, (_, part) => {
    const cut = set.map((one) => ({
      ...one,
      name: share(one.name, part, parts),
      value: share(one.value, part, parts),
    }));
    const height =
      cut.reduce((most, one) => Math.max(most, heightOf(one.value), heightOf(one.name) + 1.5), textType.leading) + 4;
    return {
      height,
      draw: (x, y, out) => {
        for (const [index, one] of cut.entries()) {
          const left = x + index * (pair + gutter * 2);
          setLines(one.name, { x: left, y: y + 3.5, width: nameWidth - 4, tag: one.head }, out);
          if (one.value.length === 0) out.push({ kind: 'empty', tag: one.cell });
          setLines(one.value, { x: left + nameWidth, y: y + 2, width: pair - nameWidth, tag: one.cell }, out);
          out.push({ kind: 'line', x1: left, y1: y + height, x2: left + pair, y2: y + height, weight: thin });
        }
      },
    };
  });
}

function share(lines: readonly SetLine[], part: number, parts: number): readonly SetLine[] {
  const count = Math.ceil(lines.length / parts);
  return lines.slice(part * count, (part + 1) * count);
}
