// Air and mixture around the machine: how much richer a carburettor runs higher up or in warmth, and the main jet that brings it back.
import type { Book } from '../../book/book.ts';
import { calculationOn } from '../../book/taken/on-machine.ts';
import { jet as jetOf } from '../../book/taken/from-books.ts';
import { calculationById } from '../../calc/list.ts';
import type { Figure } from '../../figure/figure.ts';
import { written } from '../../figure/print.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';

export interface AirCell {
  readonly temperature: Figure;
  /** Richer by, as a share; negative where it runs weaker. */
  readonly richer: Figure;
  /** The nearest jet, by each system of numbering. */
  readonly bore?: Figure;
  readonly flow?: Figure;
}
export interface AirRow {
  readonly altitude: Figure;
  readonly cells: readonly AirCell[];
}
export interface AirTable {
  /** Where the engine is taken to be jetted: the place of the machine, on a mild day. */
  readonly home: Figure;
  readonly mild: Figure;
  /** The jet as the book numbers it. */
  readonly jet?: Figure;
  readonly rows: readonly AirRow[];
}

const places = {
  metric: { altitudes: ['0 m', '500 m', '1000 m', '1500 m', '2000 m'], temperatures: ['0 °C', '15 °C', '30 °C'] },
  imperial: { altitudes: ['0 ft', '2000 ft', '4000 ft', '6000 ft'], temperatures: ['32 °F', '60 °F', '90 °F'] },
} as const;
const middleTemperature = 1;
/** Any ratio will do: how much richer does not depend on it. */
const anyMixture = '14.7';

function figureOf(text: string, dimension: Dimension): Figure | undefined {
  const read = readQuantity(text, dimension);
  return read.ok ? written(read.value, { file: 'content/sheets/settings.md', path: [] }, 'the table') : undefined;
}

function densityAt(altitude: Figure, temperature: Figure): Figure | undefined {
  return calculationById('humid-air')?.run({ altitude, temperature }).figures['density'];
}

function cellAt(book: Book, home: Figure, altitude: Figure, temperature: Figure): AirCell | undefined {
  const now = densityAt(altitude, temperature);
  const ratio = figureOf(anyMixture, 'count');
  if (now === undefined || ratio === undefined) return undefined;
  const given = { 'density before': home, 'density now': now };
  const richer = calculationById('mixture-shift')?.run({ ...given, ratio }).figures['richer'];
  if (richer === undefined) return undefined;
  const jetBy = (numbering: string): Figure | undefined =>
    calculationOn(book, 'jet-change', { ...given, numbering })?.worked.figures['jet'];
  const [bore, flow] = [jetBy('bore'), jetBy('flow')];
  return {
    temperature,
    richer: { ...richer, decimals: 0 },
    ...(bore === undefined ? {} : { bore }),
    ...(flow === undefined ? {} : { flow }),
  };
}

/** The table for the place of the machine; nothing where its altitude is not recorded. */
export function airTable(book: Book): AirTable | undefined {
  const { machine } = book.records;
  const wanted = places[machine.units];
  const mild = figureOf(wanted.temperatures[middleTemperature], 'temperature');
  if (machine.altitude === undefined || mild === undefined) return undefined;
  const home = written(machine.altitude, { file: machine.file, path: ['place', 'altitude'] });
  const homeDensity = densityAt(home, mild);
  if (homeDensity === undefined) return undefined;
  const temperatures = wanted.temperatures.flatMap((text) => figureOf(text, 'temperature') ?? []);
  const rows = wanted.altitudes.flatMap((text): readonly AirRow[] => {
    const altitude = figureOf(text, 'length');
    if (altitude === undefined) return [];
    return [{ altitude, cells: temperatures.flatMap((one) => cellAt(book, homeDensity, altitude, one) ?? []) }];
  });
  const taken = jetOf({ book, which: {} })?.value;
  const jet = taken !== undefined && typeof taken !== 'string' && 'unit' in taken ? taken : undefined;
  return { home, mild, rows, ...(jet === undefined ? {} : { jet }) };
}
