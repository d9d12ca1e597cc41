// What shows only over all machines of a workshop, told after each has been told by itself.
import { basename } from 'node:path';
import { lookOverWorkshop, type OneOfThem } from '../build.ts';
import { readMachineFolder } from '../disk.ts';
import { count } from './count.ts';
import { reportProblems } from './report-problems.ts';
import type { Terminal } from './terminal.ts';

type Asked = ReturnType<typeof lookOverWorkshop>;

/** Tells the queries that lie between machines, each with the folder it stands in; nothing for a machine alone. `paths` are the machine folders. */
export async function tellWorkshop(
  machines: readonly OneOfThem[],
  paths: readonly string[],
  terminal: Terminal,
): Promise<void> {
  await tellAsked(lookOverWorkshop(machines), paths, terminal);
}

/** Tells queries that were found. Their lines are shown from the folders as they lie there now. */
export async function tellAsked(asked: Asked, paths: readonly string[], terminal: Terminal): Promise<void> {
  if (asked.length === 0) return;
  const problems = asked.map(({ folder, problem }) => ({
    ...problem,
    at: { ...problem.at, file: `${folder}/${problem.at.file}` },
  }));
  await reportProblems(problems, textsBelow(paths), terminal);
  terminal.say(`Between the machines: ${count(asked.length, 'query', 'queries')}.`);
}

/** The text of `<machine folder>/<file>`. A report goes folder by folder, so one folder's texts are held at a time. */
function textsBelow(paths: readonly string[]): (file: string) => string | undefined {
  const byName = new Map(paths.map((path) => [basename(path).normalize('NFC'), path]));
  let held: { readonly name: string; readonly texts: ReadonlyMap<string, string> } | undefined;
  return (file) => {
    const name = file.slice(0, file.indexOf('/'));
    if (held?.name !== name) held = { name, texts: textsIn(byName.get(name)) };
    return held.texts.get(file.slice(name.length + 1));
  };
}

function textsIn(path: string | undefined): ReadonlyMap<string, string> {
  const folder = path === undefined ? undefined : readMachineFolder(path).value;
  return new Map([...(folder?.shared ?? []), ...(folder?.files ?? [])].map((each) => [each.file, each.text]));
}
