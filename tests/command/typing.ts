// A machine folder of its own, and a command run in it with lines given beforehand: what was said, what the record says now.
import { cpSync, mkdtempSync, readFileSync, realpathSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answersBeforehand, type Asker } from '../../src/command/asker.ts';
import type { Surroundings } from '../../src/command/surroundings.ts';

/** A copy of a machine under the name `bike`; the path is the machine folder's. */
export function copyOf(machine: string): string {
  const folder = join(realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-typing-'))), 'bike');
  cpSync(machine, folder, { recursive: true });
  return folder;
}

export interface Heard {
  readonly around: Surroundings;
  readonly said: string[];
  readonly told: string[];
}

/** Surroundings that keep what is said. */
export function listening(folder: string): Heard {
  const [said, told]: [string[], string[]] = [[], []];
  const terminal = {
    say: (line: string) => void said.push(line.replaceAll('\u00a0', ' ')),
    tell: (line: string) => void told.push(line.replaceAll('\u00a0', ' ')),
    progress: () => undefined,
    colour: false,
  };
  return { said, told, around: { terminal, folder: join(folder, '..'), clock: () => new Date('2026-11-28T20:00:00') } };
}

/** Lines answer the questions in order; what was asked is kept. At a terminal one may be asked again. */
export function typing(
  lines: readonly string[],
  atTerminal = true,
): { readonly asker: Asker; readonly asked: string[] } {
  const before = answersBeforehand(lines);
  const asked: string[] = [];
  const ask = async (question: string): Promise<string | undefined> => {
    asked.push(question.replaceAll('\u00a0', ' '));
    return before.ask(question);
  };
  return { asker: { ...before, atTerminal, ask }, asked };
}

/** The record of a job. */
export function recordOf(folder: string, job: string): string {
  return readFileSync(join(folder, 'jobs', `${job}.md`), 'utf8');
}
