// Where pages stand on the contact sheet: every page once, none over another, the first of each sheet labelled.
import { describe, expect, test } from 'vitest';
import type { PagePicture } from '../../src/tools/contact/pages.ts';
import { cell, columnsFor, contactPlan } from '../../src/tools/contact/places.ts';

const pages: readonly PagePicture[] = ['one-machine', 'another'].flatMap((machine) =>
  ['tags', 'teardown', 'wiring'].flatMap((sheet, at) =>
    Array.from({ length: at + 2 }, (_, page) => ({ machine, sheet, page: page + 1, png: new Uint8Array() })),
  ),
);

describe('the contact sheet', () => {
  const plan = contactPlan(pages);

  test('holds every page in a place of its own, inside the whole', () => {
    expect(plan.places.map(({ page }) => page)).toEqual(pages);
    const spots = plan.places.map(({ left, top }) => `${String(left)},${String(top)}`);
    expect(new Set(spots).size).toBe(pages.length);
    for (const { left, top } of plan.places) {
      expect(left % cell.width).toBe(0);
      expect(top % cell.height).toBe(0);
      expect(left + cell.width).toBeLessThanOrEqual(plan.width);
      expect(top + cell.height).toBeLessThanOrEqual(plan.height);
    }
  });

  test('labels the first page of each sheet, and names the machine with its first sheet', () => {
    const labels = plan.places.flatMap(({ label }) => label ?? []);
    expect(labels).toEqual(['one-machine: tags', 'teardown', 'wiring', 'another: tags', 'teardown', 'wiring']);
  });

  test('is nearly as wide as it is high, and never under four columns', () => {
    expect(columnsFor(1)).toBe(4);
    const columns = columnsFor(400);
    const [width, height] = [columns * cell.width, Math.ceil(400 / columns) * cell.height];
    expect(width / height).toBeGreaterThan(0.9);
    expect(width / height).toBeLessThan(1.1);
  });
});
