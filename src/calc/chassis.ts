// Wheels, springs and forks: spoke length, spring rate, sag, fork oil level, tyre pressure warm and cold, tread.
import {
  bar,
  celsius,
  degree,
  hectopascalAbsolute,
  millilitre,
  millimetre,
  newton,
  newtonPerMillimetre,
  one,
  percent,
} from '../quantity/units.ts';
import { published, table } from '../table/table.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying, words } from './input.ts';

export const spokeLength = calculation({
  id: 'spoke-length',
  name: 'Spoke length',
  purpose: 'The length of a spoke from rim, flange and crossing, before ordering a set.',
  formula: 'L = √(R² + r² + o² − 2 R r cos(4 π X/n)) − s',
  inputs: {
    rim: quantity('R', 'radius at the nipple seat', millimetre, { above: 0 }),
    flange: quantity('r', 'radius of the spoke holes in the flange', millimetre, { above: 0 }),
    offset: quantity('o', 'flange from the middle of the rim', millimetre, { low: 0 }),
    crossing: quantity('X', 'spokes crossed', one, { low: 0, high: 8 }),
    spokes: quantity('n', 'spokes in the wheel', one, { low: 8, high: 80, whole: true }),
    hole: quantity('s', 'half the hole in the flange', millimetre, { optional: true, low: 0, high: 5 }),
  },
  outputs: {
    length: result('L', 'length', millimetre, 2),
    angle: result('', 'angle at the hub', degree, 2),
    factor: result('2 cos a', 'factor', one, 4),
  },
  range:
    'Straight tangent lacing; both flanges alike unless worked out for each. Leaving the hole out adds 1 to 1.3 mm.',
  source: 'Law of cosines, as in wheel building texts.',
  tables: ['values-spokes'],
  example: {
    given: { rim: '277.5 mm', flange: '29 mm', offset: '39 mm', crossing: '3', spokes: '36', hole: '1.3 mm' },
    gives: { length: '265.76 mm' },
  },
  work: (given) => {
    const [R, r, o] = [
      given.number('rim', millimetre),
      given.number('flange', millimetre),
      given.number('offset', millimetre),
    ];
    const angle = (4 * Math.PI * given.number('crossing', one)) / given.number('spokes', one);
    if (angle > Math.PI) given.doubt('calculation-out-of-range', 'so many spokes cannot be crossed in this wheel');
    const length =
      Math.sqrt(R ** 2 + r ** 2 + o ** 2 - 2 * R * r * Math.cos(angle)) - (given.maybe('hole', millimetre) ?? 0);
    return { length, angle: (angle * 180) / Math.PI, factor: 2 * Math.cos(angle) };
  },
});

export const springRate = calculation({
  id: 'spring-rate',
  name: 'Spring rate',
  purpose: 'The rate of a spring from two loads on the bench or from its wire, and its load at a length.',
  formula: 'k = ΔF/Δx, or k = G d⁴/(8 n D³)',
  inputs: {
    'first load': quantity('F₁', 'first load', newton, { optional: true, low: 0 }),
    'first length': quantity('x₁', 'length under it', millimetre, { optional: true, above: 0 }),
    'second load': quantity('F₂', 'second load', newton, { optional: true, above: 0 }),
    'second length': quantity('x₂', 'length under it', millimetre, { optional: true, above: 0 }),
    wire: quantity('d', 'wire', millimetre, { optional: true, above: 0 }),
    coil: quantity('D', 'mean coil diameter', millimetre, { optional: true, above: 0 }),
    turns: quantity('n', 'working coils', one, { optional: true, above: 0 }),
  },
  outputs: { rate: result('k', 'rate', newtonPerMillimetre, 2) },
  range: 'Straight springs of round steel wire (G = 79 300 MPa); progressive springs have no one rate.',
  source: 'Definition; Shigley, equation 10-9.',
  tables: [],
  example: {
    given: { 'first load': '100 N', 'first length': '180 mm', 'second load': '300 N', 'second length': '150 mm' },
    gives: { rate: '6.67 N/mm' },
  },
  work: (given) => {
    const [f1, x1, f2, x2] = [
      given.maybe('first load', newton),
      given.maybe('first length', millimetre),
      given.maybe('second load', newton),
      given.maybe('second length', millimetre),
    ];
    if (f1 !== undefined && x1 !== undefined && f2 !== undefined && x2 !== undefined) {
      if ((f2 - f1) * (x1 - x2) <= 0)
        given.doubt('calculation-out-of-range', 'the larger load must give the shorter length');
      return { rate: (f2 - f1) * (x1 - x2) > 0 ? (f2 - f1) / (x1 - x2) : undefined };
    }
    const [d, D, n] = [given.maybe('wire', millimetre), given.maybe('coil', millimetre), given.maybe('turns', one)];
    if (d !== undefined && D !== undefined && n !== undefined) return { rate: (79_300 * d ** 4) / (8 * n * D ** 3) };
    given.doubt('calculation-value-missing', 'two loads with their lengths, or wire, coil and turns, are wanted');
    return {};
  },
});

