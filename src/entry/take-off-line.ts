// “No” where a line of `work` says that it was done: told to take the place of what stands there, the line is taken out, or is still to be done.
import { isBranch, type Branch } from '../source/tree.ts';
import type { Blank } from './blank.ts';
import { edit, linesOf, textIn, type Draft } from './draft.ts';

/** Nothing stands in the line but what a tick writes, whatever order it is in. */
function isOurs(line: Branch, written: Branch): boolean {
  return Object.entries(line).every(([key, value]) => {
    if (key === 'done') return true;
    const own = written[key];
    if (isBranch(value) && isBranch(own)) return isOurs(value, own) && isOurs(own, value);
    return own !== undefined && value === own;
  });
}

/**
 * `written` is the line as a tick would write it. A line with a word more, such as where the part lies, is somebody's: it stays
 * and is marked as still to be done. Lines of a plan are that already, and stay as they are.
 */
export function takeOffLine(draft: Draft, blank: Blank, verb: string, written: Branch): void {
  if (!draft.instead || draft.planned) return;
  const found = linesOf(draft, 'work').findLast(
    ([, line]) => textIn(line, verb) === textIn(written, verb) && textIn(line, 'done') !== 'no',
  );
  if (found === undefined) return;
  const [index, line] = found;
  const was = `${verb} ${textIn(line, verb) ?? ''}`;
  if (isOurs(line, written))
    edit(draft, blank, { kind: 'remove', path: [], key: 'work', index }, { was, becomes: 'not done' });
  else
    edit(
      draft,
      blank,
      { kind: 'set', path: ['work', index], key: 'done', value: 'no' },
      { was, becomes: 'still to do' },
    );
}
