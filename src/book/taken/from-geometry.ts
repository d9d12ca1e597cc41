// What machine.yaml gives to a calculation: bore and stroke, gearing, tyres, chain, place.
import type { Figure } from '../../figure/figure.ts';
import { of } from '../../quantity/quantity.ts';
import { one, thou, toOne } from '../../quantity/units.ts';
import type { ToothPair } from '../../records/model.ts';
import type { Ask, Taken, Taker } from './taken.ts';
import { figureOfMachine, ofMachine, ofSetting, wordsOfMachine } from './taken.ts';

export const bore: Taker = (ask) => ofMachine(ask, ask.book.records.machine.geometry.bore, 'geometry', 'bore');
export const stroke: Taker = (ask) => ofMachine(ask, ask.book.records.machine.geometry.stroke, 'geometry', 'stroke');
export const rod: Taker = (ask) => ofMachine(ask, ask.book.records.machine.geometry.rod, 'geometry', 'rod');
export const altitude: Taker = (ask) => ofMachine(ask, ask.book.records.machine.altitude, 'place', 'altitude');
export const volts: Taker = (ask) => ofMachine(ask, ask.book.records.machine.features.volts, 'features', 'volts');
export const chainPitch: Taker = (ask) =>
  ofMachine(ask, ask.book.records.machine.geometry.chainPitch, 'geometry', 'chain', 'pitch');
export const roadRules: Taker = (ask) => wordsOfMachine(ask, ask.book.records.machine.roadRules, 'road rules');

function counted(ask: Ask, count: number | undefined, ...path: readonly string[]): Taken | undefined {
  if (count === undefined) return undefined;
  const at = { file: ask.book.records.machine.file, path };
  const figure: Figure = { quantity: of(count, one), unit: one, decimals: 0, origin: { kind: 'written', at } };
  return figureOfMachine(figure, at);
}

export const cylinders: Taker = (ask) => {
  const { cylinders: many, notKnown } = ask.book.records.machine.features;
  return notKnown?.includes('cylinders') === true ? undefined : counted(ask, many, 'features', 'cylinders');
};
export const chainLinks: Taker = (ask) =>
  counted(ask, ask.book.records.machine.geometry.chainLinks, 'geometry', 'chain', 'links');
export const gearboxSprocket: Taker = (ask) =>
  counted(ask, ask.book.records.machine.geometry.final?.driving, 'geometry', 'final');
export const wheelSprocket: Taker = (ask) =>
  counted(ask, ask.book.records.machine.geometry.final?.driven, 'geometry', 'final');

/** Three cells for 6 V, six for 12 V. */
export const cells: Taker = (ask) => {
  const marked = ask.book.records.machine.features.volts;
  if (marked === undefined) return undefined;
  return counted(ask, Math.round(marked.quantity / 2), 'features', 'volts');
};

/** Pistons for inch bores come in steps of ten thousandths; without a step the calculation takes 0.25 mm. */
export const oversizeStep: Taker = ({ book }) => {
  if (book.records.machine.units === 'metric') return undefined;
  const at = { file: 'src/book/taken/from-geometry.ts', path: [] };
  const origin = { kind: 'written', at, source: 'common practice' } as const;
  return {
    value: { quantity: of(10, thou), unit: thou, decimals: 0, origin },
    from: 'common practice for bores in inches',
  };
};

function pair(ask: Ask, teeth: ToothPair | undefined, ...path: readonly string[]): Taken | undefined {
  if (teeth === undefined) return undefined;
  const at = { file: ask.book.records.machine.file, path };
  const quantity = of(teeth.driven / teeth.driving, toOne);
  const figure: Figure = { quantity, unit: toOne, decimals: 3, origin: { kind: 'written', at } };
  return { ...figureOfMachine(figure, at), typed: `${String(teeth.driven)}:${String(teeth.driving)}` };
}

export const primary: Taker = (ask) => pair(ask, ask.book.records.machine.geometry.primary, 'geometry', 'primary');
export const final: Taker = (ask) => pair(ask, ask.book.records.machine.geometry.final, 'geometry', 'final');

/** The gear that is asked for, else the highest. */
export const gear: Taker = (ask) => {
  const { gears } = ask.book.records.machine.geometry;
  const asked = Number(ask.which['in-gear'] ?? gears.length);
  return pair(ask, gears[asked - 1], 'geometry', 'gears', 'gear ' + String(asked));
};

/** The compression ratio as the maker counts it. */
export const compressionRatio: Taker = (ask) => {
  const known = ask.book.records.machine.geometry.compressionRatio;
  if (known === undefined) return undefined;
  const at = { file: ask.book.records.machine.file, path: ['geometry', 'compression ratio'] };
  const { ratio, decimals, from } = known;
  const figure: Figure = { quantity: of(ratio, toOne), unit: toOne, decimals, origin: { kind: 'written', at } };
  return { value: figure, from: at.file + ': geometry, compression ratio, counted from ' + from };
};

/** The stroke that the compression ratio counts: all of it, or what is left when the exhaust port closes. */
export const countedStroke: Taker = (ask) => {
  const known = ask.book.records.machine.geometry.compressionRatio;
  if (known?.from === 'full stroke') return stroke(ask);
  return known === undefined ? undefined : portClosing(ask);
};

/** Stroke left when the exhaust port closes: a setting of the maker's book under this id. */
export const portClosing: Taker = (ask) => ofSetting(ask, 'exhaust-port-closes');

/** The rear tyre unless the front is asked for. */
export const tyre: Taker = (ask) => {
  const { frontTyre, rearTyre } = ask.book.records.machine.geometry;
  return ask.which.wheel === 'front'
    ? wordsOfMachine(ask, frontTyre, 'geometry', 'front tyre')
    : wordsOfMachine(ask, rearTyre, 'geometry', 'rear tyre');
};
