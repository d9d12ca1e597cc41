// Markdown tokens to paragraphs: a walk that keeps a stack of what is open and knows nothing of motorcycles.
import type { Token } from 'markdown-it';
import type { Paragraph, PhotoBlock, Text } from '../../sheet/sheet.ts';
import { localPhoto } from './address.ts';
import { inlines } from './inlines.ts';

interface Walk {
  readonly tokens: readonly Token[];
  at: number;
}

/** All paragraphs of a token stream. */
export function blocksOf(tokens: readonly Token[]): readonly Paragraph[] {
  return until({ tokens, at: 0 }, undefined);
}

/** Paragraphs up to the token that closes what is open; the walk stands behind it afterwards. */
function until(walk: Walk, close: string | undefined): Paragraph[] {
  const made: Paragraph[] = [];
  while (walk.at < walk.tokens.length) {
    const token = walk.tokens[walk.at];
    walk.at += 1;
    if (token === undefined || token.type === close) break;
    made.push(...block(walk, token));
  }
  return made;
}

function block(walk: Walk, token: Token): readonly Paragraph[] {
  switch (token.type) {
    case 'paragraph_open':
      return paragraph(walk, 'paragraph_close');
    case 'heading_open':
      return [
        { kind: 'heading', level: token.tag === 'h1' || token.tag === 'h2' ? 3 : 4, text: line(walk, 'heading_close') },
      ];
    case 'bullet_list_open':
      return [{ kind: 'list', ordered: false, items: items(walk, 'bullet_list_close') }];
    case 'ordered_list_open':
      return [{ kind: 'list', ordered: true, items: items(walk, 'ordered_list_close') }];
    case 'blockquote_open':
      return [{ kind: 'quote', paragraphs: until(walk, 'blockquote_close') }];
    case 'fence':
    case 'code_block':
      return [{ kind: 'code', text: token.content.replace(/\n$/, '') }];
    case 'table_open':
      return [table(walk)];
    case 'inline':
      return [{ kind: 'paragraph', text: inlines(token.children ?? []) }];
    default:
      return [];
  }
}

/** The one line inside a paragraph, a heading or a cell. */
function line(walk: Walk, close: string): Text {
  const token = walk.tokens[walk.at];
  const text = token?.type === 'inline' ? inlines(token.children ?? []) : '';
  skip(walk, close);
  return text;
}

function skip(walk: Walk, close: string): void {
  while (walk.at < walk.tokens.length && walk.tokens[walk.at]?.type !== close) walk.at += 1;
  walk.at += 1;
}

/** A paragraph of pictures alone is photos; a picture amid words stays as its words. */
function paragraph(walk: Walk, close: string): readonly Paragraph[] {
  const children = walk.tokens[walk.at]?.children ?? [];
  const pieces = children.filter((child) => child.type !== 'softbreak' && !isEmptyText(child));
  const photos = pieces.map(photo);
  const whole = photos.filter((one) => one !== undefined);
  if (pieces.length === 0 || whole.length < pieces.length) return [{ kind: 'paragraph', text: line(walk, close) }];
  skip(walk, close);
  return whole.map((one) => ({ kind: 'photo', photo: one }));
}

function isEmptyText(token: Token): boolean {
  return token.type === 'text' && /^ *$/.test(token.content);
}

function photo(token: Token): PhotoBlock | undefined {
  if (token.type !== 'image') return undefined;
  const file = localPhoto(String(token.attrGet('src') ?? ''));
  if (file === undefined) return undefined;
  const caption = String(token.attrGet('title') ?? '') || token.content;
  return { type: 'photo', file, caption, alt: token.content || caption || file, size: 'half' };
}

function items(walk: Walk, close: string): readonly (readonly Paragraph[])[] {
  const made: (readonly Paragraph[])[] = [];
  while (walk.at < walk.tokens.length) {
    const token = walk.tokens[walk.at];
    walk.at += 1;
    if (token?.type === close) break;
    if (token?.type === 'list_item_open') made.push(until(walk, 'list_item_close'));
  }
  return made;
}

function table(walk: Walk): Paragraph {
  const rows: Text[][] = [];
  while (walk.at < walk.tokens.length) {
    const token = walk.tokens[walk.at];
    walk.at += 1;
    if (token?.type === 'table_close') break;
    if (token?.type === 'tr_open') rows.push([]);
    if (token?.type === 'th_open') rows.at(-1)?.push(line(walk, 'th_close'));
    if (token?.type === 'td_open') rows.at(-1)?.push(line(walk, 'td_close'));
  }
  const [head = [], ...body] = rows;
  return { kind: 'table', head, rows: body };
}
