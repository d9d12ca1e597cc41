// A planned job into which something was written has begun: its state says so, and its lines that are not done say that.
import { isBranch } from '../source/tree.ts';
import { edit, linesOf, textIn, type Draft } from './draft.ts';

const asks = 'How far the job is';

/** Nothing of a planned job counts, so what was written would not either. Lines of `work` that no answer names are marked as still to do. */
export function begin(draft: Draft): void {
  const { job, tree, today } = draft;
  if (!draft.planned || (draft.edits.length === 0 && draft.doneLines.size === 0)) return;
  const blank = (key: string): { readonly id: string; readonly asks: string } => ({
    id: `${job.id}/foot/${key}`,
    asks,
  });
  if (isBranch(tree) && tree['state'] === 'planned')
    edit(
      draft,
      blank('state'),
      { kind: 'set', path: [], key: 'state', value: 'under way' },
      { was: 'planned', becomes: 'under way' },
    );
  const written = draft.edits.some((one) => one.path.length === 0 && one.key === 'date');
  if (job.date.from > today && !written)
    edit(
      draft,
      { ...blank('date'), asks: 'Date of the work' },
      { kind: 'set', path: [], key: 'date', value: today },
      { was: job.date.from, becomes: today },
    );
  for (const [index, line] of linesOf(draft, 'work')) {
    if (index >= job.work.length || draft.doneLines.has(index) || textIn(line, 'done') !== undefined) continue;
    const thing = job.work[index]?.thing ?? '';
    const at = { id: `${job.id}/${job.work[index]?.verb ?? ''}/${thing}`, asks: thing };
    edit(draft, at, { kind: 'set', path: ['work', index], key: 'done', value: 'no' }, { becomes: 'still to do' });
  }
}
