// The part that another one took the place of, and what became of it: kept somewhere to go back one day, or gone.
import type { PartEntry } from '../../records/model.ts';
import type { ViewContext } from '../view.ts';

type Say = ViewContext['say'];

/** It is said that the old part is gone, which is not the same as nobody having said where it is. */
const gone = 'no';

/** Is the part that this one took the place of kept, by its line. */
export function isKept({ originalKept }: PartEntry): boolean {
  return originalKept !== undefined && originalKept !== gone;
}

/** `tub 2`, `not kept`; undefined where nobody said it. */
export function keptWhere(say: Say, { originalKept }: PartEntry): string | undefined {
  return originalKept === gone ? say('not kept') : originalKept;
}

/** `instead of the first speedometer, original kept: tub 2`; undefined where the line speaks of no older part. */
export function insteadText(say: Say, part: PartEntry): string | undefined {
  const where = keptWhere(say, part);
  const pieces = [
    part.insteadOf === undefined ? undefined : `${say('instead of')} ${part.insteadOf}`,
    where === undefined
      ? undefined
      : isKept(part)
        ? `${say('original kept')}: ${where}`
        : `${say('original')} ${where}`,
  ];
  const said = pieces.filter((piece) => piece !== undefined);
  return said.length === 0 ? undefined : said.join(', ');
}
