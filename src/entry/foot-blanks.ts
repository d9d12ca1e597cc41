// The foot of a job sheet as blanks: how it was left, what comes next, whose hand, which day.
import type { Sheet } from '../sheet/sheet.ts';
import type { Blank } from './blank.ts';

const fields = [
  ['state-left-in', 'State left in'],
  ['next', 'What comes next'],
  ['hand', 'Hand'],
  ['date', 'Date of the work'],
] as const;

/** `odometer`, `time` and `state` are not printed: they are asked when a sheet is typed in. */
export type FootField = (typeof fields)[number][0] | 'odometer' | 'time' | 'state';

/** Id of a field of the foot. */
export function footId(job: string, field: FootField): string {
  return `${job}/foot/${field}`;
}

/** None on a sheet without a foot, or of a sheet that no record keeps. */
export function footBlanks(sheet: Sheet): readonly Blank[] {
  const { job } = sheet;
  if (sheet.foot === 'none' || job === undefined) return [];
  return fields.map(([field, asks]) => ({ id: footId(job, field), kind: 'text', asks, singly: false }));
}

/** Without day and hand at the head of a sheet of the machine, where the foot asks for them as well. */
export function withoutTwice(blanks: readonly Blank[]): readonly Blank[] {
  const foot = blanks.some(({ id }) => /\/foot\/(?:hand|date)$/u.test(id));
  return foot ? blanks.filter(({ id }) => !/^today\/1\/[14]$/u.test(id)) : blanks;
}
