// What the machine fills into a working reads back to the same: the form, the page without a script and the sheets say one figure.
import { describe, expect, it } from 'vitest';
import { calculationById, calculations } from '../../src/calc/list.ts';
import { otherUnits } from '../../src/calc/other-units.ts';
import { resultLines } from '../../src/calc/work-text.ts';
import { workedFrom } from '../../src/bench/carried-values.ts';
import { withItsUnit } from '../../src/bench/typed-values.ts';
import { calculationOn } from '../../src/book/taken/on-machine.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { readAnyQuantity } from '../../src/quantity/read-quantity.ts';
import { filledFor } from '../../src/views/bench/filled.ts';
import { benchWorkings } from '../../src/views/bench/workings-at-bench.ts';

describe.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])('%s', (folder) => {
  it('gives the same results from what is filled in as from its records', () => {
    const book = readMachine(folder, '2026-11-14', {}).binder?.book;
    if (book === undefined) throw new Error(`${folder} cannot be read`);
    let filled = 0;
    for (const one of calculations) {
      const worked = calculationOn(book, one.id)?.worked;
      if (worked === undefined || resultLines(one, worked).length === 0) continue;
      filled += 1;
      const { values, widths } = filledFor(book, one.id);
      const carried = new Map(
        Object.entries(values).map(([name, text]) => [name, { text, widths: widths[name] ?? [] }]),
      );
      expect(resultLines(one, workedFrom(one, values, carried)), one.id).toEqual(resultLines(one, worked));
    }
    expect(filled).toBeGreaterThan(5);
  });
  it('fills in nothing that the working has no room for', () => {
    const book = readMachine(folder, '2026-11-14', {}).binder?.book;
    if (book === undefined) throw new Error(`${folder} cannot be read`);
    for (const { id } of calculations) {
      const onIt = calculationOn(book, id);
      const taken = new Set(onIt?.taken.map(({ input }) => input));
      const wrong = (onIt?.worked.doubts ?? []).filter(
        ({ code, input = '' }) => code === 'calculation-out-of-range' && taken.has(input),
      );
      expect(wrong, id).toEqual([]);
    }
  });
});

it('takes a bare number in the unit of its input, and leaves what has one', () => {
  const input = (id: string, name: string) => {
    const found = calculationById(id)?.inputs[name];
    if (found === undefined) throw new Error(`${id} has no ${name}`);
    return found;
  };
  expect(withItsUnit('0,35', input('gap-change', 'gap now'))).toBe('0,35 mm');
  expect(withItsUnit('14 thou', input('gap-change', 'gap now'))).toBe('14 thou');
  expect(withItsUnit('25', input('oil-in-fuel', 'ratio'))).toBe('25:1');
  expect(withItsUnit('1:25', input('oil-in-fuel', 'ratio'))).toBe('1:25');
  expect(withItsUnit('6.8; 9,2 bar', input('compression-spread', 'dry'))).toBe('6.8 bar; 9,2 bar');
  expect(withItsUnit(' M6 ', input('thread-geometry', 'thread'))).toBe('M6');
  expect(withItsUnit('6?.8', input('gap-change', 'gap now'))).toBe('6?.8');
  expect(withItsUnit('0,35', input('gap-change', 'gap now'), { mm: 'in' })).toBe('0,35 in');
  expect(withItsUnit('14 thou', input('gap-change', 'gap now'), { mm: 'in' })).toBe('14 thou');
});

it('sets a value in every unit of its kind, and the number as each of them', () => {
  const read = readAnyQuantity('12 N·m');
  if (!read.ok) throw new Error(read.why.message);
  const lines = otherUnits(read.value);
  expect(lines[0]).toMatchObject({ same: '12\u00a0N·m', would: '' });
  expect(lines.find(({ unit }) => unit === 'lbf·ft')).toEqual({
    unit: 'lbf·ft',
    same: '8.851\u00a0lbf·ft',
    instead: '12\u00a0lbf·ft',
    would: '16.27\u00a0N·m',
  });
});

it('names only calculations that there are, and passes results on to inputs that there are', () => {
  for (const { calculations: ids, passed } of benchWorkings) {
    for (const id of ids) expect(calculationById(id), id).toBeDefined();
    for (const { from, output, to, input } of passed) {
      expect(calculationById(from)?.outputs[output], `${from}/${output}`).toBeDefined();
      expect(calculationById(to)?.inputs[input], `${to}/${input}`).toBeDefined();
    }
  }
});
