// The end of a page that somebody asked for.
import type { BreakBlock } from '../../sheet/sheet.ts';
import type { Slab } from '../slab.ts';

export function breakSlabs(block: BreakBlock): readonly Slab[] {
  return [{ height: 0, begins: block.to, draw: () => undefined }];
}
