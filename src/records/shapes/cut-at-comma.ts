// `left: 2,5 bar` in braces: YAML ends the value at the comma, and takes `5 bar` for a key of its own.
import type { Tree } from '../../source/tree.ts';
import { refuse, type Desk, type Spot } from './desk.ts';

type Branch = { readonly [key: string]: Tree };

/** Refuses a number that was cut in two, once; gives the two keys that are left of it, neither of which is to be read. */
export function cutAtComma(tree: Branch, spot: Spot | undefined, desk: Desk): ReadonlySet<string> {
  const keys = Object.keys(tree);
  const rest = keys.find((key) => /^\d+(?:\s|$)/u.test(key) && tree[key] === null);
  if (rest === undefined) return new Set();
  const key = keys.find((one) => {
    const value = tree[one];
    return typeof value === 'string' && /^[-+−]?\d+$/u.test(value);
  });
  if (key === undefined) return new Set();
  const begun = String(tree[key]);
  const message = `“${begun},${rest}” is cut in two at its comma.`;
  const hint = `In braces a comma ends the value: write ${begun}.${rest}, or put it in quotes.`;
  refuse(desk, { up: spot, key }, 'number-ambiguous', message, hint);
  return new Set([key, rest]);
}
