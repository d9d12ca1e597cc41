// Evenings 7, 8 and 16: a torque that nobody knows, a stripped hole, and head nuts after the first heat.
import { expect, test } from 'vitest';
import { evening, machineFile } from './evening.ts';
import { wagtailBook } from './wagtail-book.ts';

test('7: head nuts, and no book says how tight', () => {
  const made = evening(
    '2026-05-20',
    {
      '2026-05-01-off': 'kind: strip\nwork: [{removed: cylinder head, fasteners: {cylinder-head-nut: 4}}]',
      '2026-05-02-on': `kind: assembly
work: [{refitted: cylinder head}, {tightened: cylinder-head-nut, result: by feel}]
checks: [fasteners-all-done]`,
    },
    { maker: wagtailBook({}, '?') },
  );
  const table = made.sheet('torque-table');
  expect(table).toMatch(/Cylinder head nuts, 4 × M8×1\.25 \| \[____\] N·m \|[^\n]*not known/u);
  expect(table).toContain(
    'no maker’s value is recorded. Find it before the fastener goes in for good; no general figure is printed',
  );
  expect(made.sheet('hold-points')).toContain('not proved: torque of Cylinder head nuts not known');
  const general = wagtailBook().replace('Wagtail workshop book', 'General table of torques');
  expect(evening('2026-05-20', {}, { maker: general }).codes).toContain('torque-from-general-table');
});

test('8: the stud strips at 12 N·m, and gets an insert', () => {
  const made = evening(
    '2026-05-20',
    {
      '2026-05-01-stud': `title: Stud stripped
kind: assembly
work: [{loosened: brake-plate-stud}, {tightened: brake-plate-stud, to: 12 N·m, result: stripped}]
repairs: [{of: brake-plate-stud, now: wire thread insert M8, why: stripped at 12 N·m}]`,
    },
    { maker: wagtailBook() },
  );
  const table = made.sheet('torque-table');
  expect(table).toMatch(/Rear brake plate stud, M8×1\.25 \| 20 N·m[^\n]*page 12; see below/u);
  expect(table).toMatch(
    /Rear brake plate stud \| wire thread insert M8 \| 1 May 2026, Stud stripped \|[^\n]*the value was for the hole as made; look at it at the next removal/u,
  );
  expect(made.sheet('history')).toContain('Now: Rear brake plate stud: wire thread insert M8; stripped at 12 N·m');
});

const hot = {
  '2026-05-02-on': `title: Head on
kind: assembly
work: [{loosened: cylinder-head-nut}, {tightened: cylinder-head-nut, to: 22 N·m}]`,
  '2026-05-09-field': 'kind: ride\nheat cycles: 1\nride: {where: private land, out: 0 km, in: 12 km}',
};

test('16: the first twelve kilometres are done, and it is Sunday and cold', () => {
  const sheet = evening('2026-05-10', hot, { maker: wagtailBook() }).sheet('re-torque');
  expect(sheet).toContain('CAUTION: Head nuts on a cold engine only, a little at a time, in order.');
  expect(sheet).toContain(
    '[ ] | Cylinder head nuts, 4 × M8×1.25; threads dry; crosswise | 22 N·m | [____] | run hot 9 May 2026',
  );
  expect(sheet).not.toContain('Rear spindle nut');
  expect(sheet).not.toContain('valve clearances');
});

test('16: on a four-stroke the tappets come after the nuts', () => {
  const tappet = '  - {id: inlet-tappet, name: Inlet tappet, value: 0.05 mm, condition: cold}\n';
  const four = machineFile({}, { stroke: 'four', lubrication: 'wet sump' });
  const made = evening('2026-05-10', hot, { maker: wagtailBook({ settings: tappet }), machine: four });
  const sheet = made.sheet('re-torque');
  expect(sheet.indexOf('Then the valve clearances again')).toBeGreaterThan(sheet.indexOf('Cylinder head nuts'));
  expect(sheet).toMatch(/Inlet tappet[^\n]*0\.05 mm/u);
});

test('16: nothing is asked for again once it was done cold', () => {
  const done = {
    ...hot,
    '2026-05-10-cold': 'kind: assembly\nwork: [{tightened: cylinder-head-nut, to: 22 N·m, note: cold}]',
  };
  const made = evening('2026-05-11', done, { maker: wagtailBook() });
  expect(made.codes).not.toContain('no-re-torque-after-heat');
  expect(made.sheet('re-torque')).not.toContain('run hot 9 May 2026');
});
