// Cards on screen keep the proportions they have on paper, by one of a few classes (a style of their own is not allowed there).
import type { CardsBlock } from '../sheet/sheet.ts';

/** `tall`, `broad` or `square`, by the size in millimetres. */
export function cardShape(size: CardsBlock['size']): 'tall' | 'broad' | 'square' {
  if (size.height > size.width * 1.2) return 'tall';
  return size.width > size.height * 1.2 ? 'broad' : 'square';
}
