// What several jobs use up of one thing stands in one line, with the sum.
import { expect, test } from 'vitest';
import { shoppingLines } from '../../src/build.ts';
import { evening, machineFile } from '../evenings/evening.ts';

const fill = (fluid: string): string => `kind: service\nstate: planned\nwork: [{filled: ${fluid}}]`;
const book = (fluids: string): string =>
  `splitpin: 1\nsource: {title: Workshop book, edition: 1974, page: 12}\nfluids:\n${fluids}`;
const oil = '  - {id: gearbox-oil, name: Gearbox oil, quantity: 650 ml, grade: SAE 80}\n';
const today = '2026-05-22';
const machine = machineFile();

function page(fluids: string, jobs: Readonly<Record<string, string>>): string {
  return evening(today, jobs, { machine, maker: book(fluids) }).sheet('parts-to-get');
}

test('two fillings of one oil are one line with their sum', () => {
  const jobs = { '2026-06-01-spring': fill('gearbox-oil'), '2026-09-01-autumn': fill('gearbox-oil') };
  const text = page(oil, jobs);
  expect(text).toMatch(/Gearbox oil: 650 ml, SAE 80 each; 2 fillings, 1300 ml together \| [^\n]*spring; [^\n]*autumn/u);
  expect(text.match(/Gearbox oil: /gu)).toHaveLength(1);
});

test('one filling is not summed, and what has no quantity in the book is never made one', () => {
  expect(page(oil, { '2026-06-01-spring': fill('gearbox-oil') })).toMatch(/Gearbox oil: 650 ml, SAE 80 \|/u);
  const unknown = page('  - {id: gearbox-oil, name: Gearbox oil, grade: SAE 80}\n', {
    '2026-06-01-spring': fill('gearbox-oil'),
    '2026-09-01-autumn': fill('gearbox-oil'),
  });
  expect(unknown).not.toContain('together');
});

test('two machines that take the same grade are served from one can', () => {
  const one = evening(today, { '2026-06-01-a': fill('gearbox-oil') }, { machine, maker: book(oil) });
  const other = evening(
    today,
    { '2026-06-02-b': fill('gearbox-oil') },
    { machine: machineFile({ name: 'Larkmoor Dipper 125' }), maker: book(oil.replace('650 ml', '0.80 l')) },
  );
  const lines = shoppingLines([one.book, other.book])
    .join('\n')
    .replaceAll(/[\u00a0\u202f]/gu, ' ');
  expect(lines).toContain(
    'Larkmoor Wagtail 125, Larkmoor Dipper 125: Gearbox oil, SAE 80; 2 fillings, 1450 ml together',
  );
  const back = shoppingLines([other.book, one.book])
    .join('\n')
    .replaceAll(/[\u00a0\u202f]/gu, ' ');
  expect(back).toContain('2 fillings, 1.450 l together');
});

test('an oil that was let out and that the book does not name is asked for all the same; an empty tank is not bought', () => {
  const text = page(oil, {
    '2026-05-01-out': 'kind: strip\nwork: [{drained: engine oil}, {drained: oil tank}, {drained: fuel tank}]',
  });
  expect(text).toMatch(/engine oil: kind and quantity not in the book \| what is off now/u);
  expect(text).not.toMatch(/tank: kind/u);
});
