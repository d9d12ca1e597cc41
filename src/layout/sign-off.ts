// The foot of a job sheet: what state the machine was left in, what comes next, whose hand, which day.
import { firm, half, small } from './scale.ts';
import { setLines } from './set-line.ts';
import { linesOf, under, type Setting } from './setting.ts';
import type { Slab } from './slab.ts';

const row = 28;

export function signOffSlab(setting: Setting): Slab {
  const tag = under(setting.section, 'P');
  const halfWidth = (setting.width - 16) / 2;
  const fields = [
    { label: 'state left in', x: 0, y: 0, width: setting.width },
    { label: 'next', x: 0, y: row, width: setting.width },
    { label: 'hand', x: 0, y: 2 * row, width: halfWidth },
    { label: 'date', x: halfWidth + 16, y: 2 * row, width: halfWidth },
  ];
  return {
    height: 3 * row + half,
    before: half * 2,
    foot: true,
    draw: (x, y, out) => {
      for (const field of fields) {
        const rule = y + field.y + row;
        const label = linesOf(field.label, small, field.width, setting);
        setLines(label, { x: x + field.x, y: rule - small.leading - 1, width: field.width, tag }, out);
        out.push({
          kind: 'line',
          x1: x + field.x,
          y1: rule,
          x2: x + field.x + field.width,
          y2: rule,
          weight: firm / 2,
        });
      }
    },
  };
}
