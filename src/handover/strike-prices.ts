// Prices and amounts, where the owner lets none go: in their keys, and as they are written in words.
import { isBranch, isList, type Branch, type Tree } from '../source/tree.ts';
import type { Place } from '../problem/problem.ts';
import type { Strike } from './strike-record.ts';

const priceKeys = new Set(['price', 'core']);

/** Prices in the keys of a record. What was paid besides parts is one list, and goes as one. */
export function strikePrices(tree: Branch, file: string): readonly Strike[] {
  const found: Strike[] = [];
  const visit = (inner: Tree, path: Place['path']): void => {
    const key = String(path.at(-1) ?? '');
    if (path.length === 1 && key === 'money') {
      found.push({
        what: 'what was paid',
        text: '',
        at: { file, path },
        by: '{value: none, private: yes}',
        hunt: false,
      });
    } else if (priceKeys.has(key) && inner !== '?' && inner !== null) {
      const text = typeof inner === 'string' ? inner : '';
      found.push({ what: 'a price', text, at: { file, path }, by: '{value: "?", private: yes}', hunt: false });
    } else if (isList(inner)) inner.forEach((one, index) => visit(one, [...path, index]));
    else if (isBranch(inner)) for (const [name, one] of Object.entries(inner)) visit(one, [...path, name]);
  };
  if (file.startsWith('jobs/')) visit(tree, []);
  return found;
}

/** An amount of money in running words; `codes` are the currencies of the machine. */
export function amountPattern(codes: readonly string[]): RegExp {
  const names = [...new Set(['GBP', 'EUR', 'USD', ...codes])].filter((one) => /^[A-Z]{3}$/u.test(one)).join('|');
  return new RegExp(
    String.raw`[£€$¥]\s?\p{N}[\p{N}.,]*|(?<![\p{L}\p{N}])\p{N}[\p{N}., ]*\s?(?:${names}|[£€$¥])(?![\p{L}\p{N}])`,
    'gu',
  );
}
