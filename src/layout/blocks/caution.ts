// A caution that stands by itself.
import type { CautionBlock } from '../../sheet/sheet.ts';
import { cautionSlab } from '../caution-line.ts';
import { half } from '../scale.ts';
import { under, type Setting } from '../setting.ts';
import { spaced, type Slab } from '../slab.ts';

export function cautionSlabs(block: CautionBlock, setting: Setting): readonly Slab[] {
  const tag = under(setting.section, 'P');
  return spaced([...cautionSlab(block.grade, block.text, setting, tag, setting.height)], half);
}
