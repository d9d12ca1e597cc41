// content/forms: lines to be ticked, graded and written beside: intake, roadworthiness, lay-up, handover. Each says where it is asked for.
import type { Form } from '../content-model.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { bookSource } from '../kinds/source-of.ts';
import { entry, may, need, or } from '../shapes/fields.ts';
import { day, quantity } from '../shapes/measured.ts';
import { id, list, number, text } from '../shapes/plain.ts';
import { andThen } from '../shapes/shape.ts';
import { applies } from './applies.ts';

const line = andThen(
  entry({
    id: need(id, 'its permanent id', { example: 'head-bearings' }),
    line: need(text, 'what is looked at or done', { example: 'Head bearings: no play, no notch' }),
    area: may(text, 'the group it stands under', { example: 'Steering' }),
    number: may(text, 'official number in the source', { example: '5.1.3' }),
    against: may(text, 'what speaks against it, or the reason'),
    unit: may(text, 'unit of a value to write down', { example: 'mm' }),
    positions: or(list(text), [], 'where it is measured; `cylinder` stands for each of them', {
      example: '[cylinder inlet, cylinder exhaust]',
    }),
    source: may(text, 'evidence of this line: read, memory or common practice', { example: '"memory: not read"' }),
    firstUsedFrom: may(day, 'asked for only of machines first used on this day or later', { example: '1972-01-01' }),
    firstUsedBefore: may(day, 'asked for only of machines first used before this day', { example: '1936-01-01' }),
    caution: may(id, 'id of a caution'),
    until: may(quantity('distance ridden', '500 km'), 'running in: how far it holds'),
    distances: may(list(quantity('distance ridden', '50 km')), 'running in: at which distances it is done', {
      example: '[50 km, 300 km]',
    }),
    cycles: may(number(1, 99, 'whole'), 'running in: after how many heat cycles it is done'),
    newPart: may(text, 'the new part it counts from; the engine’s own, when not written', { example: 'chain' }),
    by: may(list(text), 'checks, services, readings or fasteners that are this', { example: '[spokes]' }),
    applies: or(applies, {}, 'machines it is for'),
  }),
  ({ line: words, ...rest }) => ({ text: words, ...rest }),
);

export const formsKind = defineRecord<Form>({
  id: 'form',
  purpose: 'Lines to be ticked, graded and written beside.',
  files: 'content/forms/*.md',
  matches: (file) => /(?:^|\/)forms\/.+\.md$/u.test(file),
  shape: andThen(
    entry({
      form: need(id, 'its permanent id', { example: 'intake-photos' }),
      title: need(text, 'its title'),
      applies: or(applies, {}, 'machines it is for'),
      roadRules: may(text, 'only where machine.yaml names these road rules', { example: 'uk' }),
      source: may(bookSource, 'where the lines are from'),
      seen: may(text, 'when the source was looked at', { example: '"2026"' }),
      note: may(text, 'a line printed above'),
      ticks: or(list(text), [], 'heads of the tick columns; one tick when none is given'),
      lines: need(list(line), 'the lines'),
    }),
    ({ form, ...rest }) => ({ id: form, ...rest }),
  ),
});
