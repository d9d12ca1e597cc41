// Square codes wear the mask that the package which encodes them would choose, whatever their length.
import { create } from 'qrcode/lib/core/qrcode.js';
import { expect, test } from 'vitest';
import { squareModules } from '../../src/sheet/square-modules.ts';

/** Texts of every length that a sheet prints, in figures, letters and signs, so that all masks and many sizes come by. */
const texts = Array.from({ length: 300 }, (_, index) => {
  const words = ['1907', 'BAG 12', 'top end again, jug 3 · ', 'jobs/2026-11-21.md#tub-'];
  return (words[index % 4] ?? '').repeat(1 + Math.ceil(index / 4)).slice(0, index + 1);
});

test('modules are those that the package gives by itself', () => {
  const worn = new Set<number | undefined>();
  for (const text of texts) {
    const { modules, maskPattern } = create(text, { errorCorrectionLevel: 'M' });
    const { size, dark } = squareModules(text);
    expect(size).toBe(modules.size);
    const ours = Array.from(modules.data, (_, at) => Number(dark(Math.floor(at / size), at % size)));
    expect(ours, text).toEqual(Array.from(modules.data));
    worn.add(maskPattern);
  }
  expect(worn.size).toBe(8);
});
