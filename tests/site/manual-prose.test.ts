// The manual is set as paragraphs when the program is compiled: what is kept as JSON has to be what setting it gives.
import { expect, it } from 'vitest';
import { manualProse } from '../../src/compose/manual-prose.ts';
import { readManual } from '../../src/command/manual.ts';
import { manualParts } from '../../src/views/wording/manual-parts.ts';

const parts = [...readManual().content.value.pages].flatMap(([id, { body }]) => manualParts(id, body));

it('has a file of its own for each part, by which the compiled program finds it', () => {
  expect(parts.length).toBeGreaterThan(5);
  expect(new Set(parts.map(({ file }) => file)).size).toBe(parts.length);
});

it('loses nothing as JSON', () => {
  for (const part of parts) {
    const set = manualProse(part);
    expect(set.length).toBeGreaterThan(0);
    expect(JSON.parse(JSON.stringify(set))).toStrictEqual(set);
  }
});
