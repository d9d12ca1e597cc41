// Piston position and crank angle, exactly, both ways; how much a degree is worth; arc at the flywheel rim.
import { crankDegree, millimetre, one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

const radians = Math.PI / 180;

/** Height of the gudgeon pin over the crank centre, mm; `offset` is the pin's distance from the line through that centre. */
function pinHeight(throwLength: number, rod: number, angle: number, offset: number): number {
  const side = throwLength * Math.sin(angle) - offset;
  return throwLength * Math.cos(angle) + Math.sqrt(rod ** 2 - side ** 2);
}

/**
 * Travel of the piston below top dead centre, mm, for a crank angle in degrees from top dead centre.
 * x = r(1 − cos a) + l − √(l² − r² sin² a) without offset; with a pin offset the top is where the pin stands highest.
 * @example pistonTravel(58, 110, 23) // 2.8905
 */
export function pistonTravel(stroke: number, rod: number, degrees: number, offset = 0): number {
  const { throwLength, top } = crank(stroke, rod, offset);
  return pinHeight(throwLength, rod, top, offset) - pinHeight(throwLength, rod, top + degrees * radians, offset);
}

/** Half the stroke, but with an offset pin the throw that gives this stroke; and the crank angle of the highest pin. */
function crank(stroke: number, rod: number, offset: number): { readonly throwLength: number; readonly top: number } {
  if (offset === 0) return { throwLength: stroke / 2, top: 0 };
  // s = √((l+r)² − e²) − √((l−r)² − e²) solved for r.
  const squared = stroke ** 2 / 4;
  const throwLength = Math.sqrt((squared * (rod ** 2 - offset ** 2 - squared)) / (rod ** 2 - squared));
  return { throwLength, top: Math.asin(offset / (rod + throwLength)) };
}

/** Crank angle in degrees before top dead centre at which the piston is `travel` mm below it: the inverse of pistonTravel. */
export function crankAngleAt(stroke: number, rod: number, travel: number, offset = 0): number {
  const { throwLength, top } = crank(stroke, rod, offset);
  const height = pinHeight(throwLength, rod, top, offset) - travel;
  // The crank pin lies at distance r from the crank centre and l from the gudgeon pin: law of cosines, seen along the line to it.
  const reach = Math.hypot(height, offset);
  const between = Math.acos(
    Math.max(-1, Math.min(1, (throwLength ** 2 + reach ** 2 - rod ** 2) / (2 * throwLength * reach))),
  );
  return (between + Math.atan2(offset, height) - top) / radians;
}

const geometry = {
  stroke: quantity('s', 'stroke', millimetre, { above: 0 }),
  rod: quantity('l', 'rod, between centres', millimetre, { above: 0 }),
  offset: quantity('e', 'offset of the gudgeon pin', millimetre, { optional: true, low: -10, high: 10 }),
} as const;

const source = 'Slider-crank geometry, exact. The approximate textbook form lies 0.1 to 0.35 % below and is not used.';

/** A rod that is shorter than the stroke is a slip of the pen. */
function rodFits(stroke: number, rod: number): boolean {
  return rod > 0.75 * stroke;
}

export const pistonPosition = calculation({
  id: 'piston-position',
  name: 'Piston position at a crank angle',
  purpose:
    'How far the piston stands below the top at a crank angle, to set timing with a dial gauge in the plug hole.',
  formula: 'x = r(1 − cos a) + l − √(l² − r² sin² a),  r = s/2',
  inputs: {
    ...geometry,
    angle: quantity('a', 'crank angle before top dead centre', crankDegree, { low: 0, high: 180 }),
  },
  outputs: {
    position: result('x', 'piston below the top', millimetre, 3),
    'per degree': result('dx/da', 'worth of one degree here', millimetre, 3),
  },
  range: 'Plug hole along the bore; a slanting hole needs its own correction.',
  source,
  tables: ['values-engine'],
  cautions: ['plug-out-to-turn', 'gap-then-timing', 'kick-back'],
  example: {
    given: { stroke: '58 mm', rod: '110 mm', angle: '23°' },
    gives: { position: '2.891 mm', 'per degree': '0.246 mm' },
  },
  work: (given) => {
    const [stroke, rod, offset] = [
      given.number('stroke', millimetre),
      given.number('rod', millimetre),
      given.maybe('offset', millimetre) ?? 0,
    ];
    if (!rodFits(stroke, rod)) {
      given.doubt('calculation-out-of-range', 'a rod this short does not turn in this stroke');
      return {};
    }
    const angle = given.number('angle', crankDegree);
    const at = (degrees: number): number => pistonTravel(stroke, rod, degrees, offset);
    return { position: at(angle), 'per degree': at(angle + 0.5) - at(angle - 0.5) };
  },
});

export const crankAngle = calculation({
  id: 'crank-angle',
  name: 'Crank angle at a piston position',
  purpose: 'The crank angle for a timing that the book gives in millimetres before the top.',
  formula: 'cos a = (r² + y² − l²)/(2 r y),  y = l + r − x',
  inputs: {
    ...geometry,
    position: quantity('x', 'piston below the top', millimetre, { low: 0 }),
    rim: quantity('D', 'diameter of the flywheel rim', millimetre, { optional: true, above: 0 }),
  },
  outputs: {
    angle: result('a', 'crank angle before top dead centre', crankDegree, 2),
    'per hundredth': result('da', 'worth of 0.01 mm here', crankDegree, 2),
    arc: result('', 'arc at the flywheel rim', millimetre, 1, 'rim'),
  },
  range: 'From the top to the bottom of the stroke.',
  source,
  tables: ['values-engine'],
  cautions: ['plug-out-to-turn', 'gap-then-timing', 'kick-back'],
  example: {
    given: { stroke: '58 mm', rod: '110 mm', position: '2 mm' },
    gives: { angle: '19.07°', 'per hundredth': '0.05°' },
  },
  work: (given) => {
    const [stroke, rod, offset] = [
      given.number('stroke', millimetre),
      given.number('rod', millimetre),
      given.maybe('offset', millimetre) ?? 0,
    ];
    const position = given.number('position', millimetre);
    if (!rodFits(stroke, rod) || position > stroke) {
      given.doubt('calculation-out-of-range', 'the piston does not come there in this stroke');
      return {};
    }
    const angle = crankAngleAt(stroke, rod, position, offset);
    const rim = given.maybe('rim', millimetre);
    return {
      angle,
      'per hundredth': crankAngleAt(stroke, rod, Math.min(stroke, position + 0.01), offset) - angle,
      arc: rim === undefined ? undefined : (Math.PI * rim * angle) / 360,
    };
  },
});

export const rimArc = calculation({
  id: 'rim-arc',
  name: 'Arc at the flywheel rim',
  purpose:
    'The length along the rim for a crank angle, to mark a flywheel that has no marks; print it with its check line.',
  formula: 'L = π D · a/360°',
  inputs: {
    rim: quantity('D', 'diameter of the rim', millimetre, { above: 0, usual: [50, 400] }),
    angle: quantity('a', 'crank angle', crankDegree, { low: 0, high: 360 }),
  },
  outputs: {
    arc: result('L', 'along the rim', millimetre, 2, 'rim'),
    chord: result('c', 'straight across', millimetre, 2, 'rim'),
    steps: result('', 'times this arc round the rim', one, 2),
  },
  range: 'Measure the diameter where the strip will lie.',
  source: 'Geometry.',
  tables: [],
  cautions: ['plug-out-to-turn', 'gap-then-timing', 'kick-back'],
  example: { given: { rim: '120 mm', angle: '20°' }, gives: { arc: '20.94 mm', chord: '20.84 mm' } },
  work: (given) => {
    const [rim, angle] = [given.number('rim', millimetre), given.number('angle', crankDegree)];
    return {
      arc: (Math.PI * rim * angle) / 360,
      chord: rim * Math.sin((angle * Math.PI) / 360),
      steps: angle === 0 ? undefined : 360 / angle,
    };
  },
});
