// adopted.yaml: which records came with a package from a former owner, and the hash of each as it came; `splitpin adopt` writes it.
import type { Adopted, AdoptedRecord } from '../adopted-model.ts';
import { refuse } from '../shapes/desk.ts';
import { entry, may, need, or, wholeFile } from '../shapes/fields.ts';
import { day } from '../shapes/measured.ts';
import { list, text } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { format } from './format.ts';
import { defineRecord } from './record-kind.ts';

const hash: Shape<string> = andThen(text, (words, spot, desk) =>
  /^[0-9a-f]{64}$/u.test(words)
    ? words
    : refuse(desk, spot, 'word-unknown', `“${words}” is no SHA-256.`, 'It is 64 digits and letters from a to f.'),
);

const came: Shape<AdoptedRecord> = entry({
  file: need(text, 'its path in the machine folder', { example: 'jobs/2024-06-15-points.md' }),
  hash: need(hash, 'its SHA-256 as it came', { example: '0'.repeat(64) }),
});

const earlier = entry({
  date: need(day, 'when', { example: '2024-06-15' }),
  fingerprint: may(hash, 'the fingerprint of that package'),
});

export const adoptedKind = defineRecord<Adopted>({
  id: 'adopted',
  purpose: 'What came with a package from a former owner; written by `splitpin adopt`, and not by hand.',
  files: 'adopted.yaml',
  matches: (file) => file === 'adopted.yaml',
  shape: andThen(
    wholeFile({
      splitpin: need(format, 'the version of the format', { example: '1' }),
      date: need(day, 'when the package was taken over', { example: '2026-11-25' }),
      fingerprint: may(hash, 'the fingerprint of the package, as it is printed on its history'),
      records: or(list(came), [], 'the records that stay as they came'),
      photos: or(list(came), [], 'the photos that came, each with its SHA-256'),
      before: or(list(earlier), [], 'earlier times that it changed hands so, oldest first'),
    }),
    ({ date, fingerprint, records, photos, before }) => ({
      date,
      records,
      photos,
      before,
      ...(fingerprint === undefined ? {} : { fingerprint }),
    }),
  ),
});
