// The pattern cards: the named causes lead their group, and a named test is among the first three that are offered.
import { describe, expect, test } from 'vitest';
import { diagnose } from '../../src/book/faults/diagnosis.ts';
import { found, machineFor, named, twoStroke } from './cards.ts';
import { cards } from './trade-cards.ts';

const firstThree = (result: Pick<ReturnType<typeof found>, 'next'>): readonly string[] =>
  result.next.slice(0, 3).map((one) => one.id);

describe.each(cards)('$name', (card) => {
  const result = found(card);
  test('nothing in it contradicts', () => {
    expect(result.impossible).toEqual([]);
  });
  test.each(card.causes)('%s leads its group', (id) => {
    const group = result.groups.find(({ causes }) => causes.some((one) => one.id === id));
    expect(group?.causes.slice(0, 3).map((one) => one.id)).toContain(id);
  });
});

describe.each(cards.filter((card) => card.next.length > 0))('$name', (card) => {
  test('a named test is among the first three', () => {
    expect(firstThree(found(card)).filter((id) => card.next.includes(id))).not.toEqual([]);
  });
  test('and with nothing on record either, for what was seen says that the engine is past those points', () => {
    const book = machineFor(card.features, true);
    const bare = diagnose(book, { saw: named(book, card.saw), looked: true, standing: card.ran });
    expect(firstThree(bare).filter((id) => card.next.includes(id))).not.toEqual([]);
  });
});

describe.each(cards.filter((card) => (card.not ?? []).length > 0))('$name', (card) => {
  test('nothing dear or guessed is among the first three', () => {
    expect(firstThree(found(card)).filter((id) => card.not?.includes(id))).toEqual([]);
  });
});

describe('the bowl goes on running, and it fires on priming', () => {
  const saw = ['thumb=strong', 'spark=fat', 'plug=dry', 'prime=fires-and-dies'];
  const next = (ran: 'long stored' | 'lately running', more: readonly string[]) =>
    found({ name: '', features: twoStroke, ran, saw: [...saw, ...more], causes: [], next: [] }).next.map(
      ({ id }) => id,
    );
  test.each(['long stored', 'lately running'] as const)('%s: the jets come first, and not the tap again', (ran) => {
    expect(next(ran, ['bowl=runs'])[0]).toBe('carburettor-strip');
    expect(next(ran, ['bowl=none'])[0]).toBe('fuel-flow');
    expect(next(ran, [])[0]).not.toBe('carburettor-strip');
  });
  test('a tap that then gives nothing contradicts it, and nothing is ranked', () => {
    const both = { name: '', features: twoStroke, ran: 'long stored', causes: [], next: [] } as const;
    expect(found({ ...both, saw: ['bowl=runs', 'fuel-flow=none'] }).impossible).toHaveLength(1);
  });
});
