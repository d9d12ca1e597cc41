// The line above a table, a plot or a grid that says what it is.
import type { Text } from '../../sheet/sheet.ts';
import { text as textType } from '../scale.ts';
import { linesOf, under, type Setting } from '../setting.ts';
import { together, type Slab } from '../slab.ts';
import { lineSlabs } from './prose.ts';

/** Lines of a caption; it stays with what follows unless `withNext` is false (a sentence that stands for an empty table). */
export function captionSlabs(text: Text, setting: Setting, withNext = true): readonly Slab[] {
  const lines = linesOf(text, textType, setting.width, setting, withNext ? 'strong' : 'regular');
  const slabs = lineSlabs(lines, setting, under(setting.section, 'P'));
  return withNext
    ? together(slabs, true).map((slab, index) =>
        index === slabs.length - 1 ? { ...slab, height: slab.height + 2 } : slab,
      )
    : slabs;
}
