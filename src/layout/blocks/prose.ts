// Running text: paragraphs, sub-headings, lists, quotations, preformatted lines, small tables, photos.
import type { Paragraph, ProseBlock } from '../../sheet/sheet.ts';
import type { Tag } from '../placed.ts';
import { half, leading, small, text as textType, thin } from '../scale.ts';
import { setLines, type SetLine } from '../set-line.ts';
import { linesOf, under, type Setting } from '../setting.ts';
import { firstSpaced, spaced, type Slab } from '../slab.ts';
import { tableSlabs } from '../table/table.ts';
import { headingRole } from './heading.ts';
import { photoSlabs } from './photo.ts';

export function* proseSlabs(block: ProseBlock, setting: Setting): Generator<Slab> {
  for (const paragraph of block.paragraphs) yield* paragraphSlabs(paragraph, setting);
}

function* paragraphSlabs(paragraph: Paragraph, setting: Setting): Generator<Slab> {
  switch (paragraph.kind) {
    case 'paragraph':
      yield* spaced(
        lineSlabs(linesOf(paragraph.text, textType, setting.width, setting), setting, under(setting.section, 'P')),
        half,
      );
      return;
    case 'heading': {
      const tag = under(setting.section, headingRole(setting.depth + paragraph.level - 2));
      const lines = linesOf(paragraph.text, textType, setting.width, setting, 'strong');
      yield* spaced(
        lineSlabs(lines, setting, tag).map((slab) => ({ ...slab, keep: true })),
        leading,
      );
      return;
    }
    case 'list':
      yield* listSlabs(paragraph, setting);
      return;
    case 'quote':
      yield* quoteSlabs(paragraph.paragraphs, setting);
      return;
    case 'code':
      yield* codeSlabs(paragraph.text, setting);
      return;
    case 'table':
      yield* proseTable(paragraph, setting);
      return;
    case 'photo':
      yield* photoSlabs([paragraph.photo], setting);
  }
}

/** Lines as slabs: neither the first nor the last line of a paragraph stands alone on a page. */
export function lineSlabs(lines: readonly SetLine[], setting: Setting, tag: Tag): readonly Slab[] {
  return lines.map((line, index) => ({
    height: line.type.leading,
    keep: lines.length > 1 && (index === 0 || index === lines.length - 2),
    draw: (x, y, out) => void setLines([line], { x, y, width: setting.width, tag }, out),
  }));
}

const indent = 16;

/** White between the entries of a list. */
const between = 2.5;

function* listSlabs(list: Extract<Paragraph, { kind: 'list' }>, setting: Setting): Generator<Slab> {
  const whole = under(setting.section, 'L');
  const inner: Setting = { ...setting, width: Math.max(60, setting.width - indent) };
  let first = true;
  for (const [index, item] of list.items.entries()) {
    const entry = under(whole, 'LI');
    const label = under(entry, 'Lbl');
    const marker = linesOf(list.ordered ? String(index + 1) + '.' : '–', textType, indent * 2, setting);
    let start = true;
    for (const slab of item.flatMap((paragraph) => [
      ...paragraphSlabs(paragraph, { ...inner, section: under(entry, 'LBody') }),
    ])) {
      const marked = start;
      const air = start && !first ? between : 0;
      const before = start ? (first ? half : 0) : (slab.before ?? 0) / 2;
      yield {
        ...slab,
        before,
        height: slab.height + air,
        draw: (x, y, out) => {
          if (marked) setLines(marker, { x, y: y + air, width: indent, tag: label }, out);
          slab.draw(x + indent, y + air, out);
        },
      };
      start = false;
      first = false;
    }
  }
}

function* quoteSlabs(paragraphs: readonly Paragraph[], setting: Setting): Generator<Slab> {
  const section = under(setting.section, 'BlockQuote');
  const inner: Setting = { ...setting, section, width: Math.max(60, setting.width - indent) };
  for (const slab of paragraphs.flatMap((paragraph) => [...paragraphSlabs(paragraph, inner)])) {
    yield {
      ...slab,
      draw: (x, y, out) => {
        out.push({ kind: 'line', x1: x + 4, y1: y, x2: x + 4, y2: y + slab.height, weight: thin * 2 });
        slab.draw(x + indent, y, out);
      },
    };
  }
}

/** Preformatted lines keep their line ends and their leading spaces. */
function* codeSlabs(code: string, setting: Setting): Generator<Slab> {
  const tag = under(setting.section, 'P');
  const lines = code
    .replace(/\n$/, '')
    .split('\n')
    .flatMap((line) => {
      const kept = line.replaceAll('\t', '  ').replace(/^ | {2,}/g, (spaces) => '\u00a0'.repeat(spaces.length));
      return linesOf(kept === '' ? '\u00a0' : kept, small, setting.width - indent, setting);
    });
  const slabs = lineSlabs(lines, { ...setting, width: setting.width - indent }, tag);
  yield* spaced(
    slabs.map((slab) => ({ ...slab, draw: (x, y, out) => slab.draw(x + indent, y, out) })),
    half,
  );
}

function* proseTable(table: Extract<Paragraph, { kind: 'table' }>, setting: Setting): Generator<Slab> {
  const columns = table.head.map((head) => ({ head: headText(head), align: 'left' as const, width: 1 }));
  const rows = table.rows.map((row) => ({
    kind: 'cells' as const,
    cells: row.map((text) => ({ parts: [{ text }] })),
  }));
  const slabs = tableSlabs({ columns, rows, work: false, head: true, reads: 'table' }, setting);
  yield* firstSpaced(slabs, () => leading);
}

function headText(text: Extract<Paragraph, { kind: 'table' }>['head'][number]): string {
  return typeof text === 'string'
    ? text
    : text.map((inline) => (typeof inline === 'string' ? inline : inline.text)).join('');
}