export const sag = calculation({
  id: 'sag',
  name: 'Sag',
  purpose: 'How far the springs settle under machine and rider, against the travel.',
  formula: 'sag = extended − loaded;  share = sag/travel',
  inputs: {
    extended: quantity('', 'length fully extended', millimetre, { above: 0 }),
    machine: quantity('', 'length under the machine alone', millimetre, { optional: true, above: 0 }),
    rider: quantity('', 'length with rider', millimetre, { optional: true, above: 0 }),
    travel: quantity('', 'travel', millimetre, { optional: true, above: 0 }),
  },
  outputs: {
    'machine sag': result('', 'under the machine', millimetre, 0),
    'rider sag': result('', 'with rider', millimetre, 0),
    share: result('', 'of the travel, with rider', percent, 0),
    says: saying('what it points to'),
  },
  range:
    'Push down and let rise, then lift and let settle; take the mean, which takes the stiction out. A quarter to a third of the travel with rider is common practice.',
  source: 'Common practice.',
  tables: [],
  example: {
    given: { extended: '120 mm', machine: '108 mm', rider: '90 mm', travel: '100 mm' },
    gives: { 'machine sag': '12 mm', 'rider sag': '30 mm', share: '30 %', says: 'in the common range' },
  },
  work: (given) => {
    const extended = given.number('extended', millimetre);
    const [machine, rider, travel] = [
      given.maybe('machine', millimetre),
      given.maybe('rider', millimetre),
      given.maybe('travel', millimetre),
    ];
    const loaded = rider === undefined ? undefined : extended - rider;
    if (loaded !== undefined && loaded < 0)
      given.doubt('calculation-unlikely', 'the spring is longer under the rider than free: readings are swapped');
    const share = loaded === undefined || travel === undefined ? undefined : (loaded / travel) * 100;
    return {
      'machine sag': machine === undefined ? undefined : extended - machine,
      'rider sag': loaded,
      share,
      says: share === undefined ? undefined : sagSays(share),
    };
  },
});

function sagSays(share: number): string {
  if (share < 25) return 'less than a quarter: stiff springs or much preload';
  return share > 35 ? 'more than a third: soft or tired springs' : 'in the common range';
}

