// How far a chain goes yet, in sentences; and what of the machine is not projected at all.
import { printFigure } from '../../figure/print.ts';
import type { Text } from '../../sheet/sheet.ts';
import { chainLeft } from '../figures/chain-left.ts';
import type { ViewContext } from '../view.ts';
import { joined } from './blocks.ts';
import { jobNamed } from './job.ts';

/** Nothing where it cannot be reckoned. */
export function chainLeftLines({ book, say }: ViewContext): readonly Text[] {
  const found = chainLeft(book);
  if (found === undefined) return [];
  const { gone, over, began, left, again, renewed } = found;
  const rules: Readonly<Record<string, string>> = {
    'common limit': say('to 2 %'),
    'industrial limit': say('to the industrial rule'),
  };
  const ways = left.map(({ rule, distance }) => `${say('about')} ${printFigure(distance)} ${rules[rule] ?? rule}`);
  return [
    joined(
      [`${printFigure(gone)} ${say('gone in')} ${printFigure(over)}, ${say('since it was new')}`, jobNamed(renewed)],
      ': ',
    ),
    ...(ways.length === 0
      ? []
      : [
          `${say('Left, if wear is straight and it began at')} ${printFigure(began)}: ${ways.join(', ')}. ${say('The span comes from sources that disagree.')}`,
        ]),
    ...(again === undefined
      ? []
      : [
          `${say('Measure again at')} ${printFigure(again)} ${say('of the machine, and look whether the teeth of both sprockets are hooked: then the chain is not renewed alone.')}`,
        ]),
    say('Not projected: tyres, which go by age as well, and brake fluid, which goes by months alone.'),
  ];
}
