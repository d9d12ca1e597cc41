// Hold points: held, because of these checks; or clear on the records. Never more than that.
import type { Check, Content, HoldPoint } from '../records/content-model.ts';
import { keptWith } from '../records/kept-with.ts';
import type { Job, Machine } from '../records/model.ts';
import { appliesTo, whyNotFor } from './applies.ts';
import type { CheckState, HoldState } from './book.ts';
import { expiryOf, momentOf } from './expiry.ts';
import type { Ground } from './ground.ts';
import { byText } from './in-order.ts';
import type { OdometerWork } from './odometer.ts';
import { withNameOfId } from './own-words.ts';
import type { Board, Judge } from './proofs.ts';
import { standings, stateOf } from './proofs.ts';
import type { ReleaseAt } from './releases.ts';
import { releaseWords, releasesOf } from './releases.ts';
import type { Evidence } from './vetoes.ts';
import { vetoOn } from './vetoes.ts';

/** A start or ride while its hold point was held. */
export interface HeldActivity {
  readonly job: Job;
  readonly point: HoldPoint;
  /** The checks that were open, in the order of the point: all of them the first time, then one that tells that it was held again. */
  readonly open: readonly Check[];
}

export interface HoldWork {
  readonly holds: readonly HoldState[];
  readonly ridden: readonly HeldActivity[];
}

/** Which points stand before what a record did, by the permanent ids of the points. */
export function pointsBefore(job: Job): readonly string[] {
  if (job.ride?.where === 'private land') return ['before-moving'];
  if (job.ride !== undefined || job.kind === 'ride' || job.kind === 'road test')
    return ['before-moving', 'before-road'];
  return job.kind === 'first start' ? ['before-live-kick'] : [];
}

/** What a state of now is judged by. */
interface Bench {
  readonly ground: Ground;
  readonly board: Board;
  readonly evidence: Evidence;
  readonly odometer: OdometerWork;
  readonly releaseAt: ReleaseAt;
}

/** A proof whose time or distance is past is undone by it. */
function withExpiry(state: CheckState, { ground, odometer }: Bench): CheckState {
  if (state.state !== 'proved' || state.by === undefined) return state;
  const expiry = expiryOf(state.check, state.by.job, odometer, momentOf(ground.today, odometer.metresNow));
  if (expiry === undefined) return state;
  const goodFor = expiry.day === undefined ? { words: expiry.words } : { words: expiry.words, day: expiry.day };
  return expiry.past
    ? { ...state, state: 'undone', goodFor, why: `the proof ran out (${expiry.words})` }
    : { ...state, goodFor };
}

function checkState(check: Check, bench: Bench): CheckState {
  const { ground, board, evidence, releaseAt } = bench;
  const notFor = whyNotFor(check.applies, ground.records.machine.features);
  if (notFor !== undefined) return { check, state: 'not for this machine', why: notFor };
  if (check.eachTime === true) return { check, state: 'each time' };
  const state = withExpiry(stateOf(check, board.standing(check.id)), bench);
  const veto = state.state === 'proved' ? vetoOn(check, evidence) : undefined;
  const judged: CheckState = veto === undefined ? state : { ...state, state: 'not proved', why: veto };
  const released = judged.state === 'proved' ? undefined : releaseAt(check.id, ground.today, ground.all.length);
  return released === undefined ? judged : { ...judged, released };
}

/** A record that could not be read may have undone anything: the point is held until it can be. */
function unreadWhy(ground: Ground): readonly string[] {
  return ground.records.unread.map((one) => `${one.file} could not be read: ${one.codes.join(', ')}`);
}

function reasonOf(state: CheckState, { ground }: Bench): string {
  const { check, released, why, undoneBy } = state;
  if (released !== undefined) return `${check.text}: ${releaseWords(released)}`;
  if (why !== undefined) return `${check.text}: ${why}`;
  return state.state === 'undone'
    ? `${check.text}: proved, then undone by ${withNameOfId(ground.records.maker, undoneBy?.what ?? 'later work')}`
    : check.text;
}

/** The checks of a point that were open at a record: not proved, undone, or run out by then; released by hand is let pass. */
function openAt(point: HoldPoint, job: Job, again: boolean, bench: Bench): readonly Check[] {
  const { ground, board, odometer, releaseAt } = bench;
  const order = ground.order.get(job) ?? 0;
  const moment = momentOf(job.date.from, odometer.metresAt(job.id, job.date.from));
  if (releaseAt(point.id, job.date.from, order) !== undefined) return [];
  const isOpen = (check: Check): boolean => {
    if (check.eachTime === true || !appliesTo(check.applies, ground.records.machine.features)) return false;
    const { proof, undone } = board.standing(check.id);
    const stands = proof !== undefined && proof.but === undefined && undone === undefined;
    const past = stands && expiryOf(check, proof.job, odometer, moment)?.past === true;
    return (!stands || past) && releaseAt(check.id, job.date.from, order) === undefined;
  };
  if (!again) return point.checks.filter(isOpen);
  const one = point.checks.find(isOpen);
  return one === undefined ? [] : [one];
}

function holdState(point: HoldPoint, bench: Bench): HoldState {
  const { ground, releaseAt } = bench;
  const checks = point.checks.map((check) => checkState(check, bench));
  const held = checks.filter((one) => one.state === 'not proved' || one.state === 'undone');
  const because = [...unreadWhy(ground), ...held.map((one) => reasonOf(one, bench))];
  const released = because.length === 0 ? undefined : releaseAt(point.id, ground.today, ground.all.length);
  if (released === undefined) return { point, checks, clear: because.length === 0, because };
  return { point, checks, clear: false, released, because: [releaseWords(released), ...because] };
}

/** The hold points that apply to a machine, in their order, and their checks. */
const pointsFor = keptWith(({ features }: Machine, all: Content['holdPoints']) => {
  const points = all
    .filter((point) => appliesTo(point.applies, features))
    .toSorted((a, b) => a.order - b.order || byText(a.id, b.id));
  return { points, checks: points.flatMap((point) => point.checks) };
});

/** All hold points of this machine, in their order. Linear in records plus checks. */
export function holdPoints(ground: Ground, odometer: OdometerWork, judge: Judge, evidence: Evidence): HoldWork {
  const { points, checks } = pointsFor(ground.records.machine, ground.content.holdPoints);
  const byId = new Map(points.map((point) => [point.id, point]));
  const ridden: HeldActivity[] = [];
  const heldBefore = new Set<string>();
  const releaseAt = releasesOf(ground);
  const board = standings(checks, ground, judge, (job, moment) => {
    for (const id of pointsBefore(job)) {
      const point = byId.get(id);
      if (point === undefined) continue;
      const open = openAt(point, job, heldBefore.has(id), { ground, board: moment, evidence, odometer, releaseAt });
      if (open.length === 0) continue;
      heldBefore.add(id);
      ridden.push({ job, point, open });
    }
  });
  const bench: Bench = { ground, board, evidence, odometer, releaseAt };
  return { holds: points.map((point) => holdState(point, bench)), ridden };
}
