// The open job that is meant: by its name, by what only one is named by, or the only one that is open.
import type { Terminal } from '../terminal.ts';
import type { ReadMachine } from '../read-machine.ts';
import { jobsNamed } from '../jobs-named.ts';
import { nearest } from '../nearest.ts';
import { stops } from '../../build.ts';

/** Id of the job; undefined after telling which there are. */
export function openJob(read: ReadMachine, wanted: string | undefined, terminal: Terminal): string | undefined {
  const { binder } = read;
  if (binder === undefined) {
    terminal.tell('The machine itself cannot be read: see splitpin check.');
    return undefined;
  }
  const open = binder.book.plans.map((plan) => plan.job);
  const name = wanted?.replace(/^.*jobs\//u, '').replace(/\.md$/u, '');
  if (name === undefined && open.length === 1) return open[0]?.id;
  const exact = open.find(({ id }) => id === name);
  const part = name === undefined ? [] : jobsNamed(name, open);
  if (exact !== undefined) return exact.id;
  if (part.length === 1) return part[0]?.id;
  const done = name === undefined ? undefined : binder.book.jobs.get(name);
  if (done !== undefined)
    terminal.tell(`${done.id} is ${done.state}: it has no blanks. A correction goes into a later record.`);
  else if (open.length === 0) terminal.tell('No job is planned or under way. Plan one: splitpin add');
  else terminal.tell(name === undefined ? 'Which job? Open are:' : notOne(name, part.length));
  const titles = new Map((part.length > 0 ? part : open).map(({ id, title }) => [id, title]));
  for (const id of nearest(name ?? '', [...titles.keys()])) terminal.tell(`  ${id.padEnd(40)} ${titles.get(id) ?? ''}`);
  if (stops(read.problems).length > 0)
    terminal.tell('A record that cannot be read is not among them: see splitpin check.');
  return undefined;
}

function notOne(name: string, many: number): string {
  return many === 0 ? `No open job is called “${name}”. Open are:` : `“${name}” may mean several open jobs:`;
}
