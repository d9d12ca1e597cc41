// A machine for the book: records that take off, put back, measure, tick and serve; 400 checks and 200 lines of schedule. The same N gives the same bytes.
import type { Content } from '../../src/records/content-model.ts';
import type { Records } from '../../src/records/model.ts';
import { readContent } from '../../src/records/read-content.ts';
import { readRecords } from '../../src/records/read.ts';

const things = Array.from({ length: 60 }, (_, index) => 'thing ' + String(index));
const [checkCount, lineCount] = [400, 200];

function range(count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => index);
}

/** Seven hold points with 400 checks between them; each is undone by two things. */
export function bookContent(): Content {
  const points = ['before-turning', 'before-live-kick', 'before-moving', 'before-road', 'p-five', 'p-six', 'p-seven'];
  const files = points.map((point, order) => {
    const mine = range(checkCount).filter((index) => index % points.length === order);
    const checks = mine.map(
      (index) =>
        `  - {id: check-${String(index)}, check: Check ${String(index)}, why: because it matters, proof: done, undone by: [${things[index % 60] ?? ''}, ${things[(index * 7) % 60] ?? ''}]}`,
    );
    const head = ['---', `hold point: ${point}`, `title: ${point}`, `order: ${String(order + 1)}`, 'checks:'];
    return { file: `content/hold-points/${point}.md`, text: [...head, ...checks, '---', ''].join('\n') };
  });
  return readContent(files).value;
}

function makerFile(): string {
  const lines = range(lineCount).map(
    (index) =>
      `  - {id: line-${String(index)}, item: Item ${String(index)}, do: inspect, every: ${String(500 + index * 10)} mi or ${String(3 + (index % 24))} months}`,
  );
  const limits = range(60).map(
    (index) =>
      `  - {id: size-${String(index)}, name: Size ${String(index)}, unit: mm, standard: 5.00 to 5.02 mm, limit: 5.50 mm max}`,
  );
  const nuts = range(40).map(
    (index) =>
      `  - {id: nut-${String(index)}, name: Nut ${String(index)}, thread: M8x1.25, torque: 22 N·m, disturbs: [size-${String(index)}]}`,
  );
  const head = ['splitpin: 1', 'source: {title: Bench book, page: "1"}'];
  return [...head, 'services:', ...lines, 'limits:', ...limits, 'fasteners:', ...nuts, ''].join('\n');
}

const machineFile = `splitpin: 1
name: Bench machine
make: Bench
model: One
numbers: {frame: {stamped: B-000001, known by: invented}}
features: {stroke: two, cylinders: 1, lubrication: premix, ignition: magneto, trigger: points, battery: no, lamps: yes, front brake: drum, rear brake: drum, final drive: chain, wheels: spoked}
clock: [{id: clock, unit: mi, digits: 5, from: {date: 1990-01-01, reads: 0 mi}}]
currency: GBP
`;

/** Even records take apart and measure, odd ones put together, tick, serve and ride. */
function recordFile(index: number, count: number): string {
  const day = new Date(Date.UTC(2000, 0, 1) + Math.floor((index * 9000) / count) * 86_400_000)
    .toISOString()
    .slice(0, 10);
  const miles = Math.floor((index * 60_000) / count);
  const [thing, other] = [things[(index >> 1) % 60] ?? '', things[((index >> 1) * 7 + 3) % 60] ?? ''];
  const nut = `nut-${String((index >> 1) % 40)}`;
  const size = `size-${String((index >> 1) % 60)}`;
  const apart = [
    'kind: strip',
    `work: [{removed: ${thing}, bag: ${String((index >> 1) % 90)}, fasteners: {${nut}: 4}}, {loosened: ${nut}}, {removed: ${other}}]`,
    `readings: [{item: ${size}, found: ${(5 + index / count / 3).toFixed(2)} mm}]`,
  ];
  const together = [
    'kind: assembly',
    `work: [{refitted: ${thing}, fasteners: {${nut}: 4}}, {tightened: ${nut}, to: 22 N·m}, {refitted: ${other}}]`,
    `checks: [${range(10)
      .map((step) => `check-${String((index * 5 + step) % checkCount)}`)
      .join(', ')}]`,
    `services: [line-${String(index % lineCount)}, line-${String((index * 3) % lineCount)}]`,
    `parts: [{part: gasket ${String(index)}, class: pattern, price: 3.50 GBP, state: fitted}]`,
    `ride: {out: ${String(miles)} mi, in: ${String(miles + 5)} mi, weather: dry}`,
  ];
  const head = [
    '---',
    `title: Record ${String(index)}`,
    `date: ${day}`,
    'state: done',
    'hands: [owner]',
    `odometer: ${String(miles)} mi`,
  ];
  return [...head, ...(index % 2 === 0 ? apart : together), '---', 'Done as the book says.', ''].join('\n');
}

/** The machine with so many records, read; throws when its files are not what they should be. */
export function bookRecords(count: number): Records {
  const jobs = range(count).map((index) => ({
    file: `jobs/${String(index).padStart(5, '0')}.md`,
    text: recordFile(index, count),
  }));
  const read = readRecords(
    [{ file: 'machine.yaml', text: machineFile }, { file: 'maker/book.yaml', text: makerFile() }, ...jobs],
    [],
  );
  const [first] = read.problems;
  if (first !== undefined || read.value === undefined) throw new Error(first?.message ?? 'not read');
  return read.value;
}
