// All hold points in their order: the page of the site that shows what is held and why.
import { pointBlocks } from './hold-point.ts';
import { defineView } from './view.ts';

export const allHoldPoints = defineView({
  id: 'all-hold-points',
  purpose: 'Every hold point of this machine in order, each held or clear on the records.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const points = context.book.holds.toSorted((one, other) => one.point.order - other.point.order);
    return points.flatMap((hold) => pointBlocks(context, hold));
  },
});
