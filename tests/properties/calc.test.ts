// Properties that hold for every calculation of the shelf, and for some of them by physics.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Calculation, Value, Values } from '../../src/calc/calculation.ts';
import { coverTorque } from '../../src/calc/cover-torque.ts';
import { calculationById, calculations } from '../../src/calc/list.ts';
import { workOut } from '../../src/calc/work.ts';
import { figureOf } from '../../src/figure/kind.ts';
import type { Figure } from '../../src/figure/figure.ts';
import { printFigure } from '../../src/figure/print.ts';
import { inUnit, of, ofSi } from '../../src/quantity/quantity.ts';
import { readQuantity } from '../../src/quantity/read-quantity.ts';
import { units } from '../../src/quantity/units.ts';
import { tableIds } from '../../src/table/table.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
const origin = { kind: 'written', at: { file: '', path: [] } } as const;

function outputsOf(
  calculation: Calculation,
  given: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const worked = workOut(calculation.id, given);
  const figures = Object.entries(worked.figures).map(([name, figure]) => [name, plain(printFigure(figure))]);
  return {
    ...Object.fromEntries(figures),
    ...Object.fromEntries(Object.entries(worked.words).map(([name, text]) => [name, plain(text)])),
  };
}

/** The example's values as figures. */
function exampleValues(calculation: Calculation): Readonly<Record<string, Value>> {
  return Object.fromEntries(
    Object.entries(calculation.example.given).map(([name, text]): [string, Value] => {
      const input = calculation.inputs[name];
      if (input === undefined || input.kind === 'words') return [name, text];
      const figures = text.split(';').map((part): Figure => {
        const read = readQuantity(part, input.unit.dimension);
        if (!read.ok) throw new Error(calculation.id + ' ' + name + ': ' + read.why.message);
        return { ...read.value, origin };
      });
      return [name, input.kind === 'list' ? figures : (figures[0] ?? text)];
    }),
  );
}

describe.each(calculations.map((calculation) => [calculation.id, calculation] as const))('%s', (_, calculation) => {
  test('is declared whole', () => {
    for (const text of [
      calculation.name,
      calculation.purpose,
      calculation.formula,
      calculation.range,
      calculation.source,
    ])
      expect(text.length).toBeGreaterThan(2);
    for (const id of calculation.tables) expect(tableIds).toContain(id);
    expect(calculation.id).toMatch(/^[a-z0-9-]+$/);
  });

  test('gives what its example says', () => {
    const outputs = outputsOf(calculation, calculation.example.given);
    expect(Object.keys(calculation.example.gives).length).toBeGreaterThan(0);
    for (const [name, text] of Object.entries(calculation.example.gives)) expect(outputs[name], name).toBe(text);
  });

  test('names what is missing, never a silent number', () => {
    const worked = calculation.run({});
    expect(worked.figures).toEqual({});
    expect(worked.doubts.some((doubt) => doubt.severity === 'problem')).toBe(true);
  });

  test('shows its working: formula, source and everything that went in', () => {
    const worked = calculation.run(exampleValues(calculation));
    for (const figure of Object.values(worked.figures)) {
      if (figure.origin.kind !== 'worked out') throw new Error('no working');
      expect(figure.origin.working).toMatchObject({
        calculation: calculation.id,
        formula: calculation.formula,
        source: calculation.source,
      });
      const quantities = Object.values(exampleValues(calculation)).flatMap((value) =>
        typeof value === 'string' ? [] : 'unit' in value ? [value] : value,
      );
      expect(figure.origin.working.inputs.length).toBeGreaterThanOrEqual(quantities.length);
    }
  });

  test('gives the same whatever units its values are written in', () => {
    const values = exampleValues(calculation);
    const first = calculation.run(values);
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat()), (stream) => {
        const again = (figure: Figure): Figure => {
          const choices = units[figure.unit.dimension];
          const unit = choices[(stream.next().value ?? 0) % choices.length] ?? figure.unit;
          return { ...figure, unit, quantity: of(inUnit(figure.quantity, unit), unit) };
        };
        const changed: Values = Object.fromEntries(
          Object.entries(values).map(([name, value]): [string, Value] => [
            name,
            typeof value === 'string' ? value : 'unit' in value ? again(value) : value.map(again),
          ]),
        );
        const second = calculation.run(changed);
        for (const [name, figure] of Object.entries(first.figures)) {
          expect(Math.abs((second.figures[name]?.quantity ?? Number.NaN) - figure.quantity), name).toBeLessThanOrEqual(
            1e-6 * Math.max(1e-12, Math.abs(figure.quantity)),
          );
        }
      }),
      { numRuns: 20 },
    );
  });
});

