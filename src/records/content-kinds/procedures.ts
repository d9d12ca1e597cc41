// content/procedures: how a piece of work is done, off and back on, in steps that print as ticks and blanks.
import type { Procedure, Step, UsedUp } from '../content-model.ts';
import { jobKinds } from '../kinds/job.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { entry, group, may, need, or } from '../shapes/fields.ts';
import { choice, id, list, number, text, yesNo } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { applies } from './applies.ts';

const step: Shape<Step> = andThen(
  entry({
    do: need(text, 'what to do', { example: 'Slacken the head nuts crosswise' }),
    number: may(number(1, 999, 'whole'), 'its permanent number, where it is put between steps that were there before'),
    off: or(list(text), [], 'parts that come off here; each gets an off and an on tick'),
    fasteners: or(list(id), [], 'ids of fasteners'),
    wayRound: may(text, 'which way round'),
    bag: or(yesNo, false, 'these go into a numbered bag'),
    caution: may(id, 'id of the caution printed here'),
    cautions: or(list(id), [], 'ids of the cautions printed here'),
    measure: or(list(id), [], 'limits or settings that get a blank here'),
    set: or(list(id), [], 'settings that get a blank with the value to set'),
    note: may(text, 'a note'),
    applies: or(applies, {}, 'machines the step is for'),
  }),
  ({ caution, cautions, ...rest }) => ({
    ...rest,
    cautions: caution === undefined ? cautions : [caution, ...cautions],
  }),
);

const used: Shape<UsedUp> = group({
  part: may(text, 'what is used up', { example: 'base gasket' }),
  fluid: may(id, 'or the id of a fluid in the maker’s data', { example: 'gearbox-oil' }),
  count: may(number(1, 999, 'whole'), 'how many'),
  perCylinder: or(yesNo, false, 'so many for every cylinder'),
  applies: or(applies, {}, 'machines it is for'),
});

/** A procedure without the body of its file. */
export type ProcedureData = Omit<Procedure, 'body'>;

export const proceduresKind = defineRecord<ProcedureData>({
  id: 'procedure',
  purpose: 'How a piece of work is done.',
  files: 'content/procedures/*.md',
  matches: (file) => /(?:^|\/)procedures\/.+\.md$/u.test(file),
  shape: andThen(
    entry({
      procedure: need(id, 'its permanent id', { example: 'top-end-strip-two-stroke' }),
      title: need(text, 'its title', { example: 'Top end off, two-stroke' }),
      applies: or(applies, {}, 'machines it is for'),
      minutes: may(number(1, 10_000, 'whole'), 'a plain estimate', { example: '150' }),
      kind: may(choice(...jobKinds), 'kind of the job that is planned with it', { example: 'strip' }),
      helper: may(yesNo, 'it takes a second person'),
      uses: may(list(used), 'what it uses up'),
      before: or(list(text), [], 'what must be so before it begins'),
      tools: or(list(text), [], 'tools'),
      cautions: or(list(id), [], 'ids of cautions printed at the head'),
      steps: need(list(step), 'the steps, read downwards'),
      assembly: or(list(step), [], 'going back, in its own order'),
      measure: or(list(id), [], 'blanks at the end'),
      disturbs: or(list(text), [], 'what must be proved again afterwards'),
    }),
    ({ procedure, ...rest }) => ({ id: procedure, ...rest }),
  ),
});
