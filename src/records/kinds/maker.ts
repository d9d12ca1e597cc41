// maker/*.yaml: one book a file. An entry that cannot be read is left out; the rest of the book stands.
import type { MakerData } from '../model.ts';
import { entry, may, need, or, wholeFile } from '../shapes/fields.ts';
import { quantity } from '../shapes/measured.ts';
import { id, list, text } from '../shapes/plain.ts';
import { andThen } from '../shapes/shape.ts';
import { fastener } from './fasteners.ts';
import { format } from './format.ts';
import { limit, setting } from './limits.ts';
import { defineRecord } from './record-kind.ts';
import { serviceLines, toServices } from './services.ts';
import { bookSource, sourceFields, withSource } from './source-of.ts';

const fluid = entry({
  id: need(id, 'its permanent id', { example: 'gearbox-oil' }),
  name: need(text, 'what it is called on sheets', { example: 'Gearbox oil' }),
  quantity: may(quantity('volume', '650 ml'), 'how much'),
  grade: may(text, 'what kind', { example: 'SAE 10W-30' }),
  ...sourceFields,
});

export const makerKind = defineRecord<MakerData>({
  id: 'maker',
  purpose:
    'The maker’s data: fasteners, limits, fluids, settings, services; one file a book, every value with its source.',
  files: 'maker/*.yaml',
  matches: (file) => /^maker\/.+\.yaml$/u.test(file),
  shape: andThen(
    wholeFile({
      splitpin: need(format, 'the version of the format', { example: '1' }),
      source: need(bookSource, 'the book all values of the file are from', {
        example: '{title: Workshop book, edition: 1968}',
      }),
      fasteners: or(list(fastener), [], 'fasteners with thread and torque'),
      limits: or(list(limit), [], 'standards and service limits'),
      fluids: or(list(fluid), [], 'fluids with quantity and grade'),
      settings: or(list(setting), [], 'values to set'),
      services: or(serviceLines, [], 'the schedule'),
    }),
    ({ source, fasteners, limits, fluids, settings, services }) => ({
      fasteners: fasteners.map((found) => withSource(found, source)),
      limits: limits.map((found) => withSource(found, source)),
      fluids: fluids.map((found) => withSource(found, source)),
      settings: settings.map((found) => withSource(found, source)),
      services: toServices(services, source, 'maker'),
      sources: [source],
    }),
  ),
});
