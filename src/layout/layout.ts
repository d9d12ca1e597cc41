// A sheet set on paper: blocks become slabs, slabs are put on pages, pages leave one by one.
import type { Sheet } from '../sheet/sheet.ts';
import { allSlabs } from './block-slabs.ts';
import { fewestPages, isSurelyLong } from './fewest-pages.ts';
import type { Measure } from './measure.ts';
import { oneCardEach } from './one-card.ts';
import { paginate } from './paginate.ts';
import { leaf, takesOneCard, unprintable } from './paper.ts';
import type { PlacedPage, Tag } from './placed.ts';
import { runningHead } from './running-head.ts';
import type { Setting } from './setting.ts';
import { signedOff } from './sign-off.ts';
import type { Slab } from './slab.ts';
import { titleSlabs } from './title.ts';
import { sectionsWhole } from './whole.ts';

export type { Measure } from './measure.ts';
export type { PlacedItem, PlacedPage } from './placed.ts';

/**
 * Sets a sheet. Lengths are points from the upper left corner of the page. Pages are made as they are asked for and never held;
 * the same sheet and measure give the same pages.
 */
export function* layOut(sheet: Sheet, measure: Measure): Generator<PlacedPage> {
  const front = leaf(sheet, false);
  const back = leaf(sheet, true);
  const whole: Tag = { role: 'Document' };
  const links = new Set(anchors(sheet));
  const right = Math.max(front.area.x + front.area.width, back.area.x + back.area.width);
  const bleed = Math.max(0, front.width - unprintable - right);
  const bare: Setting = {
    bleed,
    width: front.area.width,
    height: front.area.height,
    measure,
    links,
    section: whole,
    depth: 1,
  };
  if (takesOneCard(sheet.paper)) {
    yield* oneCardEach(sheet, front, bare);
    return;
  }
  const head = runningHead(sheet, bare);
  const height = Math.min(front.area.height, back.area.height) - head.height;
  const leaves = { front, back, after: sheet.sides === 'both' ? back : front };
  const slabs = slabsOf(sheet, { ...bare, height });
  const set = (given: Iterable<Slab>): Iterable<PlacedPage> => paginate(given, leaves, head);
  yield* isSurelyLong(sheet.blocks) ? set(slabs) : fewestPages(slabs, set);
}

function* slabsOf(sheet: Sheet, setting: Setting): Generator<Slab> {
  yield* titleSlabs(sheet, setting);
  const slabs = sectionsWhole(allSlabs(sheet.blocks, setting), setting.height);
  if (sheet.foot === 'sign off') yield* signedOff(slabs, setting, sheet.job);
  else yield* slabs;
}

/** Everything that a link inside the sheet may lead to. */
function* anchors(sheet: Sheet): Generator<string> {
  for (const block of sheet.blocks) {
    if (block.type === 'heading') yield block.id;
    if (block.type === 'checklist' || block.type === 'blanks') yield* block.items.map((item) => item.id);
    if (block.type !== 'table') continue;
    for (const row of block.rows) if (row.kind === 'cells' && row.id !== undefined) yield row.id;
  }
}
