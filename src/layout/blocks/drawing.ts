// A drawing in true scale: its millimetres are millimetres of the paper, turned where it fits only so, never shrunk; a line of 100 mm proves the print.
import type { DrawingBlock, DrawingMark } from '../../sheet/sheet.ts';
import { millimetre } from '../paper.ts';
import type { PlacedItem, Tag } from '../placed.ts';
import { firm, leading, least, thin } from '../scale.ts';
import { setLines } from '../set-line.ts';
import { linesOf, under, type Setting } from '../setting.ts';
import { spaced, type Slab } from '../slab.ts';
import { captionSlabs } from './caption.ts';
import { labelItems } from './drawing-labels.ts';

const checkLine = 100 * millimetre;
const checkRoom = 38;
const checkText = 'exactly 100 mm: measure it before use; print without fitting to the page';
const tooLarge = 'Too large for this paper in true scale, and never printed smaller: choose a larger paper.';

export function drawingSlabs(block: DrawingBlock, setting: Setting): readonly Slab[] {
  const caption = spaced(captionSlabs(block.title, setting), leading);
  const tag = under(setting.section, 'Figure', { alt: block.description });
  const fitting = fit(block, setting);
  if (fitting === undefined) return [...caption, ...captionSlabs(tooLarge, setting, false)];
  const height = fitting.size.height * millimetre;
  const labels = labelItems(fitting.marks, tag, setting);
  const picture: Slab = {
    height: height + (block.sketch === undefined ? checkRoom : leading),
    before: 4,
    draw: (x, y, out) => {
      for (const mark of fitting.marks) if (mark.kind !== 'label') out.push(placed(mark, x, y, tag));
      for (const label of labels) out.push({ ...label, x: x + label.x, y: y + label.y });
      if (block.sketch === undefined) check(x, y + height, tag, setting, out);
    },
  };
  return [...caption, picture];
}

/** As it is, or turned by a quarter; undefined where neither fits. */
function fit(block: DrawingBlock, setting: Setting): Pick<DrawingBlock, 'size' | 'marks'> | undefined {
  const { width, height } = block.size;
  // Lines of its caption stand above it on the same page.
  const room = setting.height - checkRoom - 4 * leading;
  const fits = (across: number, down: number): boolean =>
    across * millimetre <= setting.width + 0.01 && down * millimetre <= room;
  if (fits(width, height)) return block;
  if (!fits(height, width)) return undefined;
  return { size: { width: height, height: width }, marks: block.marks.map((mark) => turned(mark, height)) };
}

/** A quarter turn to the right; labels stay upright, centred where they stood. */
function turned(mark: DrawingMark, height: number): DrawingMark {
  if (mark.kind === 'line') {
    const { x1, y1, x2, y2 } = mark;
    return { ...mark, x1: height - y1, y1: x1, x2: height - y2, y2: x2 };
  }
  const moved = { ...mark, x: height - mark.y, y: mark.x };
  return moved.kind === 'label' ? { ...moved, anchor: 'middle' } : moved;
}

function placed(mark: Exclude<DrawingMark, { kind: 'label' }>, x: number, y: number, tag: Tag): PlacedItem {
  const at = (length: number): number => length * millimetre;
  if (mark.kind === 'circle')
    return { kind: 'circle', x: x + at(mark.x), y: y + at(mark.y), radius: at(mark.radius), weight: thin, tag };
  const ends = { x1: x + at(mark.x1), y1: y + at(mark.y1), x2: x + at(mark.x2), y2: y + at(mark.y2) };
  const dash = mark.dashed === true ? { dash: [4, 3] } : {};
  return { kind: 'line', ...ends, weight: mark.heavy === true ? firm : thin, ...dash, tag };
}

/** The line of 100 mm with its ends, and what it is for. */
function check(x: number, y: number, tag: Tag, setting: Setting, out: PlacedItem[]): void {
  const line = y + 8;
  out.push({ kind: 'line', x1: x, y1: line, x2: x + checkLine, y2: line, weight: firm, tag });
  for (const end of [x, x + checkLine])
    out.push({ kind: 'line', x1: end, y1: line - 4, x2: end, y2: line + 4, weight: firm, tag });
  const lines = linesOf(checkText, least, setting.width, setting).slice(0, 2);
  setLines(lines, { x, y: line + 5, width: setting.width, tag }, out);
}
