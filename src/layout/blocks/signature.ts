// Lines to sign on: who, name, date.
import type { SignatureBlock } from '../../sheet/sheet.ts';
import { firm, leading, small, text as textType } from '../scale.ts';
import { setLines } from '../set-line.ts';
import { linesOf, under, type Setting } from '../setting.ts';
import { spaced, together, type Slab } from '../slab.ts';

const height = 42;

export function signatureSlabs(block: SignatureBlock, setting: Setting): readonly Slab[] {
  return spaced(together(block.lines.map((line) => signatureLine(line, setting))), leading);
}

function signatureLine(line: SignatureBlock['lines'][number], setting: Setting): Slab {
  const dateWidth = Math.min(110, setting.width * 0.3);
  const nameWidth = setting.width - dateWidth - 16;
  const fields = [
    { label: line.role, value: line.name ?? '', x: 0, width: nameWidth, id: line.id },
    {
      label: 'date',
      value: line.date ?? '',
      x: nameWidth + 16,
      width: dateWidth,
      id: line.id === undefined ? undefined : `${line.id}/date`,
    },
  ];
  const tag = under(setting.section, 'P');
  return {
    height,
    draw: (x, y, out) => {
      for (const field of fields) {
        const left = x + field.x;
        const rule = y + 27;
        setLines(
          linesOf(field.value, textType, field.width, setting).slice(0, 1),
          { x: left, y: rule - 15, width: field.width, tag },
          out,
        );
        if (field.id !== undefined)
          out.push({ kind: 'field', id: field.id, x: left, y: rule - 20, width: field.width, height: 19, tag });
        out.push({ kind: 'line', x1: left, y1: rule, x2: left + field.width, y2: rule, weight: firm / 2 });
        setLines(
          linesOf(field.label, small, field.width, setting).slice(0, 1),
          { x: left, y: rule + 1, width: field.width, tag },
          out,
        );
      }
    },
  };
}
