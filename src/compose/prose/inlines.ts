// The inside of a line: plain, strong, em, code, struck, and links that are printed rather than followed.
import type { Token } from 'markdown-it';
import type { Inline, Text } from '../../sheet/sheet.ts';
import { leadOf } from './address.ts';

type Weight = 'strong' | 'em' | 'struck';

const opened: Readonly<Record<string, Weight>> = { strong_open: 'strong', em_open: 'em', s_open: 'struck' };
const closing = new Set(['strong_close', 'em_close', 's_close']);

/** The text of an inline token; one plain string where nothing is marked. */
export function inlines(children: readonly Token[]): Text {
  const made: Inline[] = [];
  const weights: Weight[] = [];
  let link: { href: string; text: string } | undefined;
  for (const token of children) {
    const weight = opened[token.type];
    if (weight !== undefined) weights.push(weight);
    else if (closing.has(token.type)) weights.pop();
    else if (token.type === 'link_open') link = { href: String(token.attrGet('href') ?? ''), text: '' };
    else if (token.type === 'link_close') {
      if (link !== undefined) made.push(...linked(link));
      link = undefined;
    } else if (link !== undefined) link.text += plainText(token);
    else made.push(inline(token, weights.at(-1)));
  }
  return tidy(made);
}

/** The words of a token without their marks. */
export function plainText(token: Token): string {
  if (token.type === 'softbreak' || token.type === 'hardbreak') return ' ';
  if (token.type !== 'image') return token.content;
  return `[${token.content}]`;
}

function inline(token: Token, weight: Weight | undefined): Inline {
  const text = plainText(token);
  if (token.type === 'code_inline') return { kind: 'code', text };
  return weight === undefined ? text : { kind: weight, text };
}

/** A web or mail address is printed after its words; a record of this binder is linked; the rest keeps only its words. */
function linked({ href, text }: { readonly href: string; readonly text: string }): readonly Inline[] {
  const lead = leadOf(href);
  if (lead.kind === 'job') return [{ kind: 'link', text, to: lead.to }];
  if (lead.kind === 'refused') return [text];
  const bare = lead.address.replace(/^mailto:/i, '');
  return text === lead.address || text === bare
    ? [{ kind: 'link', text, to: lead.address }]
    : [`${text} (`, { kind: 'link', text: bare, to: lead.address }, ')'];
}

/** Neighbouring plain pieces become one; a line of one plain piece is a plain string. */
function tidy(made: readonly Inline[]): Text {
  const joined: Inline[] = [];
  for (const piece of made) {
    const last = joined.at(-1);
    if (typeof piece === 'string' && typeof last === 'string') joined[joined.length - 1] = last + piece;
    else if (piece !== '') joined.push(piece);
  }
  const [only] = joined;
  return joined.length === 1 && typeof only === 'string' ? only : joined;
}
