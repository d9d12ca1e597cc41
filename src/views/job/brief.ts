// One record as it is told in the history: a line of circumstances, the owner's words, then work, checks, parts and money in running lines.
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { Job } from '../../records/model.ts';
import type { Block, Inline, Text } from '../../sheet/sheet.ts';
import { joined, lines, paragraphs, sentence, stack } from '../wording/blocks.ts';
import { count, countOf, times } from '../wording/count.ts';
import { dayText } from '../wording/day.ts';
import { insteadText } from '../wording/original-kept.ts';
import { writtenText } from '../wording/value.ts';
import type { ViewContext } from '../view.ts';
import { briefReadings } from './brief-readings.ts';
import { briefWork } from './brief-work.ts';
import { findingText } from './findings.ts';
import { briefChecks, servicesHead, serviceTexts } from './facts.ts';
import { jobPhotos } from './photos.ts';
import { rideWords } from './run.ts';

/** The blocks of one record in short; whatever the record says is said, in fewer lines than on its own page. */
export function tellInBrief(context: ViewContext, job: Job): readonly Block[] {
  const { say } = context;
  const body = context.prose(job.body);
  const told: readonly Text[] = [
    ...briefWork(context, job),
    ...named(servicesHead(context, job), serviceTexts(context, job)),
    ...named(say('Checks proved'), briefChecks(context, job)),
    ...partLines(context, job),
    ...named(
      say('Money'),
      job.money.map((one) => `${say(one.kind)} ${formatMoney(one.amount)}, ${one.for}`),
    ),
    ...named(
      say('Run log'),
      job.runLog.map((one) => `${count(one.minute)}\u00a0min ${one.saw}`),
    ),
    ...job.findings.map((finding): Text => [strong(say('Found')), ...inlines(findingText(context, finding))]),
    ...named(say('Left'), job.stateLeft),
    ...named(say('Next'), job.next === undefined ? [] : [job.next]),
  ];
  return stack(
    circumstances(context, job),
    body.length === 0 ? undefined : { type: 'prose', paragraphs: body },
    told.length === 0 ? undefined : lines(told),
    briefReadings(context, job),
    jobPhotos(job, job.photos.length > 2 ? 'small' : 'half'),
  );
}

function strong(text: string): Inline {
  return { kind: 'strong', text: `${text}: ` };
}

function inlines(text: Text): readonly Inline[] {
  return typeof text === 'string' ? [text] : text;
}

/** `Parts fitted: …; …` as one line, or none. */
function named(name: string, texts: readonly string[]): readonly Text[] {
  return texts.length === 0 ? [] : [[strong(name), texts.join('; ')]];
}

/** Kind, distance, hands, time and what it was for, in one line under the heading. */
function circumstances(context: ViewContext, job: Job): readonly Block[] {
  const { book, say } = context;
  const before = job.continues === undefined ? undefined : book.jobs.get(job.continues)?.title;
  const line = joined([
    sentence(say(job.kind)),
    job.state === 'done' ? undefined : stateWord(context, job),
    job.odometer === undefined ? undefined : `${writtenText(job.odometer)} ${say('on the clock')}`,
    job.hands.join(', '),
    job.time === undefined ? undefined : writtenText(job.time),
    job.heatCycles === 0 ? undefined : countOf(job.heatCycles, say('heat cycle'), say('heat cycles')),
    before === undefined ? undefined : `${say('goes on from')} ${before}`,
    job.signed === undefined ? undefined : `${say('signed')} ${job.signed.by}, ${dayText(job.signed.date)}`,
  ]);
  const purpose = job.purpose === undefined ? undefined : [strong(say('For')), job.purpose];
  return [paragraphs(joined([line, purpose], '. '), ...rideWords(context, job))];
}

function stateWord({ say }: ViewContext, job: Job): Text {
  const words = job.waitingFor === undefined ? say(job.state) : `${say('waiting for')} ${job.waitingFor}`;
  return [{ kind: 'strong', text: words }];
}

/** Parts by what became of them: fitted, ordered, wanted. */
function partLines({ say }: ViewContext, job: Job): readonly Text[] {
  const states = [...new Set(job.parts.map((part) => part.state))];
  return states.flatMap((state) => {
    const those = job.parts.filter((part) => part.state === state);
    const texts = those.map((part) => {
      const name = part.count === 1 ? part.part : `${times(part.count)}\u00a0${part.part}`;
      const about = [
        part.number,
        part.class === undefined ? undefined : say(part.class),
        part.from,
        part.price === undefined ? undefined : formatMoney(part.price),
        insteadText(say, part),
        part.movedFrom === undefined ? undefined : `${say('moved from')} ${part.movedFrom}`,
        part.movedTo === undefined ? undefined : `${say('moved to')} ${part.movedTo}`,
        part.note,
      ].filter((text) => text !== undefined && text !== '');
      return about.length === 0 ? name : `${name} (${about.join(', ')})`;
    });
    return named(`${say('Parts')} ${say(state)}`, texts);
  });
}