/** The number of one output in its own unit. */
function number(id: string, given: Readonly<Record<string, string>>, output: string): number {
  const figure = workOut(id, given).figures[output];
  const spec = calculationById(id)?.outputs[output];
  if (figure === undefined || spec?.kind !== 'quantity') throw new Error(id + ' gives no ' + output);
  return inUnit(figure.quantity, spec.unit);
}

describe('there and back', () => {
  const drive = fc.record({
    stroke: fc.double({ min: 30, max: 120, noNaN: true }),
    rods: fc.double({ min: 1.4, max: 2.6, noNaN: true }),
    angle: fc.double({ min: 1, max: 179, noNaN: true }),
    offset: fc.constantFrom(0, 0.5, 1.5),
  });

  test('piston position and crank angle', () => {
    fc.assert(
      fc.property(drive, ({ stroke, rods, angle, offset }) => {
        const crank = {
          stroke: stroke.toFixed(3) + ' mm',
          rod: (stroke * rods).toFixed(3) + ' mm',
          offset: offset.toFixed(1) + ' mm',
        };
        const position = number('piston-position', { ...crank, angle: angle.toFixed(6) + '°' }, 'position');
        expect(number('crank-angle', { ...crank, position: position.toFixed(9) + ' mm' }, 'angle')).toBeCloseTo(
          angle,
          3,
        );
      }),
    );
  });

  test('an offset pin still travels the whole stroke', () => {
    fc.assert(
      fc.property(drive, ({ stroke, rods, offset }) => {
        const crank = {
          stroke: stroke.toFixed(6) + ' mm',
          rod: (stroke * rods).toFixed(6) + ' mm',
          offset: offset.toFixed(1) + ' mm',
        };
        const travels = Array.from({ length: 181 }, (_, index) =>
          number('piston-position', { ...crank, angle: (170 + index / 18).toFixed(4) + '°' }, 'position'),
        );
        expect(Math.max(...travels)).toBeCloseTo(stroke, 2);
      }),
      { numRuns: 20 },
    );
  });

  test('links and centre distance of a chain', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 11, max: 20 }),
        fc.integer({ min: 21, max: 60 }),
        fc.integer({ min: 60, max: 140 }),
        (small, large, even) => {
          const links = even + large;
          const chain = { pitch: '12.7 mm', small: String(small), large: String(large) };
          const centre = number('chain-centre', { ...chain, links: String(links) }, 'centre');
          expect(number('chain-length', { ...chain, centre: centre.toFixed(9) + ' mm' }, 'exact')).toBeCloseTo(
            links,
            6,
          );
        },
      ),
    );
  });

  test('wrench setting and torque at the fastener', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 0, max: 180 }),
        fc.integer({ min: 0, max: 150 }),
        (torque, angle, extension) => {
          const wrench = { length: '300 mm', extension: String(extension) + ' mm', angle: String(angle) + '°' };
          const setting = number('wrench-setting', { ...wrench, torque: String(torque) + ' N·m' }, 'setting');
          expect(number('wrench-torque', { ...wrench, setting: setting.toFixed(9) + ' N·m' }, 'torque')).toBeCloseTo(
            torque,
            6,
          );
        },
      ),
    );
  });

  test('ratio and clearance volume', () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 14, noNaN: true }), (ratio) => {
        const cylinder = { bore: '50 mm', stroke: '44.5 mm' };
        const clearance = number('clearance-volume', { ...cylinder, ratio: ratio.toFixed(9) + ':1' }, 'clearance');
        expect(
          number('compression-ratio', { ...cylinder, clearance: clearance.toFixed(12) + ' cc' }, 'ratio'),
        ).toBeCloseTo(ratio, 6);
      }),
    );
  });

  test('a tightening order holds every fastener once', () => {
    const spot = fc.tuple(fc.integer({ min: -100, max: 100 }), fc.integer({ min: -100, max: 100 }));
    fc.assert(
      fc.property(
        fc.array(spot, { minLength: 1, maxLength: 16 }),
        fc.constantFrom('crosswise', 'spiral'),
        (spots, kind) => {
          const axis = (index: 0 | 1): string => spots.map((one) => String(one[index]) + ' mm').join('; ');
          const order = workOut('tightening-order', { x: axis(0), y: axis(1), kind }).words['order'] ?? '';
          expect(
            order
              .split(', ')
              .map(Number)
              .toSorted((a, b) => a - b),
          ).toEqual(spots.map((_, index) => index + 1));
        },
      ),
    );
  });
});

