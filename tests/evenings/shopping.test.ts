// Evening 17: the shop closes at noon. One page by supplier, what holds a hold point first, with sizes and what to bring.
import { expect, test } from 'vitest';
import { shoppingData, shoppingLines } from '../../src/build.ts';
import { evening, machineFile } from './evening.ts';
import { wagtailBook } from './wagtail-book.ts';

const workshop = `splitpin: 1
suppliers:
  - name: the bearing shop
    hours: {Monday to Friday: "8:00 to 17:00", Saturday: 9:00 to 12:00}
  - {name: club spares, hours: {Saturday: 10:00 to 14:00}, lead days: 10}
stock:
  - {part: "split pins, assorted"}
`;
const jobs = {
  '2026-05-01-top-end': `kind: strip
work: [{removed: cylinder head}, {sent out: barrel, to: the reborer, promised: 2026-05-08, price: 60.00 GBP}]
parts:
  - {part: crank seal, size: 25×40×7 mm, bring: the old seal, alternatives: [the same with two lips], from: the bearing shop, price: 4.20 GBP, state: wanted}
  - {part: piston, number: W-56-2, supersedes: W-56-1, from: club spares, price: 48.00 GBP, state: ordered, promised: 2026-05-12}
  - {part: cylinder on exchange, from: club spares, price: 70.00 GBP, state: fitted, core: {deposit: 25.00 GBP, return by: 2026-06-30}}`,
  '2026-05-23-wheel': `title: Wheel out
state: planned
procedures: [wheel-rear-out]
parts: [{part: wheel bearing 6202, from: the bearing shop, state: wanted}]`,
  '2026-05-24-trim': 'title: Seat cover\nstate: planned\nparts: [{part: a badge, from: club spares, state: wanted}]',
} as const;
const machine = machineFile();
const friday = () => evening('2026-05-22', jobs, { machine, maker: wagtailBook(), workshop });

test('17: the shop closes at noon', () => {
  const page = friday().sheet('parts-to-get');
  expect(page).toContain('the bearing shop: open today, 8:00 to 17:00');
  expect(page).toContain('club spares: open Saturday 23 May 2026, 10:00 to 14:00; about 10 days to the door');
  expect(page).toContain('bring the old seal, 25×40×7 mm; or the same with two lips | 4.20 GBP');
  expect(page).toMatch(/On its way[^#]*piston \| club spares, promised for 12 May 2026, 10 days late: ask/u);
  expect(page).toMatch(
    /Away at work[^#]*at the reborer since 1 May 2026; promised for 8 May 2026, 14 days late: ask; 60\.00 GBP agreed/u,
  );
  expect(page).toContain('old one back to club spares by 30 June 2026, 39 days left: 25.00 GBP comes back');
});

test('17: what keeps a hold point held stands first, and its supplier before the others', () => {
  const page = friday().sheet('parts-to-get');
  const at = (text: string): number => page.indexOf(text);
  expect(at('crank seal')).toBeGreaterThan(0);
  expect(at('crank seal')).toBeLessThan(at('wheel bearing 6202'));
  expect(at('wheel bearing 6202')).toBeLessThan(at('a badge'));
  expect(page).toMatch(/crank seal[^\n]*is held until then/u);
  expect(page).toMatch(/wheel bearing 6202[^\n]*will be held once it is begun/u);
  expect(page).toMatch(/a badge[^\n]*Seat cover\n/u);
});

test('17: what lies in the drawer or on the list is not asked for again; what is in neither is', () => {
  const nothing = evening(
    '2026-05-22',
    { '2026-05-23-wheel': jobs['2026-05-23-wheel'] },
    { machine, maker: wagtailBook() },
  );
  expect(nothing.sheet('parts-to-get')).toMatch(/Used up by the work[^#]*split pin for Rear spindle nut \| Wheel out/u);
  expect(friday().sheet('parts-to-get')).not.toContain('split pin for');
});

test('17: on Sunday both are closed until the next day they open', () => {
  const sunday = evening('2026-05-24', jobs, { machine, maker: wagtailBook(), workshop }).sheet('parts-to-get');
  expect(sunday).toContain('the bearing shop: open Monday 25 May 2026, 8:00 to 17:00');
  expect(sunday).toContain('club spares: open Saturday 30 May 2026');
});

test('17: over two machines each thing is bought once, and said for whom', () => {
  const tin = (name: string, count: number) =>
    evening(
      '2026-05-22',
      {
        '2026-05-23-clean': `title: Carburettor\nstate: planned\nparts: [{part: bowl gasket, number: B7, count: ${String(count)}, from: club spares, state: wanted}]`,
      },
      { machine: machineFile({ name }), maker: wagtailBook(), workshop },
    ).book;
  const books = [tin('Wagtail one', 1), tin('Wagtail two', 2)];
  const text = shoppingLines(books).join('\n').replaceAll('\u00a0', ' ');
  expect(text.match(/bowl gasket/gu)).toHaveLength(1);
  expect(text).toContain(
    '3 × bowl gasket: B7; for 1 for Wagtail one, “Carburettor” and 2 for Wagtail two, “Carburettor”',
  );
  expect(shoppingData(books)).toMatchObject({
    suppliers: [{ supplier: 'club spares', toGet: [{ part: 'bowl gasket', count: 3 }] }],
  });
});

test('17: a number that was superseded is known both ways, whichever record says so', () => {
  const both = evening(
    '2026-05-22',
    {
      '2026-05-20-old': 'parts: [{part: fork bush, book number: W-90-1, from: club spares, state: wanted}]',
      '2026-05-21-new':
        'parts: [{part: fork bushes, number: W-90-2, supersedes: W-90-1, from: club spares, state: fitted}]',
    },
    { machine, maker: wagtailBook() },
  );
  expect(both.sheet('parts-to-get')).toContain('fork bush, in the book W-90-1, now W-90-2');
  expect(both.page('parts.html')).toContain('fork bushes: W-90-2, before W-90-1');
});
