// The program at a terminal, as a person sits before it: a pseudo-terminal, read as it fills and typed into.
import { patience } from './process.ts';

interface Pty {
  readonly onData: (listen: (text: string) => void) => unknown;
  readonly onExit: (listen: (ended: { readonly exitCode: number }) => void) => unknown;
  readonly write: (text: string) => void;
  readonly kill: (signal?: string) => void;
}
interface Ptys {
  readonly spawn: (
    file: string,
    words: readonly string[],
    options: {
      readonly cwd: string;
      readonly cols: number;
      readonly env: Readonly<Record<string, string | undefined>>;
    },
  ) => Pty;
}

function isPtys(value: unknown): value is Ptys {
  return typeof value === 'object' && value !== null && 'spawn' in value && typeof value.spawn === 'function';
}

async function load(): Promise<Ptys | undefined> {
  try {
    const found: unknown = await import('@lydell/node-pty');
    return isPtys(found) ? found : undefined;
  } catch {
    return undefined;
  }
}

const ptys = await load();
/** False where pseudo-terminals cannot be made. */
export const hasTerminal = ptys !== undefined;
if (!hasTerminal)
  console.warn('SKIPPED: the program was not run at a terminal, because @lydell/node-pty cannot be loaded here.');

export interface AtTerminal {
  /** Waits until what was shown since the last answer matches, then types the answer and Enter. */
  readonly answer: (question: RegExp, line: string) => Promise<void>;
  /** Types keys as they are. */
  readonly type: (keys: string) => void;
  readonly until: (pattern: RegExp) => Promise<void>;
  readonly shown: () => string;
  readonly ended: Promise<number>;
}

/** Starts the program at a terminal of 100 columns. */
export function atTerminal(program: string, words: readonly string[], folder: string): AtTerminal {
  if (ptys === undefined) throw new Error('no terminal here');
  const pty = ptys.spawn(process.execPath, [program, ...words], {
    cwd: folder,
    cols: 100,
    env: { ...process.env, NO_COLOR: '1' },
  });
  let all = '';
  let from = 0;
  let isOver = false;
  pty.onData((text) => {
    all += text;
  });
  const ended = new Promise<number>((done) => {
    pty.onExit(({ exitCode }) => {
      isOver = true;
      done(exitCode);
    });
  });
  const until = async (pattern: RegExp): Promise<void> => {
    // The last words may come after the end.
    let after = 0;
    for (let turn = 0; turn < patience / 20 && after < 100; turn += 1) {
      if (pattern.test(plain(all.slice(from)))) return;
      if (isOver) after += 1;
      await new Promise((done) => setTimeout(done, 20));
    }
    pty.kill();
    throw new Error(`no ${String(pattern)} in\n${plain(all.slice(from))}`);
  };
  return {
    until,
    answer: async (question, line) => {
      await until(question);
      from = all.length;
      pty.write(line + '\r');
    },
    type: (keys) => pty.write(keys),
    shown: () => plain(all),
    ended,
  };
}

/** What a person sees: without the codes that move the cursor. */
function plain(text: string): string {
  // eslint-disable-next-line no-control-regex -- they are what is taken out
  return text.replaceAll(/\u001b\[[0-9;?]*[A-Za-z]/gu, '').replaceAll('\r', '');
}
