// Beside a due list: from which general schedule its lines are that the maker's book does not speak of, and for what size that was meant.
import { generalSchedules } from '../book/due/general-schedules.ts';
import type { GeneralSchedule } from '../book/due/general-schedules.ts';
import type { ServiceLine } from '../records/model.ts';
import type { Inline } from '../sheet/sheet.ts';
import { headFigures } from './figures/engine.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';
import { paragraphs } from './wording/blocks.ts';
import { count, countOf } from './wording/count.ts';
import { inlineFigure } from './wording/figure.ts';
import { ours } from './wording/ours.ts';

export const generalSchedulesUsed = defineView({
  id: 'general-schedules',
  purpose: 'Which lines of the due list are no maker’s: what they were taken from, and for engines of what size.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { content, records, due } = context.book;
    return generalSchedules(content, records.machine, due).map((one) =>
      paragraphs([...takenFrom(context, one), ...size(context, one)]),
    );
  },
});

/** What a row says of its evidence, in the words that content/pages/formats.md gives it. */
const read = /\bread\b/u;
const memory = /\bmemory\b/u;
const evidence = [
  'read in published charts',
  'read in part, the rest from memory',
  'from memory',
  'common practice',
] as const;

function evidenceOf({ source: { remark = '' } }: ServiceLine): (typeof evidence)[number] {
  if (read.test(remark)) return memory.test(remark) ? 'read in part, the rest from memory' : 'read in published charts';
  return memory.test(remark) ? 'from memory' : 'common practice';
}

/** How many of its lines stand here, and how many of them rest on what. */
function takenFrom(context: ViewContext, { schedule, lines }: GeneralSchedule): readonly Inline[] {
  const { say } = context;
  const marked = lines.filter(({ source }) => source.remark !== undefined).map(evidenceOf);
  const from = evidence.flatMap((words) => {
    const those = marked.filter((one) => one === words).length;
    return those === 0 ? [] : [`${count(those)} ${say(words)}`];
  });
  const [first] = lines;
  const title = first === undefined ? schedule.title : ours(context, first.at, schedule.title);
  const rest = from.length === 0 ? '' : ` ${say('Of these')}: ${from.join('; ')}; ${say('each by its own source')}.`;
  return [
    { kind: 'strong', text: say('General, not the maker’s') },
    `: ${countOf(lines.length, say('line'), say('lines'))} ${say('from')} “${title}”.${rest}`,
  ];
}

/** For what size it was meant, and what this engine has. */
function size({ book, say }: ViewContext, { schedule, fits }: GeneralSchedule): readonly Inline[] {
  if (schedule.meantFor === undefined) return [];
  const meant = ` ${say('Meant for engines of')} ${schedule.meantFor.text.replaceAll(' ', '\u00a0')}`;
  const has = headFigures(book).find(({ id }) => id === 'displacement');
  if (fits === undefined || has === undefined)
    return [`${meant}; ${say('of this one bore and stroke are not known')}.`];
  const ending = fits ? '.' : `, ${say('and is of another size: typical at best')}.`;
  return [`${meant}; ${say('this one has')} `, inlineFigure(has.figure, has.id), ending];
}
