// Volts lost to earth: the places of this machine, or those of the general form, each with what was read last and boxes before and after cleaning.
import { earthDrop } from '../book/wiring-readings.ts';
import type { Form } from '../records/content-model.ts';
import type { Earth } from '../records/wiring-model.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { anchor, column, heading, row, stack } from './wording/blocks.ts';
import { formNote, linesOf } from './wording/form.ts';
import { lastOfWiring } from './wording/last-of-wiring.ts';
import { ours } from './wording/ours.ts';
import type { ViewContext } from './view.ts';

/** The earths of `wiring.yaml`; `said` tells what they rest on. */
export function earthsBlocks(context: ViewContext, earths: readonly Earth[], said: Block): readonly Block[] {
  const { say } = context;
  const rows = earths.map((one): Row => {
    const unit = one.drop?.unit.symbol ?? 'V';
    const last = lastOfWiring(context, earthDrop, one.id, one.drop);
    return row([{ kind: 'strong', text: one.name }], one.on, last, ...boxes(unit, `wiring/${one.id}`, 'found'));
  });
  return stack(
    heading(2, say('Volts lost to earth, current flowing'), 'earths'),
    said,
    tableOf(context, [column(say('Place'), 5), column(say('Switched on'), 4)], rows),
  );
}

/** The places that any machine has, where its own were not written down; nothing where none is for this one. */
export function generalEarths(context: ViewContext, form: Form): readonly Block[] {
  const { say } = context;
  const rows = linesOf(context, form).map((line): Row => {
    const name: Text = [{ kind: 'strong', text: ours(context, form.at, line.text) }];
    const last = lastOfWiring(context, earthDrop, line.id, undefined);
    return row(name, last, ...boxes(line.unit ?? 'V', `form/${form.id}/${line.id}`, 'value'));
  });
  if (rows.length === 0) return [];
  return stack(
    heading(2, ours(context, form.at, form.title), anchor(form.id)),
    formNote(context, form),
    tableOf(context, [column(say('Place, switched on'), 9)], rows),
  );
}

function boxes(unit: string, id: string, found: string): readonly { box: 'write'; unit: string; id: string }[] {
  return [found, 'left'].map((name) => ({ box: 'write', unit, id: `${id}/${name}` }));
}

function tableOf({ say }: ViewContext, place: readonly ReturnType<typeof column>[], rows: readonly Row[]): Block {
  return {
    type: 'table',
    columns: [...place, column(say('Last'), 3, 'right'), column(say('Found'), 3), column(say('After cleaning'), 3)],
    rows,
    empty: '',
    use: 'work',
  };
}
