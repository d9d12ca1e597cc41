// The terminal: results to standard output, everything else to standard error, and nothing from a record raw.
import { visible } from './visible.ts';

export interface Terminal {
  /** A line of the result. */
  readonly say: (line: string) => void;
  /** A line about the work: problems, hints. */
  readonly tell: (line: string) => void;
  /** What is being done now; shown only to a person at a terminal, and gone when the next thing comes. */
  readonly progress: (line: string) => void;
  readonly colour: boolean;
}

interface Stream {
  readonly write: (text: string) => unknown;
  readonly isTTY?: boolean;
}

/** The terminal of this process. Colour is for terminals only, and never against NO_COLOR. */
export function openTerminal(
  out: Stream,
  err: Stream,
  environment: Readonly<Record<string, string | undefined>>,
): Terminal {
  const colour = err.isTTY === true && (environment['NO_COLOR'] ?? '') === '' && environment['TERM'] !== 'dumb';
  let shown = false;
  const clear = (): void => {
    if (shown) err.write('\r\x1b[K');
    shown = false;
  };
  return {
    colour,
    say: (line) => {
      clear();
      out.write(visible(line, false) + '\n');
    },
    tell: (line) => {
      clear();
      err.write(visible(line, colour) + '\n');
    },
    progress: (line) => {
      if (err.isTTY !== true || environment['TERM'] === 'dumb') return;
      clear();
      if (line === '') return;
      err.write(visible(line, false).slice(0, 78));
      shown = true;
    },
  };
}
