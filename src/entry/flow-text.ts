// A value as YAML on one line: plain where that is read back as the same text, else in quotes.
import { isBranch, isList, type Tree } from '../source/tree.ts';

/** Letters and digits first; nothing inside that ends, opens or splits a value, in braces or out of them. */
const plain = /^[\p{L}\p{N}](?:[\p{L}\p{N}\p{M} .·/%°+()’'×½¼¾±_:;=-]*[\p{L}\p{N}\p{M}.·/%°+)’'×½¼¾_-])?$/u;

/** Words that other readers of YAML take for something else than text. */
const odd = /^(?:null|true|false|yes|no|on|off|none|y|n|~)$/iu;

const notKnown = '"?"';

/** A text as a scalar, on one line. */
export function scalarText(text: string): string {
  if (text === 'yes' || text === 'no') return text;
  return plain.test(text) && !odd.test(text) && !/:(?:\s|$)/u.test(text) ? text : quoted(text);
}

function quoted(text: string): string {
  let inside = '';
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    if (character === '"' || character === '\\') inside += `\\${character}`;
    else if (code < 0x20 || (code >= 0x7f && code < 0xa0) || code === 0x2028 || code === 0x2029)
      inside += `\\u${code.toString(16).padStart(4, '0')}`;
    else inside += character;
  }
  return `"${inside}"`;
}

/** A tree in braces and brackets, on one line; what has no value is `?`, in quotes: other readers of YAML take a bare one for the beginning of a key. */
export function flowText(tree: Tree): string {
  if (tree === null) return notKnown;
  if (typeof tree === 'string') return scalarText(tree);
  if (isList(tree)) return `[${tree.map(flowText).join(', ')}]`;
  if (!isBranch(tree)) return notKnown;
  return `{${Object.entries(tree)
    .map(([key, value]) => `${scalarText(key)}: ${flowText(value)}`)
    .join(', ')}}`;
}
