// `intake` as the program runs it, in this process.
import { mkdtempSync, realpathSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answersBeforehand, type Asker } from '../../src/command/asker.ts';
import { intakeCommand, type IntakeOptions } from '../../src/command/intake-command.ts';

export interface Ended {
  readonly code: number;
  readonly said: string;
}

/** A folder of its own to stand in. */
export function emptyFolder(): string {
  return realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-intake-')));
}

export async function intake(
  folder: string,
  wanted: string | undefined,
  options: Partial<IntakeOptions>,
  answers: readonly string[] | Asker = [],
): Promise<Ended> {
  const said: string[] = [];
  const line = (text: string): void => void said.push(text);
  const terminal = { say: line, tell: line, progress: () => undefined, colour: false };
  const around = { terminal, folder, clock: () => new Date('2026-11-14T12:00:00') };
  const asker = 'ask' in answers ? answers : answersBeforehand(answers);
  const code = await intakeCommand(wanted, { today: '2026-11-14', given: {}, ...options }, around, asker);
  return { code, said: said.join('\n') };
}

/** One good answer to each question, in their order. */
export const allAnswers = [
  'Larkmoor',
  'Pipit 175',
  '1969',
  'LP175-04417',
  'LE175-04390',
  '7512 mi',
  'two, 2 cylinders',
  'premix',
  'battery and coil, points',
  '6 V, battery, lamps',
  'drum, drum',
  'unit, chain, spoked',
  'a4, GBP, imperial',
] as const;
