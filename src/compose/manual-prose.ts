// Parts of the manual as paragraphs. The compiled program has a module of its own in place of this one (see tools/packed-manual.ts).
import type { Paragraph } from '../sheet/sheet.ts';
import type { ManualPart } from '../views/wording/manual-parts.ts';
import { prose } from './prose.ts';

/** The paragraphs of one part; the manual is the program's own, so its parts are the same for every machine. */
export function manualProse({ body }: ManualPart): readonly Paragraph[] {
  return prose(body);
}
