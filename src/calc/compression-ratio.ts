// Compression ratio and clearance volume, over the full stroke and from the closing of the exhaust port.
import { barAbsolute, cubicCentimetre, millimetre, one, toOne } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { sweptVolume } from './displacement.ts';
import { quantity, result } from './input.ts';

export const compressionRatio = calculation({
  id: 'compression-ratio',
  name: 'Compression ratio',
  purpose: 'The ratio from the burette, over the full stroke and from port closing.',
  formula: 'r = (V_s + V_c)/V_c;  r_port = (π/4 · b² · h + V_c)/V_c',
  inputs: {
    bore: quantity('b', 'bore', millimetre, { above: 0 }),
    stroke: quantity('s', 'stroke', millimetre, { above: 0 }),
    clearance: quantity('V_c', 'clearance volume at top dead centre', cubicCentimetre, { above: 0 }),
    'port height': quantity('h', 'stroke left when the exhaust port closes', millimetre, { optional: true, above: 0 }),
  },
  outputs: {
    ratio: result('r', 'over the full stroke', toOne, 2),
    'from port closing': result('r_port', 'from port closing', toOne, 2),
  },
  range: 'The clearance volume includes the plug recess to the first thread; say how the burette was read.',
  source: 'Geometry; as in Gupta and Mathur, Internal Combustion Engines.',
  tables: ['values-engine'],
  cautions: ['plug-out-to-turn'],
  example: {
    given: { bore: '50 mm', stroke: '44.5 mm', clearance: '9.6 cc', 'port height': '29.3 mm' },
    gives: { ratio: '10.10:1', 'from port closing': '6.99:1' },
  },
  work: (given) => {
    const bore = given.number('bore', millimetre);
    const clearance = given.number('clearance', cubicCentimetre);
    const stroke = given.number('stroke', millimetre);
    const port = given.maybe('port height', millimetre);
    if (port !== undefined && port > stroke)
      given.doubt('calculation-out-of-range', 'the port cannot close above the stroke');
    const over = (length: number): number => (sweptVolume(bore, length, 1) + clearance) / clearance;
    return { ratio: over(stroke), 'from port closing': port === undefined || port > stroke ? undefined : over(port) };
  },
});

export const clearanceVolume = calculation({
  id: 'clearance-volume',
  name: 'Clearance volume for a ratio',
  purpose: 'The clearance volume that a wanted compression ratio needs, to compare with the burette.',
  formula: 'V_c = V_s/(r − 1)',
  inputs: {
    bore: quantity('b', 'bore', millimetre, { above: 0 }),
    stroke: quantity('s', 'stroke, or what is left of it from port closing', millimetre, { above: 0 }),
    ratio: quantity('r', 'compression ratio', toOne, { above: 1 }),
  },
  outputs: { clearance: result('V_c', 'clearance volume', cubicCentimetre, 2) },
  range: 'The ratio and the stroke must be of one kind: full stroke with full stroke, port closing with port closing.',
  source: 'Geometry.',
  tables: ['values-engine'],
  cautions: ['plug-out-to-turn'],
  example: { given: { bore: '50 mm', stroke: '44.5 mm', ratio: '10.1:1' }, gives: { clearance: '9.60 cc' } },
  work: (given) => ({
    clearance:
      sweptVolume(given.number('bore', millimetre), given.number('stroke', millimetre), 1) /
      (given.number('ratio', toOne) - 1),
  }),
});

export const ratioFromPressures = calculation({
  id: 'ratio-from-pressures',
  name: 'Compression ratio from two pressures',
  purpose: 'The ratio from pressures at two points of the compression stroke, without taking the head off.',
  formula: 'q = (p_b/p_a)^(1/n);  r = 1 + (q − 1)/(f_b − q f_a)',
  inputs: {
    first: quantity('p_a', 'first pressure, absolute', barAbsolute, { above: 0 }),
    'first at': quantity('f_a', 'stroke done at the first, as a part of one', one, { low: 0, high: 1 }),
    second: quantity('p_b', 'second pressure, absolute', barAbsolute, { above: 0 }),
    'second at': quantity('f_b', 'stroke done at the second, as a part of one', one, { low: 0, high: 1 }),
    exponent: quantity('n', 'polytropic exponent', one, { low: 1, high: 1.67 }),
  },
  outputs: { ratio: result('r', 'compression ratio', toOne, 2) },
  range: 'The second pressure later in the stroke and higher than the first.',
  source: 'Rajput; Mathur and Sharma: worked examples.',
  tables: ['values-engine'],
  cautions: ['spark-test', 'lead-open'],
  example: {
    given: { first: '1.4 bar', 'first at': '0.25', second: '3.6 bar', 'second at': '0.75', exponent: '1.3' },
    gives: { ratio: '5.58:1' },
  },
  work: (given) => {
    const q =
      (given.number('second', barAbsolute) / given.number('first', barAbsolute)) ** (1 / given.number('exponent', one));
    const under = given.number('second at', one) - q * given.number('first at', one);
    if (!(q > 1) || under <= 0)
      given.doubt('calculation-out-of-range', 'these two pressures do not belong to one compression stroke');
    return { ratio: q > 1 && under > 0 ? 1 + (q - 1) / under : undefined };
  },
});
