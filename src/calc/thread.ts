// A thread by its designation: M8x1.25, 1/4 BSF, 5/16-24 UNF, 1/4 x 26 Cycle. Lengths in millimetres.
import { readNumber } from '../quantity/read-number.ts';
import { cellNumber, table } from '../table/table.ts';

export type Series = 'M' | 'BSW' | 'BSF' | 'BSC' | 'UNC' | 'UNF' | 'UN';

export interface Thread {
  /** As it is set: `M8×1.25`, `1/4–26 BSF`. */
  readonly name: string;
  readonly series: Series;
  /** Nominal (major) diameter, mm. */
  readonly diameter: number;
  /** mm. */
  readonly pitch: number;
  /** Included angle of the thread, degrees. */
  readonly angle: 55 | 60;
}

const metric = /^M\s*(\d+(?:\.\d+)?)(?:\s*(?:[x×*-])\s*(\d+(?:\.\d+)?))?\s*(?:mm)?\s*(?:6[gH]|LH|left hand)?$/i;
const inchSize =
  /^(#\d+|no\.?\s*\d+|\d+\s+\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?)\s*(?:"|″|in\.?|inch)?\s*(?:[x×-]?\s*(\d+)\s*(?:tpi|threads per inch)?)?\s*(?:LH|left hand)?$/i;
const seriesWords: readonly (readonly [RegExp, Series])[] = [
  [/\b(?:bsw|whitworth|whit\.?|bs w)\b/i, 'BSW'],
  [/\bbsf\b/i, 'BSF'],
  [/\b(?:bsc|bscy|cei|cycle)\b/i, 'BSC'],
  [/\bunc\b/i, 'UNC'],
  [/\bunf\b/i, 'UNF'],
];
const angles: Readonly<Record<Series, 55 | 60>> = { M: 60, BSW: 55, BSF: 55, BSC: 60, UNC: 60, UNF: 60, UN: 60 };

function readMetric(text: string): Thread | undefined {
  const parts = metric.exec(text);
  if (parts === null) return undefined;
  const size = parts[1] ?? '';
  const diameter = Number(size);
  const pitch = parts[2] === undefined ? cellNumber('metric-threads', 'M' + size, 'pitch') : Number(parts[2]);
  if (pitch === undefined || pitch <= 0 || pitch > diameter / 2) return undefined;
  return { name: 'M' + size + '×' + (parts[2] ?? pitch), series: 'M', diameter, pitch, angle: 60 };
}

/** The row of the table with this size and, where they are given, series and threads per inch; undefined unless there is just one. */
function inchRow(size: string, series: Series | undefined, perInch: string | undefined): string | undefined {
  const fits = table('inch-threads').rows.filter(
    (row) =>
      row.cells['size'] === size &&
      (series === undefined || row.cells['series'] === series) &&
      (perInch === undefined || row.cells['threads per inch'] === perInch),
  );
  return fits.length === 1 ? fits[0]?.id : undefined;
}

function readInch(text: string): Thread | undefined {
  const named = seriesWords.find(([word]) => word.test(text));
  const bare = named === undefined ? text : text.replace(named[0], ' ').replace(/\s+/g, ' ').trim();
  const parts = inchSize.exec(bare);
  if (parts === null) return undefined;
  const size = (parts[1] ?? '').replace(/^no\.?\s*/i, '#');
  const row = inchRow(size, named?.[1], parts[2]) ?? inchRow(size, named?.[1], undefined);
  const found = row === undefined ? undefined : table('inch-threads').byId.get(row);
  const seriesFound = named?.[1] ?? seriesWords.find(([word]) => word.test(found?.cells['series'] ?? ''))?.[1];
  const perInch = Number(parts[2] ?? found?.cells['threads per inch'] ?? Number.NaN);
  const plain = readNumber(size);
  const inches =
    row === undefined ? (plain.ok ? plain.value.value : undefined) : cellNumber('inch-threads', row, 'diameter');
  if (seriesFound === undefined || inches === undefined || !(perInch > 0)) return undefined;
  return {
    name: size + '–' + perInch + ' ' + seriesFound,
    series: seriesFound,
    diameter: inches * 25.4,
    pitch: 25.4 / perInch,
    angle: angles[seriesFound],
  };
}

/**
 * Reads a designation. Without a pitch the coarse one (metric) or the one of the named series is taken; an inch size
 * without a series is read only when its threads per inch leave one series. Undefined when it names no thread we know.
 * @example readThread('M8')?.pitch // 1.25
 */
export function readThread(text: string): Thread | undefined {
  const plain = text.trim().replace(/\s+/g, ' ');
  return readMetric(plain) ?? readInch(plain);
}
