// A plot: its title above, then a rectangle that the printer draws with the same primitives as the screen.
import type { PlotBlock } from '../../sheet/sheet.ts';
import { leading } from '../scale.ts';
import { under, type Setting } from '../setting.ts';
import { spaced, type Slab } from '../slab.ts';
import { captionSlabs } from './caption.ts';

export function plotSlabs(block: PlotBlock, setting: Setting): readonly Slab[] {
  const { width } = setting;
  const height = Math.min(Math.max(150, width * 0.36), setting.height * 0.5);
  const tag = under(setting.section, 'Figure', { alt: block.description });
  const picture: Slab = {
    height,
    before: 4,
    draw: (x, y, out) => void out.push({ kind: 'plot', x, y, width, height, plot: block, tag }),
  };
  if (block.title === '') return [{ ...picture, before: leading }];
  return [...spaced(captionSlabs(block.title, setting), leading), picture];
}
