// The reference of all keys, as a page of the manual: made from the descriptions that the readers use, so it cannot go out of date.
import { contentKinds } from './content-kinds/list.ts';
import { recordKinds } from './kinds/list.ts';
import type { ToldKind } from './kinds/record-kind.ts';
import type { Told, ToldField } from './shapes/shape.ts';

/** The page `fields` in Markdown, front matter and all. */
export function fieldReference(): string {
  const head = ['---', 'page: fields', 'title: Every key', '---', '', '# Every key', ''];
  const note = 'Keys in **bold** must be there; all others may be left out. A key below another belongs inside it.';
  return [...head, note, '', ...[...recordKinds, ...contentKinds].flatMap(section)].join('\n');
}

function section(kind: ToldKind): readonly string[] {
  const rows = rowsOf(kind.shape.told, 0);
  const table = ['| key | what it says | how it is written |', '| --- | --- | --- |', ...rows];
  return [`## ${kind.files}`, '', kind.purpose, '', ...table, ''];
}

function rowsOf(told: Told, depth: number): readonly string[] {
  if (told.kind === 'list' || told.kind === 'map') return rowsOf(told.of, depth);
  if (told.kind === 'either') return told.of.flatMap((one) => rowsOf(one, depth));
  if (told.kind !== 'record') return [];
  return told.fields.flatMap((field) => [row(field, depth), ...rowsOf(field.value, depth + 1)]);
}

function row({ key, needed, says, example, value }: ToldField, depth: number): string {
  const name = needed ? `**${key}**` : key;
  const way = '› '.repeat(depth);
  const written = example ?? (value.kind === 'text' ? value.example : undefined);
  const shown = written === undefined || value.kind === 'choice' ? '' : `: \`${cell(written)}\``;
  return `| ${way}${name} | ${cell(says)} | ${cell(writtenAs(value))}${shown} |`;
}

function writtenAs(told: Told): string {
  switch (told.kind) {
    case 'text':
      return told.written;
    case 'choice':
      return told.words.join(' · ');
    case 'list':
      return `a list of ${plural(told.of)}`;
    case 'map':
      return `keys (${told.keys}), each with ${writtenAs(told.of)}`;
    case 'either':
      return [...new Set(told.of.map(writtenAs))].join('; or ');
    case 'record':
      return 'keys, as below';
  }
}

function plural(told: Told): string {
  return told.kind === 'record' || told.kind === 'either' ? 'entries, as below' : writtenAs(told);
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}