describe('as physics wants it', () => {
  test('thinner air with height, temperature falling', () => {
    const heights = Array.from({ length: 60 }, (_, index) => String(index * 100) + ' m');
    for (const output of ['pressure', 'density', 'temperature']) {
      const falls = heights.map((altitude) => number('standard-atmosphere', { altitude }, output));
      expect(
        falls.every((value, index) => index === 0 || value < (falls[index - 1] ?? 0)),
        output,
      ).toBe(true);
    }
  });

  test('moist air weighs less than dry', () => {
    const state = { pressure: '101325 Pa', temperature: '25 °C' };
    const weights = [0, 25, 50, 75, 100].map((h) =>
      number('humid-air', { ...state, humidity: String(h) + ' %' }, 'density'),
    );
    expect(weights.every((value, index) => index === 0 || value < (weights[index - 1] ?? 0))).toBe(true);
  });

  test('more friction wants more torque, a stronger class more, an oiled thread less', () => {
    const middle = (fastener: Parameters<typeof coverTorque>[0]): number =>
      coverTorque(fastener)?.quantity ?? Number.NaN;
    expect(middle({ thread: 'M6', propertyClass: '8.8', into: 'steel' })).toBeGreaterThan(
      middle({ thread: 'M6', propertyClass: '4.8', into: 'steel' }),
    );
    expect(middle({ thread: 'M6', propertyClass: '4.8', threads: 'oiled' })).toBeLessThan(
      middle({ thread: 'M6', propertyClass: '4.8', threads: 'dry' }),
    );
    expect(middle({ thread: 'M8' })).toBeGreaterThan(middle({ thread: 'M6' }));
  });

  test('a soft female thread governs a strong bolt and is named', () => {
    const worked = workOut('cover-torque', { thread: 'M6', class: '12.9', into: 'aluminium' });
    expect(worked.words['governs']).toBe('thread in aluminium');
    expect(workOut('cover-torque', { thread: 'M6', class: '4.8', into: 'steel' }).words['governs']).toBe('bolt');
  });

  test('a cover torque is a band with its working, and nothing for a thread that is not known', () => {
    const torque = coverTorque({ thread: 'M6', into: 'aluminium' });
    expect(torque?.band?.low).toBeLessThan(torque?.band?.high ?? 0);
    expect(torque?.origin.kind).toBe('worked out');
    expect(coverTorque({ thread: 'seven and a half' })).toBeUndefined();
    expect(coverTorque({ thread: 'M6', propertyClass: '99.9' })).toBeUndefined();
  });

  test('the whole band keeps a bolt below its proof load at the least friction', () => {
    for (const thread of ['M4', 'M5', 'M6', 'M8', 'M10', '1/4 BSF', '5/16-24 UNF', '1/4-26 BSC']) {
      for (const threads of ['dry', 'oiled', 'plated'] as const) {
        const worked = workOut('cover-torque', { thread, class: thread.startsWith('M') ? '4.8' : '4.8', threads });
        const proof = workOut('bolt-strength', { thread, class: '4.8' }).figures['proof load'];
        expect(worked.figures['preload']?.quantity ?? Infinity, thread).toBeLessThan(proof?.quantity ?? 0);
      }
    }
  });
});

