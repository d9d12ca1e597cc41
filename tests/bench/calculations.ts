// What each calculation costs: nanoseconds for its example, and the whole of a machine of 40 fasteners, 60 limits and 1,000 records.
import { fileURLToPath } from 'node:url';
import { coverTorque } from '../../src/calc/cover-torque.ts';
import { calculations } from '../../src/calc/list.ts';
import { judge } from '../../src/calc/limit-verdict.ts';
import { projectWear } from '../../src/calc/wear-projection.ts';
import { workOut } from '../../src/calc/work.ts';
import { of } from '../../src/quantity/quantity.ts';
import { readQuantity } from '../../src/quantity/read-quantity.ts';
import { readRange } from '../../src/quantity/read-range.ts';
import { millimetre } from '../../src/quantity/units.ts';

/** Nanoseconds for one call, the middle of several rounds. */
function nanoseconds(call: () => void, times: number): number {
  const rounds = Array.from({ length: 5 }, () => {
    const begun = performance.now();
    for (let index = 0; index < times; index += 1) call();
    return ((performance.now() - begun) * 1e6) / times;
  });
  return rounds.toSorted((a, b) => a - b)[2] ?? 0;
}

/** One machine: 40 torque bands, 60 limits with 5 readings each and their projection, one written distance a record. */
function wholeMachine(): void {
  for (let index = 0; index < 40; index += 1)
    coverTorque({ thread: 'M6x1.0', propertyClass: '8.8', into: 'aluminium' });
  const [standard, limit] = [readRange('50.00 to 50.02 mm', 'length'), readRange('50.10 mm max', 'length')];
  if (!standard.ok || !limit.ok) throw new Error('the limits of the benchmark do not read');
  for (let index = 0; index < 60; index += 1) {
    const points = [0, 1, 2, 3, 4].map((step) => ({ at: step * 1000, value: 50.01 + step * 0.005 }));
    for (const point of points)
      judge<'length'>(of(point.value, millimetre), of(0.01, millimetre), standard.value, limit.value, millimetre);
    projectWear(points, 50.1, 1, 0.01);
  }
  for (let index = 0; index < 1000; index += 1) readQuantity(String(8000 + index) + ' mi', 'distance ridden');
}

/** Lines of the table: each calculation, then the whole in milliseconds, first run and after warming. */
export function calculationBench(): readonly string[] {
  const begun = performance.now();
  wholeMachine();
  const first = performance.now() - begun;
  const each = calculations.map(
    ({ id, example }) =>
      id.padEnd(26) + String(Math.round(nanoseconds(() => void workOut(id, example.given), 200))).padStart(9) + ' ns',
  );
  const warm = nanoseconds(wholeMachine, 5) / 1e6;
  return [
    ...each,
    'whole machine, first run'.padEnd(26) + first.toFixed(1).padStart(9) + ' ms',
    'whole machine'.padEnd(26) + warm.toFixed(1).padStart(9) + ' ms',
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.log(calculationBench().join('\n'));
