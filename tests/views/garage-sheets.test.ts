// Sheets for the garage: what hangs on the bars over winter, what is counted out and back, labels for bags, what is signed by both.
import { describe, expect, test } from 'vitest';
import type { CardsBlock, Sheet } from '../../src/sheet/sheet.ts';
import { sheetText } from '../goldens/sheet-text.ts';
import { binderOf } from './binder.ts';

const pipit = binderOf('demo-bike', '2026-11-14');
const tern = binderOf('tests/fixtures/tern-350', '2026-11-14');
const finch = binderOf('tests/fixtures/finch-125', '2026-11-14');
const all = [pipit, tern, finch];

type Binder = typeof pipit;

function sheet(binder: Binder, id: string): Sheet {
  const found = binder.sheets.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no sheet ${id}`);
  return found;
}
const textOf = (binder: Binder, id: string): string => sheetText(sheet(binder, id));
const cardsOf = (binder: Binder, id: string): readonly CardsBlock[] =>
  sheet(binder, id).blocks.flatMap((block) => (block.type === 'cards' ? [block] : []));

/** The demo as its records stood at the end of a day. */
function asOf(date: string): Binder {
  return binderOf('demo-bike', date, (files) =>
    files.filter(({ file }) => !file.startsWith('jobs/') || file.slice(5, 15) <= date),
  );
}

describe('the lay-up card', () => {
  test('in the middle of a winter says since when, and everything that must be undone', () => {
    const [cards] = cardsOf(asOf('2025-12-24'), 'lay-up');
    expect(cards?.cards[0]?.title).toBe('Laid up 8\u00a0November\u00a02025');
    const text = textOf(asOf('2025-12-24'), 'lay-up');
    for (const thing of ['rags in both tail pipes', 'rag in the air box mouth', 'battery', 'three rags'])
      expect(text).toContain(thing);
  });
  test('after the return is blank again', () => {
    const text = textOf(asOf('2026-03-10'), 'lay-up');
    expect(text).toContain('Laid up on:');
    expect(text).not.toContain('rags in both tail pipes');
  });
  test('asks for what this machine has', () => {
    expect(textOf(tern, 'lay-up')).toContain('Oil drains down to the crankcase');
    expect(textOf(tern, 'lay-up')).not.toContain('Battery out');
    expect(textOf(pipit, 'lay-up')).toContain('Battery out');
    expect(textOf(pipit, 'lay-up')).not.toContain('Oil drains down to the crankcase');
  });
});

describe('labels and tags', () => {
  const cards = cardsOf(pipit, 'tags').flatMap((block) => block.cards);
  test('each bag has one label to lie in it and one to hang on it, with the same words', () => {
    const [inside, outside] = ['Bag 8, in', 'Bag 8, out'].map((title) => cards.find((card) => card.title === title));
    expect(inside?.lines.length).toBeGreaterThan(1);
    expect(outside?.lines).toEqual(inside?.lines);
    expect(inside?.code).toContain('bag 8');
  });
  test('a bag that was emptied has none; the planned job’s bags go on counting', () => {
    expect(cards.some((card) => card.title === 'Bag 3, in')).toBe(false);
    const from = pipit.book.plans[0]?.bagFrom ?? 0;
    expect(cards.some((card) => card.title === `Bag ${String(from)}, in`)).toBe(true);
  });
  test('are about as large as a shipping tag, with a hole', () => {
    for (const block of all.flatMap((binder) => cardsOf(binder, 'tags'))) {
      expect(block.hole).toBe(true);
      expect(block.size).toEqual({ width: 60, height: 110 });
    }
  });
});

describe('a batch for plating', () => {
  test('counts by thread and length, and keeps what carries out of the acid', () => {
    const text = textOf(pipit, 'plating-batch');
    expect(text).toMatch(/M6×1\.0 × 16\u00a0mm \| Side panel screws; side panels; trim \|/);
    expect(text).toMatch(/Cylinder head nuts; no acid at home \|.*\| 8\u00a0× \| \[____\] \| \[____\] \| \[ \]/);
    expect(text).not.toContain('Sparking plugs');
  });
});

describe('handing over', () => {
  test.each(all)('both sign the faults and the handover', (binder) => {
    for (const id of ['known-faults', 'handover'])
      expect(textOf(binder, id)).toContain('Hands over: ________\nTakes over: ________');
  });
  test('open faults are listed, answered ones are not', () => {
    const text = textOf(pipit, 'known-faults');
    expect(text).toContain('left rear damper weeping');
    expect(text).not.toContain('tyres cracked to the cords');
  });
  test('a changed clock says its three words and both instruments', () => {
    const text = textOf(pipit, 'handover');
    expect(text).toContain('Odometer: not actual.');
    expect(text).toMatch(/no\. 1 \| mi, 5 \|[^\n]*8214\u00a0mi \| dead/);
    expect(text).toMatch(/no\. 2 \| mi, 5 \|[^\n]*fitted now \| working/);
  });
  test('no private number stands on a sheet that goes away with the machine', () => {
    for (const id of ['handover', 'known-faults', 'intake']) expect(textOf(pipit, id), id).not.toMatch(/K412|QIQ/);
  });
});

describe('cards and logs', () => {
  test('the settings card has a front and a back, no larger than a bank card', () => {
    for (const binder of all) {
      const [block] = cardsOf(binder, 'settings-card');
      expect(block?.size).toEqual({ width: 86, height: 54 });
      // Fronts and backs in pairs, and nothing that is asked for is left off.
      expect((block?.cards.length ?? 1) % 2).toBe(0);
      const told = JSON.stringify(block?.cards);
      const tyres = binder.book.records.maker.settings.filter(({ name }) => /tyre|tire|plug|timing|chain/iu.test(name));
      expect(tyres.length).toBeGreaterThan(0);
      for (const { name } of tyres) expect(told).toContain(name);
    }
    expect(textOf(pipit, 'settings-card')).toContain('Plug gap 0.6\u00a0mm');
    expect(textOf(finch, 'settings-card')).toContain('The altitude of its place is not recorded');
  });
  test('the ride log has the last rides in the unit of the clock, then room', () => {
    const text = textOf(finch, 'ride-log');
    expect(text).toMatch(/14\u00a0March\u00a02026 \| 18\u2009?\u202f?230 \| 18\u2009?\u202f?262 \| 0\.8\u00a0l/);
    expect(text).toContain('Out, km');
    expect(text).toContain('grid of 10');
  });
  test('the running-in card speaks of its own stroke', () => {
    expect(textOf(pipit, 'running-in')).toContain('half throttle at most');
    expect(textOf(tern, 'running-in')).toContain('half of the highest revs');
    expect(textOf(tern, 'running-in')).not.toContain('half throttle at most');
    expect(textOf(pipit, 'running-in')).toMatch(/Cylinder head nuts, cold: tighten \| 500/);
  });
  test('parts that keep a hold point held stand before the others', () => {
    const text = textOf(pipit, 'parts-to-get');
    expect(text).toContain('“Before the engine is turned at all” will be held once it is begun');
    expect(text.indexOf('exhaust port gasket')).toBeLessThan(text.indexOf('spark plugs'));
    expect(text.indexOf('ring set')).toBeLessThan(text.indexOf('spark plugs'));
  });
});
