// Where on a sheet something was written, in the sheet's own words, from the permanent id of its blank.
import type { Text } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { joined } from './blocks.ts';
import { ours } from './ours.ts';

/** A step or the line of a form, in its own words where content still has it; else the id, which says what it can. */
export function sheetPlace(context: ViewContext, blank: string): Text {
  return (
    ofStep(context, blank) ?? formLine(context, blank)?.words ?? ofHead(context, blank) ?? blank.replaceAll('/', ', ')
  );
}

/** The place in the head of a sheet; what else is written there has a key of its own. */
function ofHead({ say }: ViewContext, blank: string): Text | undefined {
  return blank === 'today/1/3' ? say('Where') : undefined;
}

function ofStep(context: ViewContext, blank: string): Text | undefined {
  const found = /^([^/]+)\/(step|assembly)-(\d+)(?:\/|-|$)/u.exec(blank);
  const procedure = context.book.content.procedures.get(found?.[1] ?? '');
  const steps = found?.[2] === 'step' ? procedure?.steps : procedure?.assembly;
  const step = steps?.[Number(found?.[3]) - 1];
  if (procedure === undefined || step === undefined) return undefined;
  return joined([ours(context, procedure.at, procedure.title), ours(context, procedure.at, step.do)], ': ');
}

export interface PlaceInForm {
  /** Title of the form and the line. */
  readonly words: Text;
  readonly line: string;
  /** Head of the tick column, where the form has several and this is the tick of one. */
  readonly grade?: string;
}

/** A tick or a blank of a form; undefined where it is none, or content has it no more. */
export function formLine(context: ViewContext, blank: string): PlaceInForm | undefined {
  const [start, id, name, beside] = blank.split('/');
  const form = start === 'form' ? context.book.content.forms?.find((one) => one.id === id) : undefined;
  const line = form?.lines.find((one) => one.id === name);
  if (form === undefined || line === undefined) return undefined;
  const text = ours(context, form.at, line.text);
  const words = joined([ours(context, form.at, form.title), text], ': ');
  if (form.ticks.length < 2) return { words, line: text };
  const grade = beside === undefined ? form.ticks[0] : form.ticks.find((one) => one === beside);
  return { words, line: text, ...(grade === undefined ? {} : { grade }) };
}
