// A due list says which of its lines are no maker's, what they were taken from, and for engines of what size that was meant.
import { expect, test } from 'vitest';
import { evening, machineFile } from '../evenings/evening.ts';
import { fourStroke } from '../faults/cards.ts';

function dueOf(geometry: string | undefined): string {
  const more = geometry === undefined ? {} : { geometry };
  return evening('2026-05-20', {}, { machine: machineFile(more, fourStroke) })
    .sheet('service-due')
    .replaceAll('\u00a0', ' ')
    .replaceAll(' <working:displacement>', '');
}

test('of an engine of its size, of another, and of one that nobody has measured', () => {
  const fits = dueOf('{bore: 56.5 mm, stroke: 49.5 mm}');
  expect(fits).toMatch(
    /General, not the maker’s: \d+ lines from “General schedule: four-stroke single, 100 to 200 cc/u,
  );
  expect(fits).toMatch(
    /Of these: 1\d read in published charts; \d read in part, the rest from memory; \d from memory; each by its own source\./u,
  );
  expect(fits).toContain('Meant for engines of 100 to 200 cc; this one has 124.1 cc.');
  const large = dueOf('{bore: 84 mm, stroke: 90 mm}');
  expect(large).toContain('this one has 498.8 cc, and is of another size: typical at best.');
  expect(dueOf(undefined)).toContain('of this one bore and stroke are not known.');
});

test('a tenth more than the class is of the class yet', () => {
  expect(dueOf('{bore: 67 mm, stroke: 60 mm}')).toContain('this one has 211.5 cc.');
  expect(dueOf('{bore: 70 mm, stroke: 60 mm}')).toContain('another size');
});
