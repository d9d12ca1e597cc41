// The permanent ids of what is ticked and written on a job's sheets: the same words for the views that print them and for what reads them back.
import type { Procedure, Step } from '../records/content-model.ts';
import type { Verb } from '../records/model.ts';
import { stepNumber } from '../records/step-numbers.ts';

/** A step is counted in its own procedure as content has it, so that another procedure or feature moves no number. */
export interface StepPlace {
  readonly job: string;
  readonly procedure: string;
  readonly way: 'steps' | 'assembly';
  /** From 1. */
  readonly number: number;
}

/** The place of a step in its procedure, as it stands in content with all its steps. */
export function stepPlace(job: string, whole: Procedure, way: StepPlace['way'], step: Step): StepPlace {
  return { job, procedure: whole.id, way, number: stepNumber(whole[way], step) };
}

/** The tick of a step. */
export function stepId({ job, procedure, way, number }: StepPlace): string {
  return `${job}/${procedure}/${way === 'steps' ? 'step' : 'assembly'}-${String(number)}`;
}

/** The tick of one of the fasteners of a step, counted from 1. */
export function stepFastenerId(place: StepPlace, fastener: number): string {
  return `${stepId(place)}-${String(fastener)}`;
}

/** A part that comes off, and goes back on. */
export function partId(job: string, part: string, way: 'off' | 'on'): string {
  return `${job}/${part}/${way}`;
}

/** A line of the record that is to be done, or that follows from one. */
export function lineId(job: string, verb: Verb, thing: string): string {
  return `${job}/${verb}/${thing}`;
}

/** What a fastener's torque reached. */
export function reachedId(job: string, fastener: string): string {
  return `${job}/${fastener}/reached`;
}

/** Something to be done or looked at before the work, counted from 1. */
export function beforeId(job: string, procedure: string, number: number): string {
  return `${job}/before/${procedure}/${String(number)}`;
}

/** A part that is needed: the tick that it is here. */
export function hereId(job: string, part: string): string {
  return `${job}/part/${part}`;
}

/** A row for what nobody foresaw; without a name of what is asked, the row itself. */
export function spareId(job: string, name: string, asked: 'off' | 'on' | 'part' | 'fasteners' | 'note'): string {
  return `${job}/spare-${name}/${asked}`;
}

/** A check to be proved with this job. */
export function checkId(job: string, check: string): string {
  return `${job}/check/${check}`;
}

/** Words beside any blank. */
export function noteId(blank: string): string {
  return `${blank}/note`;
}

/** The id of a blank as its own record writes it: without the record's id before it. */
export function inRecord(job: string, blank: string): string {
  return blank.startsWith(`${job}/`) ? blank.slice(job.length + 1) : blank;
}
