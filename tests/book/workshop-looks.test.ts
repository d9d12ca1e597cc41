// Machines of a workshop side by side: a move told on one side, a part on two of them, one number on both.
import { expect, it } from 'vitest';
import { besideOthers } from '../../src/book/beside-others.ts';
import { lookOverWorkshop } from '../../src/book/workshop-looks.ts';
import type { Job, StampedNumber } from '../../src/records/model.ts';
import { book, job, machine, part } from './records.ts';

const frame = (stamped: string): readonly StampedNumber[] => [
  { name: 'frame', stamped, knownBy: 'headstock', private: false },
];

function asked(
  rider: readonly Job[],
  donor: readonly Job[],
  numbers: readonly [string, string] = ['R-1', 'D-1'],
): readonly string[] {
  const made = (folder: string, name: string, stamped: string, jobs: readonly Job[]) =>
    besideOthers(
      folder,
      book(jobs, '2026-06-01', { records: { machine: machine({ name, model: name, numbers: frame(stamped) }) } }),
    );
  return lookOverWorkshop([
    made('rider', 'Wagtail 125', numbers[0], rider),
    made('donor', 'Pipit 175', numbers[1], donor),
  ]).map(({ folder, problem }) => `${folder} ${problem.code}: ${problem.message}`);
}

const went = (day: string, to = 'rider') => job(day, { parts: [part('Carburettor', { movedTo: to })] });
const came = (day: string, from = 'donor') => job(day, { parts: [part('carburettor', { movedFrom: from })] });

it('has nothing to say of a move that both sides tell', () => {
  expect(asked([came('2026-05-01')], [went('2026-05-01')])).toEqual([]);
  expect(asked([came('2026-05-03', 'the Pipit 175')], [went('2026-05-01', 'Wagtail 125')])).toEqual([]);
});

it('asks when one side is silent', () => {
  expect(asked([], [went('2026-05-01')])).toEqual([
    'donor move-told-once: Carburettor went to rider on 2026-05-01, and the records there do not say that it came',
  ]);
  expect(asked([came('2026-05-01')], [])).toEqual([
    'rider move-told-once: carburettor came from donor on 2026-05-01, and the records there do not say that it went',
  ]);
  expect(asked([came('2026-05-01')], [went('2026-05-01'), went('2026-05-09')])).toHaveLength(1);
});

it('asks when a part came before it had left', () => {
  expect(asked([came('2026-04-01')], [went('2026-05-01')])).toEqual([
    'rider part-on-two-machines: carburettor is here since 2026-04-01, and left donor only on 2026-05-01: on two machines between',
  ]);
});

it('leaves a machine of somebody else alone', () => {
  expect(asked([came('2026-05-01', 'a friend’s bike')], [went('2026-05-01', 'the club')])).toEqual([]);
});

it('asks of a number that two machines have, however it is spaced', () => {
  expect(asked([], [], ['LP175-04417', 'lp175 04417'])).toEqual([
    'donor number-on-two-machines: frame number lp175 04417 is that of rider as well',
  ]);
  expect(asked([], [], ['?', '?'])).toEqual([]);
});

it('says nothing of a machine alone', () => {
  const alone = besideOthers('rider', book([came('2026-05-01')], '2026-06-01'));
  expect(lookOverWorkshop([alone])).toEqual([]);
});
