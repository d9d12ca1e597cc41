// Features decide which checks, procedures and cautions apply. One that is not known yet counts as every kind, and is named as not known.
import type { Features } from '../model.ts';
import { quantity } from '../shapes/measured.ts';
import { group, may, need, or } from '../shapes/fields.ts';
import { choice, list, number, text, yesNo } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';

/** The words of each feature, shared with `applies` in content. */
export const featureWords = {
  stroke: ['two', 'four'],
  lubrication: ['premix', 'pump', 'wet sump', 'dry sump'],
  ignition: ['magneto', 'battery and coil'],
  magneto: ['flywheel', 'separate'],
  trigger: ['points', 'electronic'],
  gearbox: ['unit', 'separate'],
  brake: ['drum', 'disc'],
  finalDrive: ['chain', 'shaft', 'belt'],
  wheels: ['spoked', 'cast', 'pressed'],
} as const;

const unknown = '?';

/** A shape that takes `?` for itself: the key must be there, and may say that nobody has looked yet. */
function orUnknown<T>(shape: Shape<T>): Shape<T | typeof unknown> {
  const { told } = shape;
  return {
    read: (tree, spot, desk) => (tree === unknown ? unknown : shape.read(tree, spot, desk)),
    told: told.kind === 'choice' ? { kind: 'choice', words: [...told.words, unknown] } : told,
  };
}

/** A feature that came later than others: files without its key stay right, and `?` asks for it like the rest. */
function laterFeature<T>(shape: Shape<T>): Shape<T | typeof unknown> {
  return { ...orUnknown(shape), takesUnknown: true };
}

/**
 * What counts in calculations and headings while a feature is `?`: whatever asks for more care. It decides nothing in `applies`, where an
 * unknown feature is every kind (see book/applies.ts).
 */
const meanwhile = {
  stroke: 'two',
  cylinders: 1,
  lubrication: 'premix',
  ignition: 'battery and coil',
  trigger: 'points',
  battery: true,
  lamps: true,
  frontBrake: 'drum',
  rearBrake: 'drum',
  finalDrive: 'chain',
  wheels: 'spoked',
} as const satisfies Partial<Features>;

type Known<T> = { readonly [K in keyof T]: Exclude<T[K], typeof unknown> };

/** Without the features that are `?`. */
function knownOf<T extends object>(found: T): Partial<Known<T>> {
  const known: Partial<Known<T>> = {};
  return Object.assign(known, Object.fromEntries(Object.entries(found).filter(([, value]) => value !== unknown)));
}

const written = group({
  stroke: need(orUnknown(choice(...featureWords.stroke)), 'two-stroke or four-stroke', { example: 'two' }),
  cylinders: need(orUnknown(number(1, 12, 'whole')), 'how many cylinders', { example: '2' }),
  cylinderNames: or(list(text), [], 'what you call them, in one order for ever', { example: '[left, right]' }),
  lubrication: need(orUnknown(choice(...featureWords.lubrication)), 'how the engine gets its oil', { example: 'pump' }),
  ignition: need(
    orUnknown(choice(...featureWords.ignition)),
    'where the spark comes from; it decides how the engine is stopped',
    { example: 'magneto' },
  ),
  magneto: may(
    laterFeature(choice(...featureWords.magneto)),
    'on the crankshaft, inside the flywheel, or driven by itself; only of a magneto',
    { example: 'flywheel' },
  ),
  trigger: need(orUnknown(choice(...featureWords.trigger)), 'what times the spark', { example: 'points' }),
  volts: may(quantity('voltage', '6 V'), 'volts of the lighting and ignition, or none'),
  battery: need(orUnknown(yesNo), 'whether it has a battery', { example: 'yes' }),
  lamps: need(orUnknown(yesNo), 'whether it has lamps', { example: 'yes' }),
  gearbox: may(
    laterFeature(choice(...featureWords.gearbox)),
    'in one case with the engine, or a case of its own behind it, with a primary chaincase between',
    { example: 'unit' },
  ),
  frontBrake: need(orUnknown(choice(...featureWords.brake)), 'the front brake', { example: 'drum' }),
  rearBrake: need(orUnknown(choice(...featureWords.brake)), 'the rear brake', { example: 'drum' }),
  finalDrive: need(orUnknown(choice(...featureWords.finalDrive)), 'what drives the rear wheel', { example: 'chain' }),
  wheels: need(orUnknown(choice(...featureWords.wheels)), 'how the wheels are made', { example: 'spoked' }),
});

export const features: Shape<Features> = andThen(written, (found) => {
  const { volts, cylinderNames, ...others } = found;
  const noMagneto = found.ignition === 'battery and coil' && found.magneto === undefined;
  const notKnown = Object.entries(others).flatMap(([name, value]) => (value === unknown ? [name] : []));
  return {
    ...meanwhile,
    ...knownOf(others),
    cylinderNames,
    ...(noMagneto ? { magneto: 'none' as const } : {}),
    ...(volts === undefined ? {} : { volts }),
    ...(notKnown.length === 0 ? {} : { notKnown }),
  };
});
