// Whether a line is asked for by the date of first use, as far as that date is known; what is not known is asked for, and says so.
import type { FormLine } from '../../records/content-model.ts';

type Span = Pick<FormLine, 'firstUsedFrom' | 'firstUsedBefore'>;

/** `1969-05` may be any day of that month, `1969` any day of that year; other words may be any day at all. */
function daysOf(firstUse: string | undefined): { readonly earliest: string; readonly latest: string } | undefined {
  const found = /^(\d{4})(?:-(\d{2}))?(?:-(\d{2}))?$/.exec(firstUse ?? '');
  if (found === null) return undefined;
  const [, year = '', month, day] = found;
  return {
    earliest: [year, month ?? '01', day ?? '01'].join('-'),
    latest: [year, month ?? '12', day ?? '31'].join('-'),
  };
}

/** `yes`, `no`, or `not known` where the date of first use is not known closely enough. */
export function askedByDate(line: Span, firstUse: string | undefined): 'yes' | 'no' | 'not known' {
  const { firstUsedFrom: from, firstUsedBefore: before } = line;
  if (from === undefined && before === undefined) return 'yes';
  const days = daysOf(firstUse);
  if (days === undefined) return 'not known';
  const surelyOut = (from !== undefined && days.latest < from) || (before !== undefined && days.earliest >= before);
  if (surelyOut) return 'no';
  const surelyIn = (from === undefined || days.earliest >= from) && (before === undefined || days.latest < before);
  return surelyIn ? 'yes' : 'not known';
}
