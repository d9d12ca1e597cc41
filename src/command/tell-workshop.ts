// What shows only over all machines of a workshop, told after each has been told by itself.
import { lookOverWorkshop } from '../build.ts';
import { count } from './count.ts';
import type { ReadMachine } from './read-machine.ts';
import { reportProblems } from './report-problems.ts';
import type { Terminal } from './terminal.ts';

type Asked = ReturnType<typeof lookOverWorkshop>;

/** Tells the queries that lie between machines, each with the folder it stands in; nothing for a machine alone. */
export async function tellWorkshop(read: readonly ReadMachine[], terminal: Terminal): Promise<void> {
  const machines = read.flatMap(({ folder, binder }) =>
    binder === undefined ? [] : [{ folder: folder.name, book: binder.book }],
  );
  await tellAsked(lookOverWorkshop(machines), read, terminal);
}

/** Tells queries that were found. */
export async function tellAsked(asked: Asked, read: readonly ReadMachine[], terminal: Terminal): Promise<void> {
  if (asked.length === 0) return;
  const texts = new Map(read.map((one) => [one.folder.name, one.textOf]));
  const problems = asked.map(({ folder, problem }) => ({
    ...problem,
    at: { ...problem.at, file: `${folder}/${problem.at.file}` },
  }));
  const textOf = (file: string): string | undefined => {
    const folder = file.slice(0, file.indexOf('/'));
    return texts.get(folder)?.(file.slice(folder.length + 1));
  };
  await reportProblems(problems, textOf, terminal);
  terminal.say(`Between the machines: ${count(asked.length, 'query', 'queries')}.`);
}
