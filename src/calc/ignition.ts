// Points: what the gap does to timing and dwell; marks for a flywheel that has none.
import { crankDegree, degree, millimetre, one, percent } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

export const dwell = calculation({
  id: 'dwell',
  name: 'Dwell',
  purpose: 'The part of a cam turn that the points are closed, as an angle and as a share.',
  formula: 'share = dwell/(360°/lobes)',
  inputs: {
    dwell: quantity('', 'dwell, in degrees of the cam', degree, { optional: true, above: 0, high: 360 }),
    share: quantity('', 'dwell as a share', percent, { optional: true, above: 0, high: 100 }),
    lobes: quantity('', 'lobes of the cam', one, { low: 1, high: 12, whole: true }),
  },
  outputs: { share: result('', 'points closed', percent, 1), dwell: result('', 'dwell', degree, 1) },
  range: 'Degrees of the cam; where the cam turns at half engine speed crank degrees are twice as many.',
  source: 'Definition.',
  tables: [],
  cautions: ['heart-pacemaker', 'gap-then-timing'],
  example: { given: { dwell: '207°', lobes: '1' }, gives: { share: '57.5 %', dwell: '207.0°' } },
  work: (given) => {
    const whole = 360 / given.number('lobes', one);
    const angle = given.maybe('dwell', degree);
    const share = given.maybe('share', percent);
    if (angle === undefined && share === undefined)
      given.doubt('calculation-value-missing', 'neither an angle nor a share is given');
    if (angle !== undefined && angle > whole) {
      given.doubt('calculation-out-of-range', 'the points cannot be closed for longer than one lobe lasts');
      return {};
    }
    if (angle !== undefined) return { share: (angle / whole) * 100, dwell: angle };
    return share === undefined ? {} : { share, dwell: (share / 100) * whole };
  },
});

export const gapChange = calculation({
  id: 'gap-change',
  name: 'What a change of the points gap does to timing',
  purpose: 'How far timing moves when the gap is changed, since the gap comes before the timing.',
  formula: 'Δa = (g₂ − g₁)/(dg/da)',
  inputs: {
    'gap before': quantity('g₁', 'gap before', millimetre, { above: 0, high: 2 }),
    'gap now': quantity('g₂', 'gap now', millimetre, { above: 0, high: 2 }),
    slope: quantity('dg/da', 'opening of the points for one crank degree near the opening', millimetre, {
      above: 0,
      high: 0.2,
    }),
  },
  outputs: { shift: result('Δa', 'timing moves earlier by', crankDegree, 1) },
  range:
    'Small changes. The slope is measured: note the gap at two flywheel marks near the opening. A wider gap opens earlier.',
  source: 'Geometry of the cam, first order.',
  tables: [],
  cautions: ['plug-out-to-turn', 'gap-then-timing', 'kick-back'],
  example: { given: { 'gap before': '0.30 mm', 'gap now': '0.40 mm', slope: '0.02 mm' }, gives: { shift: '5.0°' } },
  work: (given) => ({
    shift:
      (given.number('gap now', millimetre) - given.number('gap before', millimetre)) /
      given.number('slope', millimetre),
  }),
});

export const topFromStops = calculation({
  id: 'top-from-stops',
  name: 'Top dead centre from a piston stop',
  purpose: 'Finds the top on a flywheel without marks: turn to the stop from both sides and halve the arc between.',
  formula: 'top lies at half the arc;  check: a_half belongs to the depth of the stop',
  inputs: {
    arc: quantity('L', 'arc on the rim between the two stops, over the top', millimetre, { above: 0 }),
    rim: quantity('D', 'diameter of the rim', millimetre, { above: 0 }),
    timing: quantity('a', 'timing to mark', crankDegree, { optional: true, low: 0, high: 90 }),
  },
  outputs: {
    half: result('L/2', 'top from either stop mark', millimetre, 1, 'arc'),
    angle: result('', 'half angle', crankDegree, 2),
    'timing mark': result('', 'timing mark before the top', millimetre, 1, 'arc'),
  },
  range: 'Turn by hand, plug out; the stop must not meet a valve or a port edge.',
  source: 'Symmetry of the crank drive (without pin offset).',
  tables: [],
  cautions: ['plug-out-to-turn', 'piston-stop'],
  example: {
    given: { arc: '84.0 mm', rim: '120 mm', timing: '20°' },
    gives: { half: '42.0 mm', angle: '40.11°', 'timing mark': '20.9 mm' },
  },
  work: (given) => {
    const [arc, rim, timing] = [
      given.number('arc', millimetre),
      given.number('rim', millimetre),
      given.maybe('timing', crankDegree),
    ];
    if (arc >= Math.PI * rim) {
      given.doubt('calculation-out-of-range', 'the arc is longer than the rim');
      return {};
    }
    return {
      half: arc / 2,
      angle: (arc / (Math.PI * rim)) * 180,
      'timing mark': timing === undefined ? undefined : (Math.PI * rim * timing) / 360,
    };
  },
});
