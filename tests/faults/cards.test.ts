// The pattern cards: the named causes lead their group, and a named test is among the first three that are offered.
import { describe, expect, test } from 'vitest';
import { diagnose } from '../../src/book/faults/diagnosis.ts';
import { found, machineFor, named } from './cards.ts';
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
