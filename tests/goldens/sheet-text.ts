// A sheet as plain text, block by block: for goldens that a person can read and compare.
import type { Block, Cell, Inline, Paragraph, Row, Sheet, Text } from '../../src/sheet/sheet.ts';

/** Head, what was left out, and every block. */
export function sheetText(sheet: Sheet): string {
  const head = [
    `${sheet.code}  ${sheet.title}`,
    `${sheet.machine}  …${sheet.frame}  records of ${sheet.recordsDate}  ${sheet.paper}, bound ${sheet.binding}, foot ${sheet.foot}`,
    `square code: ${sheet.squareCode ?? ''}${sheet.continues === undefined ? '' : `  continues: ${sheet.continues}`}`,
    ...sheet.leftOut.map((line) => `! ${line}`),
  ];
  return `${[...head, ...sheet.blocks.map(blockText)].join('\n\n')}\n`;
}

/** One block. */
export function blockText(block: Block): string {
  switch (block.type) {
    case 'heading':
      return `${'#'.repeat(block.level)} ${text(block.text)}  {${block.id}}`;
    case 'prose':
      return block.paragraphs.map((one) => paragraphText(one, '')).join('\n');
    case 'facts':
      return block.facts.map((one) => `${one.name}: ${text(one.value)}${one.note === undefined ? '' : ` (${text(one.note)})`}`).join('\n');
    case 'table':
      return tableText(block.caption, block.columns.map((one) => one.head), block.rows, `${block.use}; empty: ${block.empty}`);
    case 'checklist':
      return block.items.map(itemText).join('\n');
    case 'blanks':
      return block.items.length === 0 ? `(${block.empty})` : block.items.map(blankText).join('\n');
    case 'caution':
      return `${block.grade}: ${block.text}`;
    case 'plot':
      return [
        `plot ${block.title}: ${block.description}`,
        ...block.series.map((one) => `  ${one.name} (${one.mark}, ${one.line}): ${one.points.map((point) => point.label ?? '').join(' → ')}`),
        ...block.limits.map((one) => `  limit ${one.name}`),
      ].join('\n');
    case 'drawing':
      return [
        `drawing ${block.title}: ${block.description}`,
        `  ${whole(block.size.width)} × ${whole(block.size.height)} mm`,
        ...block.marks.flatMap((one) => (one.kind === 'label' ? [`  at ${whole(one.x)}, ${whole(one.y)}: ${one.text}`] : [])),
        ...block.marks.flatMap((one) => (one.kind === 'circle' ? [`  hole at ${whole(one.x)}, ${whole(one.y)}`] : [])),
      ].join('\n');
    case 'photo':
      return `photo ${block.file}: ${text(block.caption)}`;
    case 'cards':
      return block.cards.map((card) => [`┌ ${card.title}`, ...card.lines.map((line) => `│ ${text(line)}`), `└ ${card.foot ?? ''}`].join('\n')).join('\n');
    case 'grid':
      return `grid of ${String(block.rows)}: ${block.columns.map((one) => one.head).join(' | ')}${block.caption === undefined ? '' : ` (${block.caption})`}`;
    case 'signature':
      return block.lines.map((one) => `${one.role}: ________`).join('\n');
    case 'break':
      return `--- ${block.to} ---`;
    case 'code':
      return `square code ${block.text}: ${block.caption}`;
  }
}

/** Millimetres of a drawing, as near as a golden needs them; the geometry has a test of its own. */
function whole(millimetres: number): string {
  return String(Math.round(millimetres));
}

/** A line with its links and figures as words. */
export function text(of: Text | undefined): string {
  if (of === undefined) return '';
  return typeof of === 'string' ? of : of.map(inlineText).join('');
}

function inlineText(piece: Inline): string {
  if (typeof piece === 'string') return piece;
  if (piece.kind === 'struck') return `~~${piece.text}~~`;
  if (piece.kind === 'figure') return `${piece.text}${piece.to === undefined ? '' : ` <${piece.to}>`}${piece.mark === undefined ? '' : ` [${piece.mark}]`}`;
  return piece.text;
}

function paragraphText(one: Paragraph, indent: string): string {
  switch (one.kind) {
    case 'paragraph':
    case 'heading':
      return `${indent}${text(one.text)}`;
    case 'list':
      return one.items.map((item) => item.map((inner, index) => paragraphText(inner, `${indent}${index === 0 ? '- ' : '  '}`)).join('\n')).join('\n');
    case 'quote':
      return one.paragraphs.map((inner) => paragraphText(inner, `${indent}> `)).join('\n');
    case 'code':
      return one.text;
    case 'table':
      return [one.head, ...one.rows].map((row) => row.map(text).join(' | ')).join('\n');
    case 'photo':
      return blockText(one.photo);
  }
}

function cellText(cell: Cell): string {
  const box = cell.box === undefined ? '' : { tick: cell.done === true ? '[x]' : '[ ]', write: '[____]', line: '_____' }[cell.box];
  return [box, text(cell.text), cell.unit ?? ''].filter((piece) => piece !== '').join(' ');
}

function rowText(row: Row): string {
  if (row.kind === 'band') return `== ${row.grade === undefined ? '' : `${row.grade}: `}${text(row.text)}`;
  return row.cells.map(cellText).join(' | ');
}

function tableText(caption: string | undefined, heads: readonly string[], rows: readonly Row[], note: string): string {
  const lines = rows.length === 0 ? [`(${note})`] : rows.map(rowText);
  return [...(caption === undefined ? [] : [caption]), heads.join(' | '), ...lines].join('\n');
}

function itemText(item: Extract<Block, { type: 'checklist' }>['items'][number]): string {
  return [
    ...(item.caution === undefined ? [] : [`${item.caution.grade}: ${item.caution.text}`]),
    `${item.done === true ? '[x]' : '[ ]'} ${text(item.text)}${item.blank === undefined ? '' : ` [____] ${item.blank.unit}`}`,
    ...(item.why === undefined ? [] : [`    why: ${text(item.why)}`]),
    ...(item.state === undefined ? [] : [`    ${text(item.state)}`]),
  ].join('\n');
}

function blankText(one: Extract<Block, { type: 'blanks' }>['items'][number]): string {
  const beside = [
    ['standard', one.standard],
    ['limit', one.limit],
    ['last', one.last],
    ['found', one.found],
    ['left', one.left],
    ['expect', one.expected],
    ['verdict', one.verdict],
    ['instrument', one.instrument],
    ['condition', one.condition],
  ].flatMap(([name, value]) => (value === undefined ? [] : [`${name ?? ''} ${value}`]));
  return `${text(one.item)}${one.position === undefined ? '' : `, ${one.position}`}: [____] ${one.unit}  ${beside.join('; ')}  {${one.id}}`;
}
