// `left: 2,5 bar` in braces: YAML ends the value at the comma, and takes `5 bar` for a key of its own.
import type { Tree } from '../../source/tree.ts';
import { refuse, type Desk, type Spot } from './desk.ts';

type Branch = { readonly [key: string]: Tree };

/** Before three digits the comma may have stood for thousands; with quotes alone it would be refused again. */
function meant(begun: string, rest: string): string {
  if (!/^[-+−]?[1-9]\d{0,2}$/u.test(begun) || !/^\d{3}(?:\s|$)/u.test(rest))
    return `${begun}.${rest}, or put it in quotes`;
  return `${begun} ${rest} or ${begun}.${rest}, whichever is meant`;
}

const none: ReadonlySet<string> = new Set();

/** Refuses a number that was cut in two, once; gives the two keys that are left of it, neither of which is to be read. */
export function cutAtComma(tree: Branch, spot: Spot | undefined, desk: Desk): ReadonlySet<string> {
  const rest = Object.keys(tree).find((key) => tree[key] === null && /^\d+(?:\s|$)/u.test(key));
  if (rest === undefined) return none;
  const cut = Object.entries(tree).find(
    (entry): entry is [string, string] => typeof entry[1] === 'string' && /^[-+−]?\d+$/u.test(entry[1]),
  );
  if (cut === undefined) return none;
  const [key, begun] = cut;
  const message = `“${begun},${rest}” is cut in two at its comma.`;
  const hint = `In braces a comma ends the value: write ${meant(begun, rest)}.`;
  refuse(desk, { up: spot, key }, 'number-ambiguous', message, hint);
  return new Set([key, rest]);
}
