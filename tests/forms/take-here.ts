// `take` as the program runs it, in this process: what it says, what it answers, which lines are given to its questions.
import { takeCommand } from '../../src/command/take-command.ts';
import { answersBeforehand } from '../../src/command/asker.ts';
import { today } from './job-forms.ts';

export interface Took {
  readonly code: number;
  /** All lines, said and told, in their order. */
  readonly said: string;
}

export async function take(
  machine: string,
  files: readonly string[],
  choices: { readonly yes?: boolean; readonly show?: boolean; readonly how?: readonly string[] } = {},
  lines: readonly string[] = [],
): Promise<Took> {
  const said: string[] = [];
  const line = (text: string): void => void said.push(text);
  const terminal = { say: line, tell: line, progress: () => undefined, colour: false };
  const around = { terminal, folder: process.cwd(), clock: () => new Date(`${today}T12:00:00Z`) };
  const code = await takeCommand(machine, files, { today, ...choices }, around, answersBeforehand(lines));
  return { code, said: said.join('\n') };
}
