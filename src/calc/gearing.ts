// Gearing: overall ratios, rolling circumference, road speed for engine speed, and what a change does to the clock.
import {
  kilometrePerHour,
  metre,
  milePerHour,
  millimetre,
  one,
  percent,
  revolutionsPerMinute,
  toOne,
} from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result, words } from './input.ts';
import { tyreDiameter } from './tyre-size.ts';

/** Part of the outside diameter that a loaded tyre rolls on (common practice; measured values lie between 0.95 and 0.98). */
const rollingShare = 0.965;

export const overallRatio = calculation({
  id: 'overall-ratio',
  name: 'Overall gear ratio',
  purpose: 'Turns of the engine for one of the wheel in a gear.',
  formula: 'i = (z₂/z₁) · (g₂/g₁) · (k₂/k₁)',
  inputs: {
    primary: quantity('z₂/z₁', 'primary, driven over driving', toOne, { above: 0, usual: [0.2, 5] }),
    gear: quantity('g₂/g₁', 'gear, driven over driving', toOne, { above: 0, usual: [0.15, 6] }),
    final: quantity('k₂/k₁', 'final drive, driven over driving', toOne, { above: 0, usual: [0.15, 7] }),
  },
  outputs: {
    ratio: result('i', 'overall', toOne, 3),
    primary: result('', 'primary', toOne, 3),
    gear: result('', 'gear', toOne, 3),
    final: result('', 'final', toOne, 3),
  },
  range:
    'Teeth as driving:driven (22:68) or driven over driving (3.09:1): a pair below one is read as driving:driven for primary and final. Where the gearbox turns with the engine the primary is 1:1.',
  source: 'Definition of ratios.',
  tables: [],
  cautions: ['chain-fingers'],
  example: { given: { primary: '22:68', gear: '27:22', final: '14:38' }, gives: { ratio: '10.296:1' } },
  work: (given) => {
    const over = (value: number): number => (value < 1 ? 1 / value : value);
    const primary = over(given.number('primary', toOne));
    const final = over(given.number('final', toOne));
    const gear = given.number('gear', toOne);
    return { ratio: primary * gear * final, primary, gear, final };
  },
});

export const rollingCircumference = calculation({
  id: 'rolling-circumference',
  name: 'Rolling circumference',
  purpose: 'The distance a wheel goes in one turn, from the tyre’s marking or from a roll-out on the floor.',
  formula: 'U = π · D · 0.965, or roll-out/turns',
  inputs: {
    tyre: words('', 'tyre marking', { optional: true }),
    'rolled out': quantity('', 'measured on the floor', metre, { optional: true, above: 0 }),
    turns: quantity('', 'turns of the wheel', one, { optional: true, low: 1, whole: true }),
  },
  outputs: {
    circumference: result('U', 'rolling circumference', millimetre, 0),
    diameter: result('D', 'nominal outside diameter', millimetre, 1),
  },
  range: 'From a marking within 2 % either way. A roll-out with the rider aboard is better.',
  source: 'Nominal size by the marking (ETRTO forms); the rolling share 0.965 is common practice.',
  tables: ['values-tyres'],
  cautions: [],
  example: { given: { tyre: '3.00-17' }, gives: { diameter: '584.2 mm', circumference: '1736 to 1807 mm' } },
  work: (given) => {
    const rolled = given.maybe('rolled out', metre);
    if (rolled !== undefined) return { circumference: (rolled * 1000) / (given.maybe('turns', one) ?? 1) };
    const marking = given.words('tyre');
    const diameter = tyreDiameter(marking);
    if (diameter === undefined) {
      if (marking === '') given.doubt('calculation-value-missing', 'neither a tyre marking nor a roll-out is given');
      else
        given.doubt(
          'calculation-value-wrong',
          '“' + marking + '” is not a tyre marking read here; write 3.00-18 or 120/90-18',
        );
      return {};
    }
    const value = Math.PI * diameter * rollingShare;
    return { diameter, circumference: { value, low: value * 0.98, high: value * 1.02 } };
  },
});

