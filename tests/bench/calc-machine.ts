// A machine of 40 fasteners, 60 limits and 1,000 records, made in memory; the same bytes every time.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeBook } from '../../src/book/make.ts';
import type { Book } from '../../src/book/book.ts';
import { packageFolder, readContentFolder } from '../../src/disk.ts';
import { addDays, readDay } from '../../src/quantity/day-arithmetic.ts';
import { readContent } from '../../src/records/read-content.ts';
import { readRecords } from '../../src/records/read.ts';
import type { SourceFile } from '../../src/source/files.ts';

const fasteners = 40;
const limits = 60;
const records = 1000;
const rarely = 10;
const threads = ['M5x0.8', 'M6x1.0', 'M8x1.25', 'M10x1.25'];

function number(value: number, decimals: number): string {
  return value.toFixed(decimals);
}

function maker(): SourceFile {
  const made = Array.from({ length: fasteners }, (_, index) => {
    const thread = threads[index % threads.length] ?? '';
    const rest =
      index % 3 === 0
        ? 'class: "4.8", into: aluminium, duty: cover, torque: "?"'
        : `torque: ${number(0.8 + (index % threads.length) * 0.6, 1)} kgf·m`;
    return `  - {id: fastener-${String(index)}, name: Fastener ${String(index)}, thread: ${thread}, ${rest}, page: 1}`;
  });
  const bounded = Array.from(
    { length: limits - 2 },
    (_, index) =>
      `  - {id: part-${String(index)}, name: Part ${String(index)}, unit: mm, standard: 10.00 to 10.10 mm, limit: 12.00 mm max, page: 2}`,
  );
  const text = [
    'splitpin: 1',
    'source: {title: A book}',
    'fasteners:',
    ...made,
    'limits:',
    '  - {id: bore, name: Cylinder bore, positions: [left top fore-aft, left top across], unit: mm, standard: 50.00 to 50.02 mm, limit: 50.10 mm max, page: 3}',
    '  - {id: chain-20-links, name: Chain, unit: mm, standard: 254.0 to 254.3 mm, limit: 259.1 mm max, page: 3}',
    ...bounded,
    'settings:',
    '  - {id: ignition-timing, name: Ignition timing, value: 2.1 mm, page: 4}',
    '  - {id: ignition-timing-angle, name: The same as an angle, value: 22.6°, page: 4}',
    '  - {id: premix, name: Petrol and oil, value: 25:1, page: 4}',
    '  - {id: main-jet, name: Main jet, value: stamped 85, page: 4}',
    '',
  ].join('\n');
  return { file: 'maker/book.yaml', text };
}

/** What is measured at every tenth record only: bores and the chain. */
function rare(index: number): readonly string[] {
  return [
    `  - {item: bore, found: {left top fore-aft: ${number(50.01 + index * 0.00005, 3)} mm, left top across: 50.01 mm}}`,
    `  - {item: chain-20-links, found: ${number(254 + index * 0.003, 1)} mm}`,
  ];
}

function record(index: number, begin: string): SourceFile {
  const miles = 100 + index * 10;
  const readings = [0, 1, 2, 3, 4].map((step) => {
    const part = (index * 5 + step) % (limits - 2);
    return `  - {item: part-${String(part)}, found: ${number(10.05 + index * 0.001, 3)} mm, condition: cold}`;
  });
  const text = [
    '---',
    `title: Record ${String(index)}`,
    `date: ${begin}`,
    'kind: measuring',
    'state: done',
    `odometer: ${String(miles)} mi`,
    'readings:',
    ...readings,
    ...(index % rarely === 0 ? rare(index) : []),
    '---',
    '',
  ].join('\n');
  return { file: `jobs/record-${String(index).padStart(4, '0')}.md`, text };
}

/** The book of that machine, with the machine file of the demo and the content of the project. */
export function calcMachine(): Book {
  const day = readDay('2020-01-01');
  const today = readDay('2026-11-14');
  if (!day.ok || !today.ok) throw new Error('the benchmark’s days do not read');
  const text = readFileSync(join(packageFolder(), 'demo-bike/machine.yaml'), 'utf8');
  const clock = /^clock:\n(?: {2}.*\n)+/m;
  const machine = text
    .replace(', photo: photos/frame-number.png', '')
    .replace(
      clock,
      'clock:\n  - id: only\n    unit: mi\n    digits: 5\n    from: {date: 2019-01-01, reads: 0 mi}\n    state: working\n',
    );
  const jobs = Array.from({ length: records }, (_, index) => record(index, addDays(day.value, index * 2)));
  const read = readRecords([{ file: 'machine.yaml', text: machine }, maker(), ...jobs], [], []);
  const [problem] = read.problems.filter((one) => one.severity === 'problem');
  if (read.value === undefined || problem !== undefined)
    throw new Error('the benchmark’s machine does not read: ' + (problem?.message ?? ''));
  return makeBook(read.value, readContent(readContentFolder()).value, today.value);
}
