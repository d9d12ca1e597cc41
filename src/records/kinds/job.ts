// jobs/*.md: one piece of work a file. A planned job is a record with blanks.
import type { Job, JobKind, JobState } from '../model.ts';
import { refuse } from '../shapes/desk.ts';
import { group, may, need, or } from '../shapes/fields.ts';
import { daySpan, quantity } from '../shapes/measured.ts';
import { choice, list, number, scalar, text, yesNo } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import {
  answer,
  checkDone,
  correction,
  finding,
  moneyEntry,
  part,
  photo,
  release,
  remark,
  repair,
  ride,
  runLogLine,
  signature,
  testDone,
} from './job-lines.ts';
import { leftOver } from './left-over.ts';
import { reading } from './readings.ts';
import { defineRecord } from './record-kind.ts';
import { workEntry } from './work.ts';

/** Kinds of job, in the order in which a machine usually meets them. */
export const jobKinds = [
  'buying',
  'intake',
  'cleaning',
  'waking',
  'first start',
  'strip',
  'measuring',
  'machining',
  'repair',
  'assembly',
  'setting up',
  'running-in',
  'ride',
  'service',
  'road test',
  'paperwork',
  'lay-up',
  'return',
  'handover',
] as const satisfies readonly JobKind[];

const states = ['planned', 'under way', 'done', 'put aside'] as const;

/** A state, or `waiting for …` with what for. */
const state: Shape<{ readonly state: JobState; readonly waitingFor?: string }> = {
  read: (tree, spot, desk) => {
    const words = scalar(tree, spot, desk);
    if (words === undefined) return undefined;
    const waiting = /^waiting(?:\s+for\s+(.+))?$/u.exec(words);
    if (waiting !== null)
      return waiting[1] === undefined ? { state: 'waiting' } : { state: 'waiting', waitingFor: waiting[1] };
    const known = states.find((one) => one === words);
    if (known !== undefined) return { state: known };
    return refuse(
      desk,
      spot,
      'word-unknown',
      `“${words}” is not a state of a job.`,
      `Write ${states.join(', ')} or waiting for …`,
    );
  },
  told: { kind: 'text', written: 'planned, under way, waiting for …, done, put aside', example: 'done' },
};

/** Lines marked `done: no` are still to be done, once the job has begun; nothing of a planned job is done yet. */
function dividedWork(now: JobState, work: Job['work']): Pick<Job, 'work' | 'toDo'> {
  const toDo = now === 'planned' ? [] : work.filter((line) => line.done === false);
  return toDo.length === 0 ? { work } : { work: work.filter((line) => line.done !== false), toDo };
}

/** A job without what the file gives: its id, its name, its body. */
export type JobData = Omit<Job, 'id' | 'file' | 'body' | 'bodyLine' | 'print' | 'version' | 'dayFrom'>;

export const jobKind = defineRecord<JobData>({
  id: 'job',
  purpose: 'One piece of work: what was found, done, measured, fitted and paid; or a plan with blanks.',
  files: 'jobs/*.md',
  matches: (file) => /^jobs\/.+\.md$/u.test(file),
  shape: andThen(
    group({
      title: need(text, 'what the job is, in a few words', { example: 'Barrels off and measured' }),
      date: need(daySpan, 'the day, or the first and last day', { example: '2024-09-14' }),
      kind: need(choice(...jobKinds), 'the kind of job', { example: 'strip' }),
      state: need(state, 'how far it is', { example: 'done' }),
      purpose: may(text, 'what it was for', { key: 'for', example: 'smoke and a rattle when cold' }),
      hands: or(list(text), [], 'who worked', { example: '[owner, helper]' }),
      odometer: may(quantity('distance ridden', '8214 mi'), 'the clock, or none'),
      time: may(quantity('duration', '3 h 30 min'), 'time it took'),
      continues: may(text, 'id of the record it goes on from', { example: '2024-06-22-first-start' }),
      takes: may(quantity('duration', '1 h 30 min'), 'how long it will take, as you reckon beforehand'),
      helper: may(yesNo, 'whether it takes a second person'),
      after: may(list(text), 'ids of records whose work comes before this one’s', { example: '[2024-06-15-points]' }),
      procedures: or(list(text), [], 'ids of procedures followed', { example: '[top-end-strip-two-stroke]' }),
      bagsFrom: may(number(1, 9999, 'whole'), 'the first bag number printed on its sheet, kept for this job', {
        example: '12',
      }),
      work: or(list(workEntry), [], 'what came off, was loosened, drained, and what went back'),
      readings: or(list(reading), [], 'what was measured'),
      parts: or(list(part), [], 'parts wanted, bought, fitted'),
      findings: or(list(finding), [], 'what was seen and stays to be answered'),
      tests: may(list(testDone), 'what was tried to find a fault, and what it showed', {
        example: '[{test: spark, saw: thin}]',
      }),
      checks: or(list(checkDone), [], 'checks done', { example: '[bores-oiled]' }),
      releases: may(list(release), 'hold points or checks let pass by a person, without proof'),
      answers: may(list(answer), 'queries that were looked at and may stand'),
      services: or(list(text), [], 'ids of services done', { example: '[gearbox-oil-change]' }),
      repairs: or(list(repair), [], 'repairs that change the book’s figures'),
      corrections: or(list(correction), [], 'what an earlier record has wrong'),
      ticks: may(list(text), 'ticks on its sheets that no other key says, by their ids', {
        example: '[wheel-rear-out/step-1]',
      }),
      remarks: may(list(remark), 'what was written on its sheets and has no other key'),
      ride: may(ride, 'a ride'),
      runLog: or(list(runLogLine), [], 'minutes of a first start', { example: '[{minute: 0, saw: fired}]' }),
      heatCycles: or(number(0, 999, 'whole'), 0, 'times the engine got fully hot and cold again'),
      money: or(list(moneyEntry), [], 'money paid and got back, besides parts'),
      photos: or(list(photo), [], 'photos with captions'),
      stateLeft: or(list(text), [], 'what the entries cannot say of how it was left'),
      leftOver: may(list(leftOver), 'what lay on the bench at the end', {
        example: '[{thread: M6, length: 25 mm}, washer]',
      }),
      next: may(text, 'what is to be done next'),
      signed: may(signature, 'who signs, and when', { example: '{by: owner, date: 2024-09-14}' }),
    }),
    (found) => ({
      ...found,
      ...found.state,
      ...dividedWork(found.state.state, found.work),
      // In a copy for a next owner `?` stands where the name of a picture was that did not go with it.
      photos: found.photos.filter(({ file }) => file !== '?'),
    }),
  ),
});
