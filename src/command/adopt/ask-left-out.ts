// Asks the new owner for what the former one left out, and writes what they say into machine.yaml; Enter leaves it for later.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { stops } from '../../build.ts';
import type { Asker } from '../asker.ts';
import { readMachine } from '../read-machine.ts';
import { reportProblems } from '../report-problems.ts';
import type { Surroundings } from '../surroundings.ts';
import { leftOutOf, withSaid, type LeftOutValue } from './left-out.ts';

interface AskWork {
  readonly half: string;
  readonly today: string;
  readonly how: Readonly<Record<string, string>>;
  readonly around: Surroundings;
  readonly asker: Asker;
}

/** Names of what is still open afterwards. */
export async function askLeftOut(work: AskWork): Promise<readonly string[]> {
  const path = join(work.half, 'machine.yaml');
  const open: string[] = [];
  for (const value of leftOutOf(sourceAt(path))) {
    const answer = await answered(value, work);
    if (answer === undefined || !(await put(path, value, answer, work))) open.push(value.name);
  }
  return open;
}

async function answered({ name }: LeftOutValue, { how, asker }: AskWork): Promise<string | undefined> {
  const said = how[name];
  if (said !== undefined) return said;
  if (!asker.atTerminal) return undefined;
  const line = (await asker.ask(`The former owner left out the ${name} (Enter: later): `))?.trim();
  return line === undefined || line === '' || line === '?' ? undefined : line;
}

/** Written only where the machine can be read with it. */
async function put(path: string, value: LeftOutValue, words: string, work: AskWork): Promise<boolean> {
  const before = sourceAt(path);
  const { text, failed } = withSaid(before, [{ value, words }]);
  if (failed.length > 0) return false;
  writeFileSync(path, text);
  const { problems, textOf } = readMachine(work.half, work.today, { siteOnly: true });
  const wrong = stops(problems).filter(({ at }) => at.file === 'machine.yaml');
  if (wrong.length === 0) return true;
  await reportProblems(wrong, textOf, work.around.terminal);
  writeFileSync(path, before.text);
  return false;
}

function sourceAt(path: string): { readonly file: string; readonly text: string } {
  return { file: 'machine.yaml', text: readFileSync(path, 'utf8') };
}
