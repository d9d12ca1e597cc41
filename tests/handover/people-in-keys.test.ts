// Sellers and menders by their names: who is a person, what is a trade, and that every word of a name is covered in all words of the copy.
import { expect, test } from 'vitest';
import { peopleInKeys, personNamed } from '../../src/handover/people-in-keys.ts';
import { whatGoes } from '../../src/command/handover/what-goes.ts';
import { packageFolder, readMachineFolder } from '../../src/disk.ts';
import { readRecords } from '../../src/records/read.ts';
import { small } from '../command/small-machine.ts';
import { asFiles, copyOf, noChoices, textOf } from './copy-of.ts';

const known = new Set(['larkmoor', 'pipit', '175']);

test.each([
  ['Odalys Brenner', 'Odalys Brenner'],
  ['Odalys Brenner, by post', 'Odalys Brenner'],
  ['my neighbour Tobin', 'Tobin'],
  ['the widow of T. Alderman', 'T. Alderman'],
  ['Seán O’Dwyer-Śliwa', 'Seán O’Dwyer-Śliwa'],
  ['Ольга Крылова', 'Ольга Крылова'],
])('%s is a person', (text, name) => expect(personNamed(text, known)).toBe(name));

test.each([
  'bearing shop',
  'Brenner & Sons',
  'Brenner Motors',
  'Larkmoor dealer',
  'a Larkmoor',
  'The autojumble',
  'club spares scheme',
  '10 N·m',
  '2.2 kgf·m',
  '?',
])('%s is none', (text) => expect(personNamed(text, known)).toBeUndefined());

test.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])(
  '%s: trades are not taken for people',
  (name) => {
    const read = readMachineFolder(`${packageFolder()}/${name}`).value;
    const records = read === undefined ? undefined : readRecords(read.files, read.assets, read.shared).value;
    if (records === undefined) throw new Error(`${name} cannot be read`);
    expect(records.jobs.flatMap(({ parts }) => parts.flatMap(({ from }) => from ?? [])).length).toBeGreaterThan(0);
    expect(peopleInKeys(records)).toEqual([]);
  },
);

const job = `---
title: Seat bought
date: 2024-05-09
kind: buying
state: done
work: [{sent out: seat, to: Ilse Hartog}]
parts:
  - {part: seat cover, from: "Odalys Brenner, by post", state: here}
  - {part: tube, from: tyre shop, state: here}
---
Brenner had two. Odalys wants the old one back. My brother Tobin drove; Hartog sews it.
Tobin drove again.
`;

test('each word of a name is covered wherever it stands; the trade stays named, and the list says what it is', () => {
  const folder = { ...small, 'jobs/2024-05-09-seat.md': job };
  const copy = copyOf(folder);
  const text = copy.files.find(({ file }) => file.includes('05-09'))?.text ?? '';
  expect(text).not.toMatch(/Odalys|Brenner|Ilse|Hartog|Tobin/u);
  expect(text).toContain('from: "a private person, by post"');
  expect(text).toContain('to: a private person');
  expect(text).toContain('from: tyre shop');
  expect(text).toContain('a private person had two. a private person wants the old one back.');
  const records = readRecords(asFiles(folder), []).value;
  if (records === undefined) throw new Error('it cannot be read');
  const said = whatGoes(copy, records, false).join('\n');
  expect(said).toMatch(/^ {2}a name “Odalys Brenner” \(jobs\/2024-05-09-seat\.md: parts, entry 1\)/mu);
  expect(said).toContain('firms named in it: tyre shop');
  expect(said).toContain('What this program cannot find, and only you can');
});

test('a name that may go, goes', () => {
  const copy = copyOf({ ...small, 'jobs/2024-05-09-seat.md': job }, [], { ...noChoices, mayGo: ['Ilse Hartog'] });
  expect(textOf(copy)).toContain('to: Ilse Hartog');
});

const kept = `---
title: Speedometer changed
date: 2024-05-10
kind: repair
state: done
parts:
  - {part: speedometer, from: Brenner, state: fitted, instead of: first speedometer, original kept: with Odalys Hartog}
  - {part: bulb, from: Kestrel spares, state: fitted, instead of: bulb, original kept: tub 2}
---
`;

test('who keeps an old part is left out, and where it lies is not', () => {
  const text = textOf(copyOf({ ...small, 'jobs/2024-05-10-clock.md': kept }));
  expect(text).not.toMatch(/Odalys|Hartog/u);
  expect(text).toContain('original kept: with a private person');
  expect(text).toContain('original kept: tub 2');
});

test('one word alone stays with the owner, and the list says that it may be a firm’s', () => {
  const folder = { ...small, 'jobs/2024-05-10-clock.md': kept };
  const records = readRecords(asFiles(folder), []).value;
  if (records === undefined) throw new Error('it cannot be read');
  const said = whatGoes(copyOf(folder), records, false).join('\n');
  expect(said).toMatch(/one word, of a person or a firm; “Brenner”/u);
  expect(said).toMatch(/ a name “Odalys Hartog”/u);
  expect(textOf(copyOf(folder))).not.toContain('Brenner');
  expect(textOf(copyOf(folder, [], { ...noChoices, mayGo: ['Brenner'] }))).toContain('from: Brenner');
});
