// SHA-256 of our own against Node's, over lengths that fill a block, overflow it by one, and lie far beyond.
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sha256 } from '../../src/source/sha256.ts';

const nodes = (text: string) => createHash('sha256').update(text).digest('hex');

test.each([0, 1, 54, 55, 56, 57, 63, 64, 65, 119, 120, 128, 1000, 70_001])('of %i letters', (length) => {
  const text = 'aé日'.repeat(length).slice(0, length);
  expect(sha256(text)).toBe(nodes(text));
});

test('of the words of the standard’s own example', () => {
  expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

test('of any text', () => {
  fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => sha256(text) === nodes(text)));
});
