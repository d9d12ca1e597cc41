// What a torque wrench must be set to: extension or crowfoot at an angle, run-down drag, and whether this wrench can do it.
import { degree, millimetre, newtonMetre, percent } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying } from './input.ts';

/** Setting for a wanted torque. T_s = T · L/(L + E cos a); E negative when it points back; a 90° needs no correction. */
export function wrenchReading(torque: number, wrenchLength: number, extension: number, angleDegrees: number): number {
  return (torque * wrenchLength) / (wrenchLength + extension * Math.cos((angleDegrees * Math.PI) / 180));
}

/** Permissible deviation of a wrench, %: 6 where its greatest value is at most 10 N·m, else 4 (ISO 6789, class A). */
export function wrenchTolerance(greatest: number): number {
  return greatest <= 10 ? 6 : 4;
}

export const wrenchSetting = calculation({
  id: 'wrench-setting',
  name: 'Setting of the torque wrench',
  purpose: 'The value to set when an extension or crowfoot lengthens the wrench or a nut drags on its thread.',
  formula: 'T_s = (T + T_drag) · L/(L + E cos a)',
  inputs: {
    torque: quantity('T', 'torque wanted at the fastener', newtonMetre, { above: 0 }),
    length: quantity('L', 'wrench, drive centre to middle of grip', millimetre, { optional: true, above: 0 }),
    extension: quantity('E', 'extension, drive centre to fastener centre', millimetre, { optional: true }),
    angle: quantity('a', 'angle of the extension to the wrench', degree, { optional: true, low: -180, high: 180 }),
    drag: quantity('T_drag', 'run-down (prevailing) torque', newtonMetre, { optional: true, low: 0 }),
  },
  outputs: {
    setting: result('T_s', 'setting', newtonMetre, 1, 'torque'),
    factor: result('T_s/T', 'setting as a share of the torque to be reached', percent, 1),
  },
  range:
    'Wrenches whose load point is defined by the grip; hold the grip in its middle. An extension that points back has a negative length.',
  source: 'Army TM 9-254; TM 1-1500-204-23-9; AC 43.13-1B paragraph 7-40; run-down torque added as in AC 43.13-1B.',
  tables: ['values-torque-tools'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: {
    given: { torque: '50 lbf·ft', length: '16 in', extension: '2 in' },
    gives: { setting: '44.4 lbf·ft', factor: '88.9 %' },
  },
  work: (given) => {
    const length = given.maybe('length', millimetre);
    const extension = given.maybe('extension', millimetre) ?? 0;
    const wanted = given.number('torque', newtonMetre) + (given.maybe('drag', newtonMetre) ?? 0);
    if (extension !== 0 && length === undefined) {
      given.doubt('calculation-value-missing', 'an extension is given but not the length of the wrench');
      return {};
    }
    const arm = length ?? 1;
    const setting = wrenchReading(wanted, arm, extension, given.maybe('angle', degree) ?? 0);
    if (!(setting > 0) || extension <= -arm) {
      given.doubt('calculation-out-of-range', 'an extension that points back past the grip cannot be used');
      return {};
    }
    return { setting, factor: (setting / wanted) * 100 };
  },
});

export const wrenchTorque = calculation({
  id: 'wrench-torque',
  name: 'Torque at the fastener',
  purpose: 'What reaches the fastener when the wrench, lengthened by an extension, shows a value.',
  formula: 'T = T_s · (L + E cos a)/L',
  inputs: {
    setting: quantity('T_s', 'setting', newtonMetre, { above: 0 }),
    length: quantity('L', 'wrench, drive centre to middle of grip', millimetre, { above: 0 }),
    extension: quantity('E', 'extension', millimetre),
    angle: quantity('a', 'angle of the extension', degree, { optional: true, low: -180, high: 180 }),
  },
  outputs: { torque: result('T', 'torque at the fastener', newtonMetre, 1, 'setting') },
  range: 'As for the setting.',
  source: 'Army TM 9-254, figures 45 and 46.',
  tables: ['values-torque-tools'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: { given: { setting: '60 lbf·in', length: '12 in', extension: '2 in' }, gives: { torque: '70 lbf·in' } },
  work: (given) => {
    const unitSetting = wrenchReading(
      1,
      given.number('length', millimetre),
      given.number('extension', millimetre),
      given.maybe('angle', degree) ?? 0,
    );
    return { torque: given.number('setting', newtonMetre) / unitSetting };
  },
});

export const wrenchRange = calculation({
  id: 'wrench-range',
  name: 'Whether the wrench can do it',
  purpose: 'Tells whether a torque lies in the range of a wrench, and how far the wrench may be out there.',
  formula: 'U = T · tolerance',
  inputs: {
    torque: quantity('T', 'setting', newtonMetre, { above: 0 }),
    least: quantity('T_min', 'least value on the wrench', newtonMetre, { low: 0 }),
    greatest: quantity('T_max', 'greatest value on the wrench', newtonMetre, { above: 0 }),
    tolerance: quantity('', 'accuracy of the wrench', percent, { optional: true, above: 0, high: 50 }),
  },
  outputs: {
    tolerance: result('', 'may be out by', percent, 0),
    out: result('U', 'may be out by', newtonMetre, 1, 'torque'),
    verdict: saying('whether it can'),
  },
  range:
    'Without an accuracy the least demand of the standard is taken: 4 %, or 6 % for a wrench up to 10 N·m. Checked at 20, 60 and 100 % of the greatest value.',
  source: 'ISO 6789:2003, as quoted in a maker’s manual.',
  tables: ['values-torque-tools'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: {
    given: { torque: '8 N·m', least: '10 N·m', greatest: '60 N·m' },
    gives: { tolerance: '4 %', verdict: 'below its range' },
  },
  work: (given) => {
    const torque = given.number('torque', newtonMetre);
    const greatest = given.number('greatest', newtonMetre);
    const tolerance = given.maybe('tolerance', percent) ?? wrenchTolerance(greatest);
    return {
      tolerance,
      out: (torque * tolerance) / 100,
      verdict: rangeVerdict(torque, given.number('least', newtonMetre), greatest),
    };
  },
});

function rangeVerdict(torque: number, least: number, greatest: number): string {
  if (torque < least) return 'below its range';
  if (torque > greatest) return 'above its range';
  if (torque < 0.2 * greatest) return 'in its range, but below the 20 % at which wrenches are checked';
  return 'in its range';
}