export const forkOil = calculation({
  id: 'fork-oil',
  name: 'Fork oil level',
  purpose: 'How the oil level changes with the amount, so that a dried fork is filled by level.',
  formula: 'Δh = ΔV/(π/4 · (D² − d²))',
  inputs: {
    amount: quantity('ΔV', 'oil added or taken', millilitre),
    tube: quantity('D', 'inner diameter of the tube', millimetre, { above: 0, high: 80 }),
    inside: quantity('d', 'solid part inside at that height (damper rod, spring taken as out)', millimetre, {
      optional: true,
      low: 0,
      high: 60,
    }),
  },
  outputs: { level: result('Δh', 'level moves by', millimetre, 1), 'per ml': result('', 'for each ml', millimetre, 2) },
  range: 'Spring out, fork compressed, as the book says. The maker’s amount or level governs; the same in both legs.',
  source: 'Geometry.',
  tables: [],
  example: { given: { amount: '10 ml', tube: '31 mm' }, gives: { level: '13.2 mm', 'per ml': '1.32 mm' } },
  work: (given) => {
    const [D, d] = [given.number('tube', millimetre), given.maybe('inside', millimetre) ?? 0];
    if (d >= D) given.doubt('calculation-out-of-range', 'what is inside must be smaller than the tube');
    const each = d >= D ? Number.NaN : 1000 / ((Math.PI / 4) * (D ** 2 - d ** 2));
    return d >= D ? {} : { level: each * given.number('amount', millilitre), 'per ml': each };
  },
});

export const tyrePressure = calculation({
  id: 'tyre-pressure',
  name: 'Tyre pressure, cold and warm',
  purpose: 'What a pressure set at one temperature reads at another.',
  formula: 'p₂ = (p₁ + p₀) · T₂/T₁ − p₀',
  inputs: {
    pressure: quantity('p₁', 'pressure', bar, { above: 0, high: 10 }),
    temperature: quantity('t₁', 'temperature when set', celsius, { low: -40, high: 90 }),
    'other temperature': quantity('t₂', 'other temperature', celsius, { low: -40, high: 90 }),
    ambient: quantity('p₀', 'air pressure (1013 hPa unless given)', hectopascalAbsolute, { optional: true, above: 0 }),
  },
  outputs: { pressure: result('p₂', 'pressure then', bar, 2, 'pressure') },
  range: 'Volume of the tyre taken as constant. Pressures in books are cold pressures.',
  source: 'Ideal gas at constant volume.',
  tables: [],
  example: {
    given: { pressure: '2.0 bar', temperature: '10 °C', 'other temperature': '40 °C' },
    gives: { pressure: '2.32 bar' },
  },
  work: (given) => {
    const ambient = (given.maybe('ambient', hectopascalAbsolute) ?? 1013.25) / 1000;
    const ratio =
      (given.number('other temperature', celsius) + 273.15) / (given.number('temperature', celsius) + 273.15);
    return { pressure: (given.number('pressure', bar) + ambient) * ratio - ambient };
  },
});

export const treadDepth = calculation({
  id: 'tread-depth',
  name: 'Tread against a road rule',
  purpose: 'What is left of the tread above the least depth of the road rule chosen, quoted with its citation.',
  formula: 'left = depth − least depth',
  inputs: {
    depth: quantity('', 'least depth measured', millimetre, { low: 0, high: 20 }),
    rules: words('', 'road rules'),
  },
  outputs: {
    least: result('', 'least depth of the rule', millimetre, 1),
    left: result('', 'left above it', millimetre, 1),
    citation: saying('rule'),
  },
  range: 'The rule in force and the local authority decide; wear indicators and the maker’s limit come first.',
  source: 'As cited in the table of rules.',
  tables: ['tread-rules', 'values-tyres'],
  example: { given: { depth: '2.5 mm', rules: 'uk' }, gives: { least: '1.0 mm', left: '1.5 mm' } },
  work: (given) => {
    const row = table('tread-rules').byId.get(given.words('rules'));
    const least = row === undefined ? undefined : published('tread-rules', row.id, 'depth', millimetre);
    if (row === undefined)
      given.doubt(
        'calculation-value-wrong',
        'no rule is held for “' +
          given.words('rules') +
          '”: ' +
          table('tread-rules')
            .rows.map((one) => one.id)
            .join(', '),
      );
    if (least !== undefined) given.use('', 'least depth', least);
    const depth = given.number('depth', millimetre);
    const millimetres = least === undefined ? undefined : least.quantity * 1000;
    return {
      least: millimetres,
      left: millimetres === undefined ? undefined : depth - millimetres,
      citation: row === undefined ? undefined : (row.cells['applies to'] ?? '') + ': ' + row.source,
    };
  },
});