export const roadSpeed = calculation({
  id: 'road-speed',
  name: 'Road speed for engine speed',
  purpose: 'Speed in a gear at an engine speed, and for each 1000 revolutions.',
  formula: 'v = N · U/i',
  inputs: {
    revolutions: quantity('N', 'engine speed', revolutionsPerMinute, { optional: true, above: 0, usual: [500, 15000] }),
    ratio: quantity('i', 'overall ratio', toOne, { above: 0 }),
    circumference: quantity('U', 'rolling circumference', millimetre, { above: 0, usual: [1000, 2500] }),
  },
  outputs: {
    speed: result('v', 'road speed', kilometrePerHour, 1),
    'in miles': result('v', 'road speed', milePerHour, 1),
    'km/h per 1000': result('', 'for each 1000 rpm', kilometrePerHour, 2),
    'mph per 1000': result('', 'for each 1000 rpm', milePerHour, 2),
  },
  range: 'Without clutch or tyre slip.',
  source: 'Kinematics.',
  tables: [],
  cautions: ['eyes-on-the-road'],
  example: {
    given: { revolutions: '6000 rpm', ratio: '6.83:1', circumference: '1771 mm' },
    gives: { speed: '93.3 km/h', 'km/h per 1000': '15.56 km/h' },
  },
  work: (given) => {
    const perThousand = (1000 * 60 * given.number('circumference', millimetre)) / 1e6 / given.number('ratio', toOne);
    const revolutions = given.maybe('revolutions', revolutionsPerMinute);
    const speed = revolutions === undefined ? undefined : (perThousand * revolutions) / 1000;
    return {
      speed,
      'in miles': speed === undefined ? undefined : speed / 1.609344,
      'km/h per 1000': perThousand,
      'mph per 1000': perThousand / 1.609344,
    };
  },
});

export const clockFactor = calculation({
  id: 'clock-factor',
  name: 'Clock after a change of tyre or drive',
  purpose:
    'How far speedometer and distance are out after a change of tyre or sprocket, and the factor for the true distance.',
  formula: 'k = (U₂/U₁) · (d₁/d₂)',
  inputs: {
    'circumference before': quantity('U₁', 'rolling circumference that the clock was made for', millimetre, {
      above: 0,
    }),
    'circumference now': quantity('U₂', 'rolling circumference now', millimetre, { above: 0 }),
    'drive before': quantity('d₁', 'speedometer drive ratio before', toOne, { optional: true, above: 0 }),
    'drive now': quantity('d₂', 'speedometer drive ratio now', toOne, { optional: true, above: 0 }),
    shown: quantity('', 'speed shown', kilometrePerHour, { optional: true, above: 0 }),
  },
  outputs: {
    factor: result('k', 'true distance over shown', one, 4),
    error: result('', 'clock shows too much by', percent, 1),
    'true speed': result('', 'true speed', kilometrePerHour, 1, 'shown'),
  },
  range:
    'A clock driven by the wheel whose tyre changed, or by the gearbox when the final drive changed (then the drive ratios are overall).',
  source: 'Kinematics.',
  tables: [],
  cautions: ['eyes-on-the-road'],
  example: {
    given: { 'circumference before': '1771 mm', 'circumference now': '1820 mm', shown: '50 mph' },
    gives: { factor: '1.0277', error: '−2.7 %', 'true speed': '51.4 mph' },
  },
  work: (given) => {
    const drive = (given.maybe('drive before', toOne) ?? 1) / (given.maybe('drive now', toOne) ?? 1);
    const factor =
      (given.number('circumference now', millimetre) / given.number('circumference before', millimetre)) * drive;
    const shown = given.maybe('shown', kilometrePerHour);
    return { factor, error: (1 / factor - 1) * 100, 'true speed': shown === undefined ? undefined : shown * factor };
  },
});
