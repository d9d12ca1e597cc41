// A terminal that keeps its lines, to be said when it is their turn: what is done at once is told one after the other.
import type { Terminal } from '../terminal.ts';

export interface KeptLine {
  readonly to: 'say' | 'tell';
  readonly line: string;
}

/** The terminal, and the list that its lines go into. */
export function keptTerminal(colour: boolean): { readonly terminal: Terminal; readonly lines: readonly KeptLine[] } {
  const lines: KeptLine[] = [];
  const terminal: Terminal = {
    say: (line) => lines.push({ to: 'say', line }),
    tell: (line) => lines.push({ to: 'tell', line }),
    progress: () => undefined,
    colour,
  };
  return { terminal, lines };
}

/** Says what was kept. */
export function sayKept(lines: readonly KeptLine[], terminal: Terminal): void {
  for (const { to, line } of lines) terminal[to](line);
}
