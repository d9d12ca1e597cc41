// content/schedules: services where a maker gives none; the same lines as in a maker's file.
import type { Content } from '../content-model.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { serviceLines, toServices } from '../kinds/services.ts';
import { bookSource } from '../kinds/source-of.ts';
import { may, need, or, wholeFile } from '../shapes/fields.ts';
import { range } from '../shapes/measured.ts';
import { id, text } from '../shapes/plain.ts';
import { andThen } from '../shapes/shape.ts';
import { applies } from './applies.ts';

export const schedulesKind = defineRecord<Content['schedules'][number]>({
  id: 'schedule',
  purpose: 'A general service schedule.',
  files: 'content/schedules/*.md',
  matches: (file) => /(?:^|\/)schedules\/.+\.md$/u.test(file),
  shape: andThen(
    wholeFile({
      schedule: need(id, 'its permanent id', { example: 'two-stroke' }),
      title: need(text, 'its title'),
      applies: or(applies, {}, 'machines it is for'),
      meantFor: may(
        range('volume', '100 to 200 cc'),
        'displacement of the engines it was meant for; another is asked about',
      ),
      source: or(bookSource, { title: 'Common practice' }, 'where the steps are from'),
      note: may(text, 'a remark for the page'),
      services: need(serviceLines, 'the lines'),
    }),
    ({ schedule, title, applies: wanted, meantFor, source, services }) => ({
      id: schedule,
      title,
      applies: wanted,
      ...(meantFor === undefined ? {} : { meantFor }),
      services: toServices(services, source, 'general'),
    }),
  ),
});
