// A square code with its text beside it.
import type { CodeBlock } from '../../sheet/sheet.ts';
import { millimetre } from '../paper.ts';
import { leading, small, text as textType } from '../scale.ts';
import { heightOf, setLines } from '../set-line.ts';
import { linesOf, under, type Setting } from '../setting.ts';
import type { Slab } from '../slab.ts';
import { drawModules, squareCode } from '../square-code.ts';

export function codeSlabs(block: CodeBlock, setting: Setting): readonly Slab[] {
  const code = squareCode(block.text, 26 * millimetre);
  const side = code?.side ?? 0;
  const width = setting.width - side - 8;
  const lines = [
    ...linesOf(block.caption, textType, width, setting, 'strong'),
    ...linesOf(block.text, small, width, setting),
  ];
  const tag = under(setting.section, 'P');
  return [
    {
      height: Math.max(side, heightOf(lines) + 4),
      before: leading,
      draw: (x, y, out) => {
        if (code !== undefined) drawModules(code, x, y, under(setting.section, 'Figure', { alt: code.alt }), out);
        setLines(lines, { x: x + side + 8, y: y + 4, width, tag }, out);
      },
    },
  ];
}
