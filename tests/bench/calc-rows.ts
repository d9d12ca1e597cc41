// All calculations of one machine after loading: every worked-out figure of its binder, its torque bands, and the mixture table.
import { fileURLToPath } from 'node:url';
import { coverTorque } from '../../src/calc/cover-torque.ts';
import type { Book } from '../../src/book/book.ts';
import { airTable } from '../../src/views/figures/air.ts';
import { workedFigures } from '../../src/views/wording/worked-figures.ts';
import { calcMachine } from './calc-machine.ts';
import { calculationBench } from './calculations.ts';
import { median, type Line } from './rows.ts';

const turns = 15;

/** What a build works out of a loaded book; a copy of the book is a new book to whatever keeps results. */
function everything(book: Book): number {
  const copy = { ...book };
  const bands = copy.torque.flatMap(({ fastener }) => {
    if (fastener.duty === undefined || fastener.thread === undefined) return [];
    const band = coverTorque({ thread: fastener.thread, propertyClass: '4.8', into: 'aluminium' });
    return band === undefined ? [] : [band];
  });
  return workedFigures(copy).length + bands.length + (airTable(copy)?.rows.length ?? 0);
}

/** The first run, cold, and the middle of some more. */
export function calcRows(): readonly Line[] {
  const book = calcMachine();
  const timed = (): number => {
    // Processor time: the wall clock also counts whoever else is at work on this computer.
    const begun = process.cpuUsage();
    everything(book);
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1000;
  };
  const first = timed();
  const again = median(Array.from({ length: turns }, timed));
  const count = String(everything(book));
  const line = (work: string, measured: number, must: number): Line => ({
    work,
    against: 'a bound',
    measured,
    must,
    aim: must / 2,
    better: 'less',
    unit: 'ms',
  });
  console.error(calculationBench().join('\n'));
  return [
    line('all ' + count + ' figures: 40 fasteners, 60 limits, 1 000 records, first time, cold', first, 150),
    line('the same, once loaded', again, 50),
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const { work, measured, must } of calcRows()) console.log([work, measured?.toFixed(1), 'ms of', must].join(' '));
