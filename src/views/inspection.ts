// The inspection sheet: a blank for every limit and setting of this machine, beside it standard, limit, and what was read last.
import { printRange } from '../figure/print.ts';
import type { SeriesPoint } from '../book/book.ts';
import type { BlankRow, Block } from '../sheet/sheet.ts';
import type { Limit, Setting } from '../records/model.ts';
import { dayText } from './wording/day.ts';
import { expectedText } from './wording/expected.ts';
import { filled } from './wording/filled.ts';
import { instrumentName } from './wording/named.ts';
import { seriesIndex } from './wording/series-index.ts';
import { conditionText, valueText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const inspection = defineView({
  id: 'inspection',
  purpose:
    'Blanks with unit, standard, limit and last reading, for the parts named by `of`, or for all but those named by `but`.',
  needs: 'machine',
  options: ['of', 'but'],
  blocks: (context): readonly Block[] => {
    const { book, say } = context;
    const { limits, settings } = book.records.maker;
    return [
      {
        type: 'blanks',
        items: [
          ...limits.filter((one) => wanted(context, one)).flatMap((one) => limitRows(context, one)),
          ...settings
            .filter((one) => wanted(context, one) && !isMarking(one))
            .flatMap((one) => settingRows(context, one)),
        ],
        empty: say('No limit or setting is recorded for this part of the machine.'),
      },
    ];
  },
});

function words(list: string | undefined): readonly string[] {
  return (list ?? '')
    .split(',')
    .map((word) => word.trim().toLowerCase())
    .filter((word) => word !== '');
}

/** Watts are stamped on a lamp, and a ratio without a range is mixed by it: nothing is read of them with an instrument. */
function isMarking({ value, range }: Setting): boolean {
  const dimension = value.kind === 'read' ? value.written.unit.dimension : undefined;
  return dimension === 'power' || (dimension === 'ratio' && range === undefined);
}

/** A limit belongs to the part it names; only where it names none does its own name count. */
function wanted({ options }: ViewContext, one: Limit | Setting): boolean {
  const part = (one.of ?? one.name).toLowerCase();
  const named = (list: readonly string[]): boolean => list.some((word) => isNamed(part, word));
  const of = words(options['of']);
  return (of.length === 0 || named(of)) && !named(words(options['but']));
}

/** `just chain` is the chain itself, and not the timing chain. */
function isNamed(part: string, word: string): boolean {
  return word.startsWith('just ') ? part === word.slice('just '.length) : part.includes(word);
}

/** What was read last and when, `50.06 mm, 14 September 2024`; with its condition where that is not what is asked for. */
export function lastReading(point: SeriesPoint | undefined, asked: readonly string[]): string | undefined {
  const value = valueText(point?.value);
  if (point === undefined || value === undefined) return undefined;
  const condition = conditionText(point.condition);
  return [value, dayText(point.day), condition === conditionText(asked) ? '' : condition]
    .filter((text) => text !== '')
    .join(', ');
}

function limitRows(context: ViewContext, limit: Limit): readonly BlankRow[] {
  const { book, say } = context;
  const index = seriesIndex(book);
  const inForce = index.of(limit.id)?.limit ?? limit;
  const positions = limit.positions.length === 0 ? [''] : limit.positions;
  return positions.map((position) => {
    const point = index.last(limit.id, position);
    return {
      id: `inspection/${limit.id}/${position}`,
      item: limit.name,
      unit: limit.unit.symbol,
      ...filled('position', position),
      ...filled('standard', inForce.standard === undefined ? undefined : printRange(inForce.standard)),
      ...filled('limit', inForce.limit === undefined ? undefined : printRange(inForce.limit)),
      ...filled('last', lastReading(point, limit.condition)),
      // What is as it should be needs no word beside it.
      ...filled(
        'verdict',
        point?.verdict === undefined || point.verdict === 'within standard' ? undefined : say(point.verdict),
      ),
      ...filled('instrument', instrumentName(book, limit.instrument)),
      ...filled('condition', conditionText(limit.condition)),
      ...filled('expected', expectedText(context, limit.id)),
    };
  });
}

function settingRows(context: ViewContext, setting: Setting): readonly BlankRow[] {
  const { book } = context;
  const unit = setting.value.kind === 'read' ? setting.value.written.unit.symbol : (setting.range?.unit.symbol ?? '');
  const known = seriesIndex(book).of(setting.id);
  const positions = [...new Set((known?.points ?? []).map((point) => point.position))];
  return (positions.length === 0 ? [''] : positions).map((position) => ({
    id: `inspection/${setting.id}/${position}`,
    item: setting.name,
    unit,
    ...filled('position', position),
    ...filled('standard', valueText(setting.value)),
    ...filled('limit', setting.range === undefined ? undefined : printRange(setting.range)),
    ...filled('last', lastReading(seriesIndex(book).last(setting.id, position), setting.condition)),
    ...filled('condition', conditionText(setting.condition)),
    ...filled('expected', expectedText(context, setting.id)),
  }));
}
