// Paper that takes one tag or one card: of a sheet only its cards are printed, one to a side, without a running head.
import type { Sheet } from '../sheet/sheet.ts';
import { singleCards } from './blocks/cards.ts';
import type { Leaf } from './paper.ts';
import type { PlacedItem, PlacedPage } from './placed.ts';
import { least } from './scale.ts';
import { setLines } from './set-line.ts';
import { linesOf, under, type Setting } from './setting.ts';

/** A page for each card; one page with a sentence for a sheet that has none. */
export function* oneCardEach(sheet: Sheet, leaf: Leaf, setting: Setting): Generator<PlacedPage> {
  const { width, height, area: frame } = leaf;
  let number = 0;
  for (const block of sheet.blocks) {
    if (block.type !== 'cards') continue;
    const section = under(setting.section, 'Sect');
    for (const draw of singleCards(block, width, height, { ...setting, section })) {
      number += 1;
      const items: PlacedItem[] = [{ kind: 'anchor', id: sheet.id + '-' + String(number), x: 0, y: 0 }];
      draw(0, 0, items);
      yield { number, width, height, frame, items };
    }
  }
  if (number > 0) return;
  const items: PlacedItem[] = [];
  const lines = linesOf('This sheet has no tag or card that would be printed by itself.', least, frame.width, setting);
  setLines(lines, { x: frame.x, y: frame.y, width: frame.width, tag: under(setting.section, 'P') }, items);
  yield { number: 1, width, height, frame, items };
}
