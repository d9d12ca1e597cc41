// Cautions by their id, in the dialect of the print; the grade is the content's and is never softened here.
import type { CautionBlock, Row } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { ours } from './ours.ts';

/** A caution of content or of the machine; undefined when there is none of that id (a problem says so elsewhere). */
export function cautionNamed(context: ViewContext, id: string): CautionBlock | undefined {
  const found = context.book.content.cautions.get(id);
  if (found === undefined) return undefined;
  return { type: 'caution', grade: found.grade, text: ours(context, found.at, found.line) };
}

/** The same as a line across a table, at the step where it counts. */
export function cautionRow(context: ViewContext, id: string): readonly Row[] {
  const found = cautionNamed(context, id);
  return found === undefined ? [] : [{ kind: 'band', grade: found.grade, text: found.text }];
}
