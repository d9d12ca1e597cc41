// What a record says already at blanks of the machine’s sheets: its own checks, and no line of a form that ends in the same word.
import { expect, test } from 'vitest';
import { withGiven } from '../../src/entry/given-in-record.ts';
import { openJobs } from './open-jobs.ts';

const [open] = openJobs('tests/fixtures/finch-125');
if (open === undefined) throw new Error('the fixture has no open job');
const { job } = open;

function given(id: string): string | undefined {
  const proved = { ...job, checks: [{ check: 'lamps', at: { file: job.file, path: ['checks', 0] } }] };
  return withGiven(proved, { id, kind: 'tick', asks: 'Lamps', singly: false }).given;
}

test.each([
  ['before-road/lamps', 'yes'],
  [`${job.id}/check/lamps`, 'yes'],
  ['form/handover-shown/lamps', undefined],
  ['form/intake-completeness/lamps', undefined],
])('%s', (id, said) => {
  expect(given(id)).toBe(said);
});

test('the head of a sheet has the clock of the record, and the day once the work has begun', () => {
  const text = { ...job, state: 'under way', hands: ['owner', 'helper'] } as const;
  const at = (id: string, of: typeof job = text): string | undefined =>
    withGiven(of, { id, kind: 'text', asks: '', singly: false }).given;
  expect(at('today/1/1')).toBe(job.date.to);
  expect(at('today/1/1', { ...job, state: 'planned' })).toBeUndefined();
  expect(at('today/1/4')).toBe('owner, helper');
});
