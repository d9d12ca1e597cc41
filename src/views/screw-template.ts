// A template for the screws of a cover: each hole where it lies, in true scale, with the length of its screw; an empty field where no positions are recorded.
import type { Fastener, ScrewPosition } from '../records/model.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, lines, row, stack } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { fastenerSize } from './wording/fastener.ts';
import { holeDrawing, holesOf } from './wording/holes.ts';
import { level, outline, upright } from './wording/true-scale.ts';
import { writtenText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const screwTemplate = defineView({
  id: 'screw-template',
  purpose: 'Covers with their screws drawn in true scale from recorded positions, with the length for each hole.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { book, say } = context;
    const covers = book.records.maker.fasteners.filter((one) => one.duty === 'cover');
    const drawn = covers.filter((one) => (one.positions ?? []).length > 0);
    return stack(
      lines([
        say('Glued on card, cut round, a hole pushed through each cross: every screw waits in its own place.'),
        say('Seen from outside, as the cover stands on the machine; positions are those in the records.'),
      ]),
      list(context, covers),
      ...drawn.flatMap((one) => drawing(context, one, one.positions ?? [])),
      drawn.length === 0 ? emptyField(context) : undefined,
    );
  },
});

function list({ say }: ViewContext, covers: readonly Fastener[]): Block {
  return {
    type: 'table',
    columns: [column(say('Screws'), 5), column(say('Thread and lengths'), 6), column(say('Counted'), 3)],
    rows: covers.map((one): Row => row(one.name, fastenerSize(one), { box: 'write', id: `template/${one.id}` })),
    empty: say('No fastener is marked as cover in the makers’ data.'),
    use: 'work',
  };
}

function drawing({ say }: ViewContext, fastener: Fastener, positions: readonly ScrewPosition[]): readonly Block[] {
  const holes = holesOf(positions, (index) => {
    const length = positions[index]?.length ?? fastener.length;
    const number = count(index + 1);
    return length === undefined ? number : `${number}: ${writtenText(length)}`;
  });
  const description = `${say('Holes and screw lengths')}: ${holes.map((hole) => hole.text).join('; ')}.`;
  return [
    heading(2, fastener.name, `template-${fastener.id}`),
    holeDrawing(holes, `${fastenerSize(fastener)}, ${say('in true scale')}`, description),
  ];
}

const field = { width: 112, height: 120, step: 10 } as const;

/** Without positions: a field with a scale round it, in which the cover is drawn round with a pencil. */
function emptyField({ say }: ViewContext): readonly Block[] {
  const steps = (length: number): readonly number[] =>
    Array.from({ length: Math.floor(length / field.step) }, (_, index) => (index + 1) * field.step);
  return [
    heading(2, say('A cover without recorded positions'), 'template-empty'),
    {
      type: 'drawing',
      title: say('Lay the cover or its gasket on the field, draw round it, push each screw through where it came from'),
      description: say('An empty field with a scale of ten millimetres round it.'),
      size: { width: field.width, height: field.height },
      marks: [
        ...outline(0, 0, field.width, field.height),
        ...steps(field.width).map((x) => upright(x, 0, 3)),
        ...steps(field.height).map((y) => level(y, 0, 3)),
      ],
    },
  ];
}
