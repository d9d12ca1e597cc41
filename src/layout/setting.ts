// What a block is told when it is set: the room it has, how to measure, and where it belongs in the reading structure.
import type { Text } from '../sheet/sheet.ts';
import { breakLines } from './lines.ts';
import type { Measure } from './measure.ts';
import type { Face, Role, Tag } from './placed.ts';
import type { TypeSize } from './scale.ts';
import type { SetLine } from './set-line.ts';
import { words } from './words.ts';

export interface Setting {
  readonly width: number;
  /** Printable room to the right of the frame, for what is cut out. */
  readonly bleed: number;
  /** The most that one slab may be high. */
  readonly height: number;
  readonly measure: Measure;
  /** Anchors of the sheet that links may lead to. */
  readonly links: ReadonlySet<string>;
  /** The section that the block belongs to. */
  readonly section: Tag;
  /** Depth of the heading above (1 is the title of the sheet). */
  readonly depth: number;
}

/** Lines of a text in a type size and a width in points. */
export function linesOf(
  text: Text,
  type: TypeSize,
  width: number,
  setting: Setting,
  face: Face = 'regular',
): readonly SetLine[] {
  const found = words(text, face, setting.measure, setting.links);
  return breakLines(found, width / type.size, setting.measure).map((line) => ({ line, type }));
}

/** A tag below another. */
export function under(parent: Tag, role: Role, more: Omit<Tag, 'role' | 'parent'> = {}): Tag {
  return { role, parent, ...more };
}

/** Width in points of a text on one line. */
export function widthOf(text: Text, type: TypeSize, setting: Setting, face: Face = 'regular'): number {
  const found = words(text, face, setting.measure, setting.links);
  const spaces = Math.max(0, found.length - 1) * setting.measure.width(' ', face);
  return (found.reduce((sum, word) => sum + word.em, 0) + spaces) * type.size;
}
