// What a reading is likely to show, to stand beside its blank where a calculation says it.
import { printFigure } from '../../figure/print.ts';
import { crankingBand } from '../figures/engine.ts';
import { chargeScale } from '../figures/charge-scale.ts';
import type { ViewContext } from '../view.ts';
import { resultText } from './figure.ts';

/** In words, for a limit or a setting by its id; nothing where nothing is known. */
export function expectedText({ book, say }: ViewContext, id: string): string | undefined {
  if (id === 'battery-volts') {
    const points = chargeScale(book).map(({ charge, volts }) => `${printFigure(volts)} ${say('at')} ${charge}`);
    return points.length === 0 ? undefined : points.join(', ');
  }
  if (id !== 'compression') return undefined;
  const [band] = crankingBand(book);
  if (band === undefined) return undefined;
  const most = book.records.machine.geometry.compressionRatio?.from === 'full stroke';
  const text = `${resultText(band.figure)} ${say('without any leak')}`;
  return most ? `${text}, ${say('from the full-stroke ratio: less in truth')}` : text;
}
