// The labels of a drawing: each stands where its mark asks; one that would leave the paper or run into another is cut with a visible mark.
import type { DrawingMark } from '../../sheet/sheet.ts';
import { millimetre } from '../paper.ts';
import type { Tag, TextItem } from '../placed.ts';
import { least } from '../scale.ts';
import { widthOf, type Setting } from '../setting.ts';

type Label = Extract<DrawingMark, { kind: 'label' }>;

interface Span {
  readonly label: Label;
  readonly text: string;
  readonly left: number;
  readonly right: number;
}

/** The labels, from the upper left corner of the drawing; the room across is the setting's. */
export function labelItems(marks: readonly DrawingMark[], tag: Tag, setting: Setting): readonly TextItem[] {
  const spans = marks.flatMap((mark) => (mark.kind === 'label' ? [spanOf(mark, mark.text, setting)] : []));
  return spans.flatMap((span) => {
    const { label, text, left, right } = fitted(span, spans, setting);
    if (text === '') return [];
    const place = { x: left, y: label.y * millimetre, width: right - left };
    return [{ kind: 'text', ...place, text: text + ' ', face: 'regular', size: least.size, tag }];
  });
}

function spanOf(label: Label, text: string, setting: Setting): Span {
  const width = widthOf(text, least, setting);
  const back = label.anchor === 'end' ? width : label.anchor === 'middle' ? width / 2 : 0;
  const left = label.x * millimetre - back;
  return { label, text, left, right: left + width };
}

function fitted(span: Span, all: readonly Span[], setting: Setting): Span {
  const beside = all.filter(
    (other) => other !== span && Math.abs(other.label.y - span.label.y) * millimetre < least.size,
  );
  const inTheWay = beside.some((other) => other.left < span.right && span.left < other.right);
  if (!inTheWay && span.left >= 0 && span.right <= setting.width) return span;
  const room = roomOf(span, beside, setting);
  const characters = Array.from(span.text);
  for (let count = characters.length; count > 0; count -= 1) {
    const text = count === characters.length ? span.text : characters.slice(0, count).join('').trimEnd() + '…';
    const tried = spanOf(span.label, text, setting);
    if (tried.left >= room.left && tried.right <= room.right) return tried;
  }
  return { ...span, text: '' };
}

/** Half of the way to the neighbours on either side, and no further than the paper goes. */
function roomOf(
  span: Span,
  beside: readonly Span[],
  setting: Setting,
): { readonly left: number; readonly right: number } {
  const at = span.label.x * millimetre;
  let left = 0;
  let right = setting.width;
  for (const other of beside) {
    const half = (at + other.label.x * millimetre) / 2;
    if (half < at) left = Math.max(left, half + 1);
    else if (half > at) right = Math.min(right, half - 1);
  }
  return { left, right };
}