describe('uncertainty and bands are carried', () => {
  const bore = { ...figureOf(50, units.length[0] ?? failing(), 2, origin), uncertainty: ofSi<'length'>(0.00001) };

  test('the relative uncertainty of a volume is twice that of its bore', () => {
    const calculation = calculationById('displacement');
    const stroke = exampleValues(calculation ?? failing())['stroke'];
    const worked = calculation?.run({ bore, stroke, cylinders: figureOf(1, units.count[0] ?? failing(), 0, origin) });
    const volume = worked?.figures['displacement'];
    expect((volume?.uncertainty ?? 0) / (volume?.quantity ?? 1)).toBeCloseTo((2 * 0.01) / 50, 6);
  });

  test('a band in is a band out', () => {
    const banded = {
      ...figureOf(50, units.length[0] ?? failing(), 2, origin),
      band: { low: ofSi<'length'>(0.0499), high: ofSi<'length'>(0.0501) },
    };
    const worked = calculationById('displacement')?.run({
      bore: banded,
      stroke: bore,
      cylinders: figureOf(1, units.count[0] ?? failing(), 0, origin),
    });
    const band = worked?.figures['displacement']?.band;
    expect((band?.high ?? 0) / (band?.low ?? 1)).toBeCloseTo((50.1 / 49.9) ** 2, 9);
  });
});

function failing(): never {
  throw new Error('not there');
}

describe('doubts', () => {
  test.each([
    [
      'displacement',
      { bore: '0 mm', stroke: '44.5 mm', cylinders: '2' },
      'calculation-out-of-range',
      /must be more than/,
    ],
    [
      'displacement',
      { bore: '50 N·m', stroke: '44.5 mm', cylinders: '2' },
      'calculation-value-wrong',
      /unit of torque/,
    ],
    [
      'displacement',
      { bore: '500 mm', stroke: '44.5 mm', cylinders: '2' },
      'calculation-unlikely',
      /outside the usual/,
    ],
    [
      'displacement',
      { bore: '50 mm', stroke: '44.5 mm', cylinders: '1.5' },
      'calculation-out-of-range',
      /whole number/,
    ],
    ['displacement', { bore: '50 mm', colour: 'red' }, 'calculation-value-wrong', /“colour” is not a value/],
    ['no-such', {}, 'calculation-unknown', /“no-such”/],
    ['piston-position', { stroke: '60 mm', rod: '20 mm', angle: '20°' }, 'calculation-out-of-range', /rod this short/],
    ['torque-slip', { torque: '2.5 N·m', neighbours: '24 N·m; 25 N·m' }, 'torque-unit-slip', /kgf·m read as N·m/],
    [
      'torque-slip',
      { torque: '100 N·m', limit: '10 N·m' },
      'torque-above-strength',
      /more than the fastener can carry/,
    ],
    ['cranking-pressure', { ratio: '7:1', reading: '15 bar' }, 'compression-above-expected', /carbon/],
    ['tyre-date', { code: '9912' }, 'calculation-value-wrong', /not a date code/],
    ['chain-wear', { length: '240 mm', pitches: '20', pitch: '12.7 mm' }, 'calculation-unlikely', /count the pitches/],
  ])('%s with %o', (id, given, code, message) => {
    const doubt = workOut(id, given).doubts.find((one) => one.code === code);
    expect(doubt?.message).toMatch(message);
  });
});
