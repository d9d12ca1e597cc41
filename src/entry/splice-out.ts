// Where in the YAML text one item of a list is taken out: its own line, or its place between brackets; never a comment, and nothing that follows.
import type { Node, Pair, YAMLSeq } from 'yaml';
import { yamlPackage } from '../source/slow-parser.ts';
import type { Splice } from './splice-for.ts';

type Range = readonly [from: number, to: number];

/** The splice that leaves the list without the item; of the only one `[]` stays. Undefined where more than the item would go. */
export function spliceOut(
  yaml: string,
  pair: Pair<unknown, unknown>,
  list: YAMLSeq,
  index: number,
): Splice | undefined {
  const here = rangeOf(list.items[index]);
  if (here === undefined) return undefined;
  if (list.items.length === 1) return only(yaml, pair, list, here);
  const splice = list.flow === true ? inBrackets(list, index, here) : ofLine(yaml, here);
  if (splice === undefined) return undefined;
  return yaml.slice(splice.at, splice.at + splice.remove).includes('#') ? undefined : splice;
}

function only(yaml: string, pair: Pair<unknown, unknown>, list: YAMLSeq, here: Range): Splice | undefined {
  const whole = list.flow === true ? rangeOf(list) : afterKey(yaml, pair, here);
  if (whole === undefined || yaml.slice(whole[0], whole[1]).includes('#')) return undefined;
  return { at: whole[0], remove: whole[1] - whole[0], insert: list.flow === true ? '[]' : ' []' };
}

/** From the colon of the key to the end of the item, of a list on lines of its own. */
function afterKey(yaml: string, pair: Pair<unknown, unknown>, here: Range): Range | undefined {
  const key = rangeOf(pair.key);
  if (key === undefined) return undefined;
  const between = /^\s*:\s*-\s+$/u.exec(yaml.slice(key[1], here[0]));
  return between === null ? undefined : [yaml.indexOf(':', key[1]) + 1, here[1]];
}

/** With the comma and the room to the item after it; of the last, to the one before it. */
function inBrackets(list: YAMLSeq, index: number, here: Range): Splice | undefined {
  const next = rangeOf(list.items[index + 1]);
  if (next !== undefined) return { at: here[0], remove: next[0] - here[0], insert: '' };
  const before = rangeOf(list.items[index - 1]);
  return before === undefined ? undefined : { at: before[1], remove: here[1] - before[1], insert: '' };
}

/** The whole line, where nothing but the item stands on it. */
function ofLine(yaml: string, [from, to]: Range): Splice | undefined {
  const start = yaml.lastIndexOf('\n', from - 1) + 1;
  const end = yaml.indexOf('\n', to);
  const past = end < 0 ? yaml.length : end + 1;
  const isAlone = /^\s*-\s+$/u.test(yaml.slice(start, from)) && yaml.slice(to, past).trim() === '';
  return isAlone && !yaml.slice(from, to).includes('\n') ? { at: start, remove: past - start, insert: '' } : undefined;
}

function rangeOf(node: unknown): Range | undefined {
  if (!yamlPackage().isNode(node)) return undefined;
  const { range }: Pick<Node, 'range'> = node;
  return range === null || range === undefined ? undefined : [range[0], range[1]];
}
