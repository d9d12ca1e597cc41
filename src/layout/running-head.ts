// The head of every page: what sheet this is, of which machine, from which records, which page of how many.
import type { Sheet } from '../sheet/sheet.ts';
import type { PlacedItem } from './placed.ts';
import { baseline, firm, least } from './scale.ts';
import { heightOf, setLines, type SetLine } from './set-line.ts';
import { linesOf, type Setting } from './setting.ts';

export interface RunningHead {
  readonly height: number;
  readonly draw: (page: number, x: number, y: number, out: PlacedItem[]) => void;
}

/** The right column: page number, and where the sheet goes on. */
const right = 88;
const most = 3;

/** The head takes the same height on every page; over-long names are cut with a visible mark. */
export function runningHead(sheet: Sheet, setting: Setting): RunningHead {
  const width = setting.width - right - 12;
  const frame = sheet.frame === '' ? '' : 'frame …' + sheet.frame;
  const records = sheet.recordsDate === '' ? 'no record yet' : 'records of ' + sheet.recordsDate;
  const about = [sheet.machine, frame, records, sheet.recordsVersion].filter((part) => part !== '').map(unparted);
  const left = [
    ...capped(
      linesOf([{ kind: 'strong', text: sheet.code }, '\u2002', sheet.title], least, width, setting),
      2,
      width,
      setting,
    ),
    ...capped(linesOf(about.join(' · '), least, width, setting), most, width, setting),
  ];
  const goesOn =
    sheet.continues === undefined || sheet.continues === ''
      ? []
      : linesOf('continues at ' + sheet.continues, least, right, setting);
  const under = capped(goesOn, most, right, setting);
  const height = Math.max(heightOf(left), heightOf(under) + least.leading) + 5;
  return {
    height: height + 12,
    draw: (page, x, y, out) => {
      setLines(left, { x, y, width }, out);
      const edge = x + setting.width;
      const before = 'page ' + String(page) + ' of ';
      const room = setting.measure.width(before + '00000', 'regular') * least.size;
      out.push({ kind: 'total', x: edge - right, y: y + baseline(least), before, size: least.size, width: room });
      setLines(under, { x: edge - right, y: y + least.leading, width: right }, out);
      out.push({ kind: 'line', x1: x, y1: y + height, x2: edge, y2: y + height, weight: firm / 2 });
    },
  };
}

function capped(lines: readonly SetLine[], count: number, width: number, setting: Setting): readonly SetLine[] {
  if (lines.length <= count) return lines;
  const last = lines[count - 1];
  if (last === undefined) return lines.slice(0, count);
  const text = last.line.stretches.map((stretch) => stretch.text).join('');
  const short =
    Array.from(text)
      .slice(0, Math.max(1, Math.floor(Array.from(text).length * 0.9) - 2))
      .join('') + '…';
  return [...lines.slice(0, count - 1), ...linesOf(short, last.type, width, setting).slice(0, 1)];
}

/** A short part of the head stays on one line. */
function unparted(part: string): string {
  return part.length > 30 ? part : part.replaceAll(' ', '\u00a0');
}
