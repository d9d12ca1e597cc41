// What the Pipit's jobs did agrees with its books: mixes, oil used, torques, wrenches, clearances.
import { describe, expect, test } from 'vitest';
import { demo, found, settingInSi } from './read-folder.ts';

const { maker, jobs, instruments } = demo.records;

describe('petrol and oil', () => {
  test('every mix is the one the book gives', () => {
    const mixes = jobs.flatMap((job) => job.work.flatMap((entry) => entry.ratio ?? []));
    expect(mixes.length).toBeGreaterThanOrEqual(4);
    for (const mix of mixes) expect(mix.quantity).toBeCloseTo(settingInSi('premix'), 9);
  });

  test('the millilitres ticked for a start are fuel over ratio', () => {
    const ticks = jobs.flatMap((job) => job.checks.filter((done) => done.check === 'oil-in-the-fuel'));
    const measured = ticks.flatMap((done) => /^(\d+) ml in (\d+) ml$/.exec(done.value ?? '') ?? []);
    expect(measured.length).toBeGreaterThanOrEqual(9);
    for (let n = 0; n < measured.length; n += 3) {
      expect(Number(measured[n + 2]) / Number(measured[n + 1])).toBeCloseTo(settingInSi('premix'), 9);
    }
  });

  test('since the pump was measured every ride used oil between the book’s bounds', () => {
    const use = found(maker.settings, (one) => one.id === 'oil-pump-use', 'oil-pump-use');
    const ratios = jobs.flatMap(({ ride }) =>
      ride?.fuel === undefined || ride.oil === undefined ? [] : [ride.fuel.quantity / ride.oil.quantity],
    );
    expect(ratios.length).toBeGreaterThanOrEqual(6);
    for (const ratio of ratios) {
      expect(ratio).toBeGreaterThan(use.range?.low ?? NaN);
      expect(ratio).toBeLessThan(use.range?.high ?? NaN);
    }
  });

  test('every ride’s petrol is plausible: 2.5 to 5 litres a hundred kilometres', () => {
    const rides = jobs.flatMap(({ id, ride }) =>
      ride?.fuel === undefined || ride.out === undefined || ride.in === undefined
        ? []
        : [{ id, litres: ride.fuel.quantity * 1000, kilometres: (ride.in.quantity - ride.out.quantity) / 1000 }],
    );
    expect(rides.length).toBeGreaterThanOrEqual(12);
    const strange = rides.filter(({ litres, kilometres }) => {
      const use = (litres / kilometres) * 100;
      return kilometres > 10 && !(use > 2.5 && use < 5);
    });
    expect(strange).toEqual([]);
  });
});

test('every torque aimed at is the book’s, in its state of thread, and inside the wrench', () => {
  const tightened = jobs.flatMap((job) => job.work.filter((entry) => entry.torque !== undefined));
  expect(tightened.length).toBeGreaterThanOrEqual(35);
  for (const entry of tightened) {
    const book = found(maker.fasteners, (one) => one.id === entry.thing, entry.thing);
    const wrench = found(instruments, (one) => one.id === entry.wrench, entry.wrench ?? 'wrench');
    expect([entry.thing, entry.torque?.quantity, entry.threads]).toEqual([entry.thing, book.torque?.low, book.threads]);
    expect([entry.thing, (entry.torque?.quantity ?? NaN) >= (wrench.range?.low ?? NaN)]).toEqual([entry.thing, true]);
    expect([entry.thing, (entry.torque?.quantity ?? NaN) <= (wrench.range?.high ?? NaN)]).toEqual([entry.thing, true]);
  }
});

test('nothing is tightened oftener than there are of it', () => {
  const over = jobs.flatMap((job) =>
    job.work.filter((entry) => {
      const fastener = maker.fasteners.find((one) => one.id === entry.thing);
      return fastener !== undefined && (entry.count ?? 1) > (fastener.count ?? 1);
    }),
  );
  expect(over.map((entry) => entry.thing)).toEqual([]);
});

test('piston clearance as written is largest bore less skirt, found and left', () => {
  const largest = (id: string, side: 'found' | 'left', cylinder: string): number => {
    const values = found(jobs, (job) => job.id === id, id).readings.filter((reading) => reading.item === 'bore');
    const positions = values.flatMap((reading) => reading[side]).filter((one) => one.position.startsWith(cylinder));
    return Math.max(...positions.map((one) => (one.value.kind === 'read' ? one.value.written.quantity : NaN)));
  };
  const one = (id: string, item: string, side: 'found' | 'left', cylinder: string): number => {
    const reading = found(jobs, (job) => job.id === id, id).readings.find((each) => each.item === item);
    const value = reading?.[side].find((each) => each.position === cylinder)?.value;
    return value?.kind === 'read' ? value.written.quantity : NaN;
  };
  for (const [id, side] of [
    ['2025-02-08-barrels-measured', 'found'],
    ['2025-03-12-barrels-back', 'left'],
  ] as const)
    for (const cylinder of ['left', 'right']) {
      const clearance = largest(id, side, cylinder) - one(id, 'piston-skirt', side, cylinder);
      expect(one(id, 'piston-clearance', side, cylinder) * 1000).toBeCloseTo(clearance * 1000, 3);
    }
});

test('the fall that the planned job is for is the fall that was read', () => {
  const right = (id: string): number => {
    const reading = found(jobs, (job) => job.id === id, id).readings.find((each) => each.item === 'compression');
    const value = reading?.found.find((each) => each.position === 'right')?.value;
    return value?.kind === 'read' ? value.written.quantity : NaN;
  };
  const fall = 100 * (1 - right('2026-09-19-autumn-service') / right('2025-09-13-running-in-service'));
  const planned = found(jobs, (job) => job.state === 'planned', 'planned job');
  expect(planned.purpose).toContain(String(Math.round(fall)) + ' per cent');
});
