// What every question needs while a sheet is typed in: the next line, the caution above it, where words beside it go.
import type { Answer } from '../../entry/answer.ts';
import type { Blank } from '../../entry/blank.ts';
import type { Asker } from '../asker.ts';
import type { Terminal } from '../terminal.ts';
import { linesAbove } from './prompt.ts';
import type { Session } from './session.ts';

/** `stop`: no more lines, or the person said so. What was answered before it is kept. */
export interface Heard {
  readonly answers: readonly Answer[];
  readonly stop: boolean;
  /** The rest of this table is left for later. */
  readonly skip?: boolean;
  /** An answer that cannot be kept, where nobody can be asked again. */
  readonly refused?: string;
}

export interface Asking {
  readonly session: Session;
  readonly asker: Asker;
  readonly terminal: Terminal;
  /** Cautions that have been shown: one stands once for all lines that follow each other. */
  readonly shown: Set<string>;
  /** Ids of all blanks that the sheets print. */
  readonly printed: ReadonlySet<string>;
}

/** Where words beside a blank go: into the line that is printed in its row, else into a note of its own. */
export function besideId(id: string, { printed }: Asking): string {
  return printed.has(`${id}/words`) ? `${id}/words` : `${id}/note`;
}

export const nothing: Heard = { answers: [], stop: false };
export const stopped: Heard = { answers: [], stop: true };

/** The next line, trimmed; undefined at the end, or where the person stops. */
export async function line({ asker }: Asking, prompt: string): Promise<string | undefined> {
  const said = (await asker.ask(prompt))?.trim();
  return said === 'q' || said === 'quit' ? undefined : said;
}

/** The caution at the step, once for all lines that follow each other. */
export function showCaution(blank: Blank, { terminal, shown }: Asking): void {
  for (const text of linesAbove(blank)) if (!shown.has(text)) terminal.tell(text);
  shown.clear();
  for (const text of linesAbove(blank)) shown.add(text);
}
