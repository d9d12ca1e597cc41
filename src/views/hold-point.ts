// One hold point: held, because, or clear on the records; each check with its reason and what proved or undid it. Never a verdict on safety.
import { askedUnit } from '../book/asked-unit.ts';
import type { CheckState, HoldState } from '../book/book.ts';
import { withNameOfId } from '../book/own-words.ts';
import type { Block, ChecklistBlock, Inline, Text } from '../sheet/sheet.ts';
import { heading, joined, paragraphs, stack } from './wording/blocks.ts';
import { cautionNamed } from './wording/caution.ts';
import { countOf } from './wording/count.ts';
import { dayText, withDates } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const holdPoint = defineView({
  id: 'hold-point',
  purpose: 'The checks of one hold point, what proves each, and whether it is held.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const hold = context.book.holds.find((one) => one.point.id === context.options['of']);
    return hold === undefined ? [] : pointBlocks(context, hold);
  },
});

/** Blocks of one hold point; also used where all of them stand on one page. */
export function pointBlocks(context: ViewContext, hold: HoldState): readonly Block[] {
  const { say } = context;
  const asked = hold.checks.filter((check) => check.state !== 'not for this machine');
  const list: ChecklistBlock = {
    type: 'checklist',
    items: asked.map((check, index) => item(context, hold, check, isFirst(asked, index))),
  };
  return stack(
    heading(2, ours(context, hold.point.at, hold.point.title), hold.point.id),
    paragraphs([
      { kind: 'strong', text: standing(context, hold, asked) },
      ` ${say('The person at the machine decides.')}`,
    ]),
    list,
  );
}

/** Why a point is held, or that the records speak against nothing; a record that could not be read may have undone anything. */
function standing({ book, say }: ViewContext, hold: HoldState, asked: readonly CheckState[]): string {
  if (hold.clear) return say('Clear on the records.');
  if (hold.released !== undefined) return `${releasedText(say, hold.released)}. ${say('Not clear on the records.')}`;
  const open = asked.filter((check) => check.state === 'not proved' || check.state === 'undone');
  const undone = open.filter((check) => check.undoneBy !== undefined).length;
  const reasons = [
    ...(open.length === 0 ? [] : [countOf(open.length, say('check is not proved'), say('checks are not proved'))]),
    ...undoneWords(say, undone, open.length),
    ...book.records.unread.map((one) => `${one.file} ${say('could not be read')}`),
  ];
  return `${say('Held, because')} ${reasons.join(', ')}.`;
}

/** How many of the open checks were proved once and undone by work; all of them in a word. */
function undoneWords(say: ViewContext['say'], undone: number, open: number): readonly string[] {
  if (undone === 0) return [];
  if (undone === open) return [say(open === 1 ? 'undone by later work' : 'all of them undone by later work')];
  return [countOf(undone, say('of them undone by later work'), say('of them undone by later work'))];
}

/** A caution stands once in a list, at the first check that needs it. */
function isFirst(checks: readonly CheckState[], index: number): boolean {
  const caution = checks[index]?.check.caution;
  return checks.findIndex((one) => one.check.caution === caution) === index;
}

function item(
  context: ViewContext,
  hold: HoldState,
  state: CheckState,
  cautioned: boolean,
): ChecklistBlock['items'][number] {
  const { check } = state;
  const caution = check.caution === undefined || !cautioned ? undefined : cautionNamed(context, check.caution);
  return {
    id: `${hold.point.id}/${check.id}`,
    text: ours(context, check.at, check.text),
    // The id, so that the check can be ticked in a record.
    why: [`${ours(context, check.at, check.why)} (`, { kind: 'code', text: check.id }, ')'],
    state: stateText(context, state),
    singly: true,
    ...(state.state === 'proved' ? { done: true } : {}),
    ...(check.unit === undefined ? {} : { blank: { unit: askedUnit(context.book.records.machine.units, check.unit) } }),
    ...(caution === undefined ? {} : { caution: { grade: caution.grade, text: caution.text } }),
  };
}

/** Let pass by a person: who, why, until when; never the same word as proved or clear. */
function releasedText(say: ViewContext['say'], { release }: NonNullable<CheckState['released']>): string {
  const until =
    release.until === undefined ? say('until it is taken back') : `${say('until')} ${dayText(release.until)}`;
  return `${say('Released by hand by')} ${release.by}: ${release.why}; ${until}`;
}

/** What undid a proof, by the name that the maker's data gives it, and its days as they are said. */
function undoneWhat({ book }: ViewContext, what: string): string {
  return withDates(withNameOfId(book.records.maker, what));
}

function stateText(context: ViewContext, state: CheckState): Text {
  const { say } = context;
  if (state.state === 'each time') return say('each time');
  if (state.released !== undefined) return releasedText(say, state.released);
  if (state.state === 'undone') {
    const by: readonly Inline[] =
      state.undoneBy === undefined
        ? []
        : [` ${say('by')} ${undoneWhat(context, state.undoneBy.what)} (`, jobTitle(state.undoneBy.job), ')'];
    const was = state.by === undefined ? undefined : joined([say('before that'), proofText(say, state.by)], ': ');
    return joined([[say('undone'), ...by, state.why === undefined ? '' : `: ${withDates(state.why)}`], was]);
  }
  if (state.state !== 'proved' || state.by === undefined)
    return [say('not proved'), state.why ?? ''].filter(Boolean).join(': ');
  const good = state.goodFor?.day === undefined ? undefined : `${say('good until')} ${dayText(state.goodFor.day)}`;
  return joined([proofText(say, state.by), good], ', ');
}

/** Proved when, by which record, by whose hand, looked at by whom, with what value. */
function proofText(say: ViewContext['say'], by: NonNullable<CheckState['by']>): Text {
  const words: readonly (Text | undefined)[] = [
    `${say('proved')} ${dayText(by.day)}`,
    by.hand,
    by.checkedBy === undefined ? undefined : `${say('checked by')} ${by.checkedBy}`,
    by.value,
    [`${say('in')} “`, jobTitle(by.job), '”'],
  ];
  return joined(words, ', ');
}
