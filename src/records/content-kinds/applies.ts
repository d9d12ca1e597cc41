// `applies` of content: which machines a thing is for, in the words of machine.yaml. Whether it is for one of them: book/applies.ts.
import { featureWords } from '../kinds/features.ts';
import type { Applies } from '../content-model.ts';
import { group, may } from '../shapes/fields.ts';
import { choice, oneOrMore } from '../shapes/plain.ts';
import type { Shape } from '../shapes/shape.ts';

const yesOrNo = oneOrMore(choice('yes', 'no'));

export const applies: Shape<Applies> = group({
  stroke: may(oneOrMore(choice(...featureWords.stroke)), 'two-stroke or four-stroke'),
  cylinders: may(oneOrMore(choice('one', 'more')), 'one cylinder or more'),
  lubrication: may(oneOrMore(choice(...featureWords.lubrication)), 'how the engine gets its oil'),
  ignition: may(oneOrMore(choice(...featureWords.ignition)), 'where the spark comes from'),
  magneto: may(
    oneOrMore(choice(...featureWords.magneto, 'none')),
    'where its magneto sits; none where the spark comes from battery and coil',
  ),
  trigger: may(oneOrMore(choice(...featureWords.trigger)), 'what times the spark'),
  battery: may(yesOrNo, 'with or without a battery'),
  lamps: may(yesOrNo, 'with or without lamps'),
  gearbox: may(oneOrMore(choice(...featureWords.gearbox)), 'in unit with the engine or a case of its own'),
  frontBrake: may(oneOrMore(choice(...featureWords.brake)), 'the front brake'),
  rearBrake: may(oneOrMore(choice(...featureWords.brake)), 'the rear brake'),
  finalDrive: may(oneOrMore(choice(...featureWords.finalDrive)), 'what drives the rear wheel'),
  wheels: may(oneOrMore(choice(...featureWords.wheels)), 'how the wheels are made'),
});
