// What only shows when the machines of a workshop are laid side by side: a part on two of them, a move told on one side, one number on both.
import type { Problem } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import { machineNamed, type MovedPart, type OneOfThem } from './beside-others.ts';
import { plainName } from './names.ts';
import { query } from './queries/query.ts';

/** A query with the folder of the machine in whose records it stands. */
export interface FolderQuery {
  readonly folder: string;
  readonly problem: Problem;
}

interface Move {
  readonly from: OneOfThem;
  readonly to: OneOfThem;
  readonly teller: OneOfThem;
  readonly part: MovedPart;
  readonly day: Day;
}

/** Queries over all machines, in the order of the machines. Linear in their records. */
export function lookOverWorkshop(machines: readonly OneOfThem[]): readonly FolderQuery[] {
  if (machines.length < 2) return [];
  return [...onBoth(machines), ...sharedNumbers(machines)];
}

/** Every move between two machines of the workshop, as one of them tells it. */
function movesOf(machines: readonly OneOfThem[]): readonly Move[] {
  const named = machineNamed(machines);
  return machines.flatMap((teller) =>
    teller.moved.flatMap((part): readonly Move[] => {
      const { day } = part;
      const given = part.to === undefined ? undefined : named(part.to);
      const got = part.from === undefined ? undefined : named(part.from);
      return [
        ...(given === undefined || given === teller ? [] : [{ from: teller, to: given, teller, part, day }]),
        ...(got === undefined || got === teller ? [] : [{ from: got, to: teller, teller, part, day }]),
      ];
    }),
  );
}

function nameOf({ from, to, part }: Move): string {
  return [from.folder, to.folder, plainName(part.part)].join('\n');
}

/** Both sides must tell a move, and the part must have left before it came. */
function onBoth(machines: readonly OneOfThem[]): readonly FolderQuery[] {
  const byMove = new Map<string, Move[]>();
  for (const move of movesOf(machines)) {
    const list = byMove.get(nameOf(move));
    if (list === undefined) byMove.set(nameOf(move), [move]);
    else list.push(move);
  }
  return [...byMove.values()].flatMap((moves) => {
    const given = moves.filter((one) => one.teller === one.from);
    const got = moves.filter((one) => one.teller === one.to);
    return [
      ...given.slice(got.length).map(notCame),
      ...got.slice(given.length).map(notGone),
      ...given.flatMap((one, index) => overlap(one, got[index])),
    ];
  });
}

function notCame({ teller, to, part, day }: Move): FolderQuery {
  const message = `${part.part} went to ${to.folder} on ${day}, and the records there do not say that it came`;
  const hint = `write it there under \`parts:\` with \`moved from: ${teller.folder}\``;
  return { folder: teller.folder, problem: query('move-told-once', part.at, message, hint) };
}

function notGone({ teller, from, part, day }: Move): FolderQuery {
  const message = `${part.part} came from ${from.folder} on ${day}, and the records there do not say that it went`;
  const hint = `write it there under \`parts:\` with \`moved to: ${teller.folder}\``;
  return { folder: teller.folder, problem: query('move-told-once', part.at, message, hint) };
}

/** Fitted here before it had left there: on two machines between the two days. */
function overlap(gone: Move, came: Move | undefined): readonly FolderQuery[] {
  if (came === undefined || came.day >= gone.day) return [];
  const message = `${came.part.part} is here since ${came.day}, and left ${gone.from.folder} only on ${gone.day}: on two machines between`;
  const problem = query('part-on-two-machines', came.part.at, message, 'one of the two days is wrong');
  return [{ folder: came.to.folder, problem }];
}

/** A frame, engine or registration number that stands on two machines; one has been copied from the other. */
function sharedNumbers(machines: readonly OneOfThem[]): readonly FolderQuery[] {
  const first = new Map<string, string>();
  return machines.flatMap(({ folder, file, numbers }) =>
    numbers.flatMap(({ name, stamped }) => {
      const key = `${name} ${stamped.toUpperCase().replaceAll(/[^\p{L}\d]+/gu, '')}`;
      if (stamped.includes('?') || stamped === '') return [];
      const other = first.get(key);
      if (other === undefined) first.set(key, folder);
      if (other === undefined) return [];
      const at = { file, path: ['numbers', name] };
      const message = `${name} number ${stamped} is that of ${other} as well`;
      const hint = 'read both stamps again, character by character';
      return [{ folder, problem: query('number-on-two-machines', at, message, hint) }];
    }),
  );
}
