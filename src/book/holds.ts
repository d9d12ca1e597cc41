// Hold points: held, because of these checks; or clear on the records. Never more than that.
import type { HoldPoint } from '../records/content-model.ts';
import type { Job } from '../records/model.ts';
import { appliesTo, whyNotFor } from './applies.ts';
import type { CheckState, HoldState } from './book.ts';
import type { Ground } from './ground.ts';
import { byText } from './in-order.ts';
import type { Board, Judge } from './proofs.ts';
import { standings, stateOf } from './proofs.ts';
import type { Evidence } from './vetoes.ts';
import { vetoOn } from './vetoes.ts';

/** A start or ride while its hold point was held. */
export interface HeldActivity {
  readonly job: Job;
  readonly point: HoldPoint;
  /** The first check that was open. */
  readonly check: string;
}

export interface HoldWork {
  readonly holds: readonly HoldState[];
  readonly ridden: readonly HeldActivity[];
}

/** Which points stand before what a record did, by the permanent ids of the points. */
function pointsBefore(job: Job): readonly string[] {
  if (job.ride !== undefined || job.kind === 'ride' || job.kind === 'road test')
    return ['before-moving', 'before-road'];
  return job.kind === 'first start' ? ['before-live-kick'] : [];
}

function checkState(check: HoldPoint['checks'][number], ground: Ground, board: Board, evidence: Evidence): CheckState {
  const notFor = whyNotFor(check.applies, ground.records.machine.features);
  if (notFor !== undefined) return { check, state: 'not for this machine', why: notFor };
  const state = stateOf(check, board.standing(check.id));
  const veto = state.state === 'proved' ? vetoOn(check, evidence) : undefined;
  return veto === undefined ? state : { ...state, state: 'not proved', why: veto };
}

/** A record that could not be read may have undone anything: the point is held until it can be. */
function unreadWhy(ground: Ground): readonly string[] {
  return ground.records.unread.map((one) => `${one.file} could not be read: ${one.codes.join(', ')}`);
}

function reasonOf(state: CheckState): string {
  if (state.state === 'undone')
    return `${state.check.text}: proved, then undone by ${state.undoneBy?.what ?? 'later work'}`;
  return state.why === undefined ? state.check.text : `${state.check.text}: ${state.why}`;
}

/** All hold points of this machine, in their order. Linear in records plus checks. */
export function holdPoints(ground: Ground, judge: Judge, evidence: Evidence): HoldWork {
  const features = ground.records.machine.features;
  const points = ground.content.holdPoints
    .filter((point) => appliesTo(point.applies, features))
    .toSorted((a, b) => a.order - b.order || byText(a.id, b.id));
  const ridden: HeldActivity[] = [];
  const byId = new Map(points.map((point) => [point.id, point]));
  const open = (point: HoldPoint, board: Board): string | undefined =>
    point.checks.find(
      (check) => appliesTo(check.applies, features) && stateOf(check, board.standing(check.id)).state !== 'proved',
    )?.id;
  const board = standings(
    points.flatMap((point) => point.checks),
    ground,
    judge,
    (job, moment) => {
      for (const id of pointsBefore(job)) {
        const point = byId.get(id);
        const check = point === undefined ? undefined : open(point, moment);
        if (point !== undefined && check !== undefined) ridden.push({ job, point, check });
      }
    },
  );
  const unread = unreadWhy(ground);
  const holds = points.map((point): HoldState => {
    const checks = point.checks.map((check) => checkState(check, ground, board, evidence));
    const held = checks.filter((one) => one.state === 'not proved' || one.state === 'undone');
    const because = [...unread, ...held.map(reasonOf)];
    return { point, checks, clear: because.length === 0, because };
  });
  return { holds, ridden };
}
