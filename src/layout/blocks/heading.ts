// A heading: never the last thing on a page; an anchor for links and the outline.
import type { HeadingBlock } from '../../sheet/sheet.ts';
import type { PlacedItem, Role } from '../placed.ts';
import { firm, headings, leading, text as textType } from '../scale.ts';
import { setLines } from '../set-line.ts';
import { linesOf, under, type Setting } from '../setting.ts';
import { together, type Slab } from '../slab.ts';
import { plainText } from '../words.ts';

const roles: readonly Role[] = ['H1', 'H2', 'H3', 'H4', 'H5'];

/** The role of a heading at a depth; the title of the sheet is at depth 1. */
export function headingRole(depth: number): Role {
  return roles[Math.min(Math.max(depth, 1), roles.length) - 1] ?? 'H5';
}

/** Sets a heading at its depth. The first depth below the title has a firm rule above. */
export function headingSlabs(block: HeadingBlock, depth: number, setting: Setting): readonly Slab[] {
  const type = headings[depth - 2] ?? headings.at(-1) ?? textType;
  const lines = linesOf(block.text, type, setting.width, setting, 'strong');
  const tag = under(setting.section, headingRole(depth));
  const ruled = depth === 2;
  const slabs = lines.map((line, index): Slab => {
    const first = index === 0;
    const inset = first && ruled ? 5 : 0;
    return {
      height: line.type.leading + inset,
      ...(first && ruled ? { parting: (x, y, out) => void out.push(rule(x, y, setting.width)) } : {}),
      draw: (x, y, out) => {
        const entry = { title: plainText(block.text), depth };
        if (first) out.push({ kind: 'anchor', id: block.id, x, y, entry });
        setLines([line], { x, y: y + inset, width: setting.width, tag }, out);
      },
    };
  });
  const below: Slab = { height: 3, keep: true, draw: () => undefined };
  const above = depth === 2 ? leading * 1.5 : leading;
  const section = block.whole === true ? 'whole' : 'other';
  return together([...slabs, below], true).map((slab, index) =>
    index === 0 ? { ...slab, before: above, section } : slab,
  );
}

function rule(x: number, y: number, width: number): PlacedItem {
  return { kind: 'line', x1: x, y1: y, x2: x + width, y2: y, weight: firm };
}
