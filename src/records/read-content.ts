// content/ as data: the same for every machine, read by the same machinery as the records.
import type { Outcome, Problem } from '../problem/problem.ts';
import type { SourceFile } from '../source/files.ts';
import { checkContent } from './check-content.ts';
import { givenTwice } from './check-ids.ts';
import { cautionsKind } from './content-kinds/cautions.ts';
import { faultsKind } from './content-kinds/faults.ts';
import { formsKind } from './content-kinds/forms.ts';
import { holdPointsKind } from './content-kinds/hold-points.ts';
import { orderKind } from './content-kinds/order.ts';
import { pagesKind, wordsKind } from './content-kinds/pages.ts';
import { proceduresKind } from './content-kinds/procedures.ts';
import { schedulesKind } from './content-kinds/schedules.ts';
import { sheetsKind } from './content-kinds/sheets.ts';
import type { Content } from './content-model.ts';
import { faultTables } from './fault-tables.ts';
import type { RecordKind } from './kinds/record-kind.ts';
import { readFile, type FileReading } from './read-file.ts';

interface Read<T> {
  readonly value: T;
  readonly body: string;
}

/** Reads content files; what could be read is given, with every problem. Ids that are given twice count once, first come. */
export function readContent(files: readonly SourceFile[]): Outcome<Content> {
  const problems: Problem[] = [];
  const all = <T>(kind: RecordKind<T>): readonly Read<T>[] =>
    files.filter(({ file }) => kind.matches(file)).flatMap((file) => taken(readFile(file, kind), problems));
  const values = <T>(kind: RecordKind<T>): readonly T[] => all(kind).map(({ value }) => value);
  const cautions = values(cautionsKind).flat();
  const procedures = all(proceduresKind).map(({ value: procedure, body }) => ({ ...procedure, body }));
  const value: Content = {
    cautions: byId(cautions),
    procedures: byId(procedures),
    holdPoints: values(holdPointsKind).toSorted((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1)),
    schedules: values(schedulesKind),
    faults: faultTables(values(faultsKind)),
    forms: values(formsKind),
    orders: values(orderKind),
    sheets: values(sheetsKind),
    words: values(wordsKind).flat(),
    pages: new Map(all(pagesKind).map(({ value: { page, title }, body }) => [page, { title, body }])),
  };
  const checks = value.holdPoints.flatMap((point) => point.checks);
  // Schedules are for different machines: the same work has the same id in each.
  const services = value.schedules.map((schedule) => schedule.services);
  const forms = value.forms ?? [];
  const steps = (value.orders ?? []).flatMap((order) => order.steps);
  const { causes = [], tests = [] } = value.faults ?? {};
  const formLines = forms.map((form) => form.lines);
  const named = [
    cautions,
    causes,
    tests,
    procedures,
    value.holdPoints,
    checks,
    value.sheets,
    steps,
    forms,
    ...formLines,
    ...services,
  ];
  return { value, problems: [...problems, ...named.flatMap(givenTwice), ...checkContent(value)] };
}

function taken<T>(reading: FileReading<T>, problems: Problem[]): readonly Read<T>[] {
  problems.push(...reading.problems);
  return reading.value === undefined ? [] : [{ value: reading.value, body: reading.document?.body ?? '' }];
}

function byId<T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, T> {
  const known = new Map<string, T>();
  for (const one of list) if (!known.has(one.id)) known.set(one.id, one);
  return known;
}
