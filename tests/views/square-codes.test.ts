// What the square codes on paper say, and that each leads back to what it hangs on, with an address and without.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codeMeans, machineMark, sheetCode, tagCode } from '../../src/records/square-codes.ts';
import { machine } from '../book/records.ts';

const numbers = [{ name: 'frame', stamped: 'LP175-04417', knownBy: '', private: false }];
const plain = machine({ name: 'Larkmoor Pipit 175', numbers });
const kept = machine({ name: 'Larkmoor Pipit 175', numbers, site: 'https://binder.example/' });
const unread = machine({
  name: 'Larkmoor Pipit 175',
  numbers: [{ name: 'frame', stamped: '?', knownBy: '', private: false }],
});
const jobs = ['2026-11-21-top-end-again', 'again', '2024-05-05-intake'];

describe('square codes', () => {
  test('say machine, bag, step and job, or the page at the machine’s address', () => {
    const tagged = { bag: '3', step: '4', job: '2026-11-21-top-end-again' };
    expect(tagCode(plain, tagged)).toBe('LP175-04417 bag 3 step 4 2026-11-21-top-end-again');
    expect(tagCode(kept, tagged)).toBe('https://binder.example/off.html#bag-3/step-4/2026-11-21-top-end-again');
    expect(tagCode(unread, { bag: '3' })).toBe('Larkmoor Pipit 175 bag 3');
    expect(sheetCode(plain, { id: 'torque-table', code: 'TQ' })).toBe('LP175-04417 TQ');
    expect(sheetCode(unread, { id: 'torque-table', code: 'TQ' })).toBe('Larkmoor Pipit 175 TQ');
    expect(sheetCode(kept, { id: 'torque-table', code: 'TQ' })).toBe('https://binder.example/sheets/torque-table.html');
  });

  test('lead back to bag, step and job', () => {
    const part = fc.option(fc.stringMatching(/^[A-Za-z0-9]{1,4}$/u), { nil: undefined });
    fc.assert(
      fc.property(
        fc.constantFrom(plain, kept, unread),
        part,
        part,
        fc.constantFrom(...jobs, undefined),
        (of, bag, step, job) => {
          const tagged = {
            ...(bag === undefined ? {} : { bag }),
            ...(step === undefined ? {} : { step }),
            ...(job === undefined ? {} : { job }),
          };
          expect(codeMeans(tagCode(of, tagged), of, jobs)).toEqual(tagged);
        },
      ),
    );
    for (const of of [plain, kept, unread])
      expect(
        codeMeans(
          sheetCode(of, { id: 'teardown-2026-11-21-top-end-again', code: 'TD' }, '2026-11-21-top-end-again'),
          of,
          jobs,
        ),
      ).toEqual({
        job: '2026-11-21-top-end-again',
      });
  });

  test('of another machine, or of anything else, mean nothing here', () => {
    for (const text of [
      'LP175-044170 bag 3',
      'X9 bag 3 again',
      'https://other.example/off.html#bag-3',
      'https://binder.example.evil/off.html',
      'tel:1',
      '',
    ])
      expect([text, codeMeans(text, kept, jobs)]).toEqual([text, undefined]);
    expect(codeMeans('https://binder.example/off.html#%', kept, jobs)).toEqual({});
    expect(codeMeans('LP175-04417 bag 3 2020-01-01-gone', plain, jobs)).toEqual({ bag: '3' });
    expect(machineMark(unread)).toBe('Larkmoor Pipit 175');
  });
});
