// What stands under a series besides its table: where wear reaches the limit, the chain by both rules, the charge of the battery.
import type { Series } from '../../book/book.ts';
import { batteryFigures, chainFigures, chainLimits, wearFigures } from '../figures/series.ts';
import type { Text } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { chainLeftLines } from './chain-left.ts';
import { compressionSaid } from './compression-said.ts';
import { inlineFigure, resultText } from './figure.ts';

/** Lines of one series; none where nothing follows from it. */
export function seriesLines(context: ViewContext, series: Series): readonly Text[] {
  return [
    ...wearLines(context, series),
    ...chainLines(context, series),
    ...batteryLines(context, series),
    ...compressionSaid(context, series),
  ];
}

function wearLines({ book, say }: ViewContext, series: Series): readonly Text[] {
  const falls = series.limit?.unit.dimension === 'gauge pressure';
  return wearFigures(book, series).map((one): Text => {
    const where = one.position === '' ? '' : `${one.position}: `;
    const remark = one.remark === undefined ? '' : ` (${say(one.remark)})`;
    const link = { kind: 'figure', text: resultText(one.figure), to: `working:${one.id}` } as const;
    return [
      `${where}${say(falls ? 'falling evenly as until now, the limit is reached at' : 'worn evenly as until now, the limit is reached at')} `,
      link,
      ` ${say('of the machine')}${remark}`,
    ];
  });
}

function chainLines(context: ViewContext, series: Series): readonly Text[] {
  const { book, say } = context;
  return chainFigures(book, series).flatMap(({ id, figure }): readonly Text[] => [
    [`${say('Elongation at the last reading')}: `, inlineFigure(figure, id)],
    ...chainLimits(book).map((limit): Text => {
      const words =
        limit.rule === 'common limit'
          ? say('2 %, common motorcycle practice (no standard), is reached at')
          : say('3 %, or 200/N % above 66 teeth, the industrial rule (ANSI practice), is reached at');
      return [`${words} `, inlineFigure(limit.figure, limit.id)];
    }),
    say('The maker’s limit goes before both.'),
    ...chainLeftLines(context),
  ]);
}

function batteryLines({ book, say }: ViewContext, series: Series): readonly Text[] {
  return batteryFigures(book, series).map(({ id, figure }): Text => [
    `${say('Charge by the last reading')}: `,
    { kind: 'figure', text: resultText(figure), to: `working:${id}` },
    `, ${say('if it had rested for hours')}`,
  ]);
}
