// The order of tightening, drawn on the holes where their positions are recorded: the book's kind of order, or crosswise where it names none.
import { tighteningOrder } from '../calc/tightening-order.ts';
import type { Fastener, ScrewPosition } from '../records/model.ts';
import type { Block } from '../sheet/sheet.ts';
import { heading, paragraphs, stack } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { holeDrawing, holesOf } from './wording/holes.ts';
import { inMillimetres } from './wording/true-scale.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const tighteningOrderView = defineView({
  id: 'tightening-order',
  purpose: 'The order in which the fasteners of a head or cover are tightened, drawn from recorded positions.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const drawn = context.book.records.maker.fasteners.filter((one) => (one.positions ?? []).length > 2);
    if (drawn.length === 0) return [];
    return stack(
      heading(2, context.say('Order of tightening'), 'order'),
      paragraphs(
        context.say(
          'Seen from outside. All of them by hand first, then in stages in this order, inside outwards; undone the other way round. An order in the book comes before this one.',
        ),
      ),
      ...drawn.flatMap((one) => drawing(context, one, one.positions ?? [])),
    );
  },
});

function drawing({ say }: ViewContext, fastener: Fastener, positions: readonly ScrewPosition[]): readonly Block[] {
  const kind = /spiral/i.test(fastener.order ?? '') ? 'spiral' : 'crosswise';
  const spots = positions.map((one) => ({ x: inMillimetres(one.right), y: inMillimetres(one.up) }));
  const order = tighteningOrder(spots, kind);
  const turnOf = new Map(order.map((index, turn) => [index, count(turn + 1)]));
  const holes = holesOf(positions, (index) => turnOf.get(index) ?? '');
  const from = fastener.order === undefined ? say('no order in the book; common practice') : say('as the book says');
  const title = `${fastener.name}: ${say(kind)}, ${from}`;
  const told = order.map((index) => count(index + 1)).join(', ');
  return [holeDrawing(holes, title, `${say('By their number in the records, in order')}: ${told}.`)];
}
