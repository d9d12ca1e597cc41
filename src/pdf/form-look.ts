// What a field looks like before anybody touches it: a tick, what the record says already, or nothing.
import { itemOperators } from './draw-item.ts';
import { widthOf } from './faces.ts';
import { points } from './numbers.ts';
import type { Typesetter } from './type.ts';

export interface FieldSize {
  readonly width: number;
  readonly height: number;
}

/** Operators of a ticked box, and of one that is not. */
export function tickLook(ticked: boolean, size: FieldSize): string {
  if (!ticked) return 'q Q';
  return upright(size, '0 G ' + itemOperators({ kind: 'tick', x: 0, y: 0, size: size.height }, noType));
}

/** Operators of a text in the middle of its field, large where it has room, never cut. */
export function textLook(text: string, size: FieldSize, centred: boolean, type: Typesetter): string {
  if (text === '') return '/Tx BMC EMC';
  const room = size.width - 6;
  const em = Math.max(widthOf(text, 'regular'), 0.01);
  const height = Math.max(4, Math.min(14, size.height * 0.7, room / em));
  const x = centred ? 3 + (room - em * height) / 2 : 3;
  const base = (size.height + height * 0.7) / 2;
  return '/Tx BMC ' + upright(size, '0 g ' + type.show(text, 'regular', height, x, base)) + ' EMC';
}

/** Ours are drawn from the top downwards, fields from the bottom upwards. */
function upright({ height }: FieldSize, operators: string): string {
  return 'q 1 0 0 -1 0 ' + points(height) + ' cm ' + operators + ' Q';
}

/** A tick has no text. */
const noType: Typesetter = { show: () => '', fonts: new Map(), missing: new Set() };
