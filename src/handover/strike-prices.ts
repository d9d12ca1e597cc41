// Prices and amounts, where the owner lets none go: in their keys, and as they are written in words.
import { isBranch, isList, type Branch, type Tree } from '../source/tree.ts';
import type { Place } from '../problem/problem.ts';
import type { Strike } from './strike-record.ts';

/**
 * Prices in the keys of a record. What was paid besides parts is one list, and goes as one; its amounts, like every other, are
 * looked for everywhere.
 */
export function strikePrices(tree: Branch, file: string): readonly Strike[] {
  if (!file.startsWith('jobs/')) return [];
  const found: Strike[] = [];
  const visit = (inner: Tree, path: Place['path'], isPrice: boolean): void => {
    const key = String(path.at(-1) ?? '');
    const at = { file, path };
    if (path.length === 1 && key === 'money') found.push(withoutAmounts(at, 'what was paid', 'none'));
    else if (key === 'core') found.push(withoutAmounts(at, 'a deposit', '"?"'));
    if (typeof inner === 'string') {
      const priced = isPrice ? amountKeys.has(key) : key === 'price' || key === 'worth';
      if (priced && inner !== '?')
        found.push({ ...withoutAmounts(at, 'a price', '"?"'), text: inner, hunt: /[1-9]/u.test(inner) });
      return;
    }
    const inside = isPrice || key === 'core' || (path.length === 1 && key === 'money');
    if (isList(inner)) inner.forEach((one, index) => visit(one, [...path, index], inside));
    else if (isBranch(inner)) for (const [name, one] of Object.entries(inner)) visit(one, [...path, name], inside);
  };
  visit(tree, [], false);
  return found;
}

const amountKeys = new Set(['paid', 'refund', 'deposit', 'deposit back']);

function withoutAmounts(at: Place, what: string, mark: string): Strike {
  return { what, text: '', at, by: `{value: ${mark}, private: yes}`, hunt: false };
}

/** An amount of money in running words; `codes` are the currencies of the machine. */
export function amountPattern(codes: readonly string[]): RegExp {
  const names = [...new Set(['GBP', 'EUR', 'USD', ...codes])].filter((one) => /^[A-Z]{3}$/u.test(one)).join('|');
  return new RegExp(
    String.raw`[£€$¥]\s?\p{N}[\p{N}.,]*|(?<![\p{L}\p{N}])\p{N}[\p{N}., ]*\s?(?:${names}|[£€$¥])(?![\p{L}\p{N}])`,
    'gu',
  );
}
