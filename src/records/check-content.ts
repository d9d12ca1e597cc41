// Content against itself: every caution that is named exists, and every id is given once.
import type { Problem } from '../problem/problem.ts';
import type { Content, Procedure } from './content-model.ts';
import { cautionsOfFaults, checkFaults } from './check-faults.ts';
import { checkOrder } from './check-order.ts';
import { below, unknownReference } from './reference.ts';
import { checkStepNumbers } from './step-numbers.ts';

interface Cited {
  readonly caution: string;
  readonly at: Problem['at'];
}

/** Rings in the order of work; cautions that do not exist, in procedures, hold points, fault tables, forms and sheets. */
export function checkContent(content: Content): readonly Problem[] {
  const cited = [
    ...[...content.procedures.values()].flatMap(ofProcedure),
    ...content.holdPoints.flatMap((point) => point.checks).flatMap(ofOne),
    ...cautionsOfFaults(content.faults),
    ...(content.forms ?? []).flatMap((form) => form.lines).flatMap(ofOne),
    ...content.sheets.flatMap((sheet) => sheet.views).flatMap(ofView),
  ];
  const unknown = cited
    .filter(({ caution }) => !content.cautions.has(caution))
    .map(({ caution, at }) => unknownReference(caution, at, 'caution', content.cautions.keys()));
  const numbers = [...content.procedures.values()].flatMap(checkStepNumbers);
  return [...unknown, ...numbers, ...checkOrder(content.orders ?? []), ...checkFaults(content)];
}

function ofProcedure(procedure: Procedure): readonly Cited[] {
  const { at } = procedure;
  const head = procedure.cautions.map((caution, i) => ({ caution, at: below(at, 'cautions', i) }));
  const parts = (['steps', 'assembly'] as const).flatMap((part) =>
    procedure[part].flatMap((step, i) =>
      step.cautions.map((caution, j) => ({ caution, at: below(at, part, i, 'cautions', j) })),
    ),
  );
  return [...head, ...parts];
}

function ofOne(one: { readonly caution?: string; readonly at?: Problem['at'] }): readonly Cited[] {
  if (one.caution === undefined || one.at === undefined) return [];
  return [{ caution: one.caution, at: below(one.at, 'caution') }];
}

function ofView({ view, options, at }: Content['sheets'][number]['views'][number]): readonly Cited[] {
  const caution = view === 'caution' ? options['of'] : undefined;
  if (caution === undefined) return [];
  const { atKey: _atKey, ...place } = at;
  return [{ caution, at: place }];
}
