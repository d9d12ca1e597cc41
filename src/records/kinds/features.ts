// Features decide which checks, procedures and cautions apply, so they cannot stay unknown.
import type { Features } from '../model.ts';
import { quantity } from '../shapes/measured.ts';
import { group, may, need, or } from '../shapes/fields.ts';
import { choice, list, number, text, yesNo } from '../shapes/plain.ts';
import type { Shape } from '../shapes/shape.ts';

/** The words of each feature, shared with `applies` in content. */
export const featureWords = {
  stroke: ['two', 'four'],
  lubrication: ['premix', 'pump', 'wet sump', 'dry sump'],
  ignition: ['magneto', 'battery and coil'],
  trigger: ['points', 'electronic'],
  brake: ['drum', 'disc'],
  finalDrive: ['chain', 'shaft', 'belt'],
  wheels: ['spoked', 'cast', 'pressed'],
} as const;

export const features: Shape<Features> = group({
  stroke: need(choice(...featureWords.stroke), 'two-stroke or four-stroke', { example: 'two' }),
  cylinders: need(number(1, 12, 'whole'), 'how many cylinders', { example: '2' }),
  cylinderNames: or(list(text), [], 'what you call them, in one order for ever', { example: '[left, right]' }),
  lubrication: need(choice(...featureWords.lubrication), 'how the engine gets its oil', { example: 'pump' }),
  ignition: need(choice(...featureWords.ignition), 'where the spark comes from; it decides how the engine is stopped', {
    example: 'magneto',
  }),
  trigger: need(choice(...featureWords.trigger), 'what times the spark', { example: 'points' }),
  volts: may(quantity('voltage', '6 V'), 'volts of the lighting and ignition, or none'),
  battery: need(yesNo, 'whether it has a battery', { example: 'yes' }),
  lamps: need(yesNo, 'whether it has lamps', { example: 'yes' }),
  frontBrake: need(choice(...featureWords.brake), 'the front brake', { example: 'drum' }),
  rearBrake: need(choice(...featureWords.brake), 'the rear brake', { example: 'drum' }),
  finalDrive: need(choice(...featureWords.finalDrive), 'what drives the rear wheel', { example: 'chain' }),
  wheels: need(choice(...featureWords.wheels), 'how the wheels are made', { example: 'spoked' }),
});
