// content/order: what must come before what, as steps and edges between them, each edge with its reason.
import type { OrderOfWork } from '../content-model.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { entry, may, need, or, wholeFile } from '../shapes/fields.ts';
import { id, list, text } from '../shapes/plain.ts';
import { applies } from './applies.ts';

const step = entry({
  id: need(id, 'its id', { example: 'timing-set' }),
  step: need(text, 'what is done', { example: 'Ignition timing set' }),
  by: or(
    list(text),
    [],
    'checks, procedures, readings, services, things of work or kinds of record that are this step',
  ),
  undoneBy: may(list(text), 'work after which it is to be done again', { key: 'undone by', example: '[front wheel]' }),
  fitted: may(list(text), 'things that must be on the machine for it', { example: '[cylinder head]' }),
  applies: or(applies, {}, 'machines it is for'),
});

const edge = entry({
  before: need(id, 'the step that comes first', { example: 'gap-set' }),
  after: need(id, 'the step that waits for it', { example: 'timing-set' }),
  why: need(text, 'the reason', { example: 'the gap moves the timing' }),
});

export const orderKind = defineRecord<OrderOfWork>({
  id: 'order of work',
  purpose: 'What must come before what.',
  files: 'content/order/*.md',
  matches: (file) => /(?:^|\/)order\/.+\.md$/u.test(file),
  shape: wholeFile({
    order: need(id, 'its permanent id', { example: 'hard-order' }),
    title: need(text, 'its title'),
    steps: or(list(step), [], 'the steps'),
    edges: need(list(edge), 'which step comes before which'),
  }),
});
