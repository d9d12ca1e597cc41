// The pattern cards: the named causes lead their group, and a named test is among the first three that are offered.
import { describe, expect, test } from 'vitest';
import { diagnose } from '../../src/book/faults/diagnosis.ts';
import { found, machineFor, named } from './cards.ts';
import { cards } from './trade-cards.ts';

describe.each(cards)('$name', (card) => {
  const result = found(card);
  test('nothing in it contradicts', () => {
    expect(result.impossible).toEqual([]);
  });
  test.each(card.causes)('%s leads its group', (id) => {
    const group = result.groups.find(({ causes }) => causes.some((one) => one.id === id));
    expect(group?.causes.slice(0, 3).map((one) => one.id)).toContain(id);
  });
  test.runIf(card.next.length > 0)('a named test is among the first three', () => {
    const first = result.next.slice(0, 3).map((one) => one.id);
    expect(first.filter((id) => card.next.includes(id))).not.toEqual([]);
  });
  test.runIf(card.next.length > 0)(
    'and with nothing on record either, for what was seen says that the engine is past those points',
    () => {
      const book = machineFor(card.features, true);
      const first = diagnose(book, { saw: named(book, card.saw), looked: true, standing: card.ran }).next.slice(0, 3);
      expect(first.map((one) => one.id).filter((id) => card.next.includes(id))).not.toEqual([]);
    },
  );
  test.runIf((card.not ?? []).length > 0)('nothing dear or guessed is among them', () => {
    const first = result.next.slice(0, 3).map((one) => one.id);
    expect(first.filter((id) => card.not?.includes(id))).toEqual([]);
  });
});
