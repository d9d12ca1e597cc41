// Questions and answers in lines: at a terminal, or through a pipe, where each line answers the next question.
import { createInterface, type Interface } from 'node:readline';

export interface Asker {
  /** True where a person sits at a terminal and can be asked again. */
  readonly atTerminal: boolean;
  /** Shows the question and gives the line that answers it; undefined when no more lines come. */
  readonly ask: (question: string) => Promise<string | undefined>;
  /** True after Ctrl+C at a question. */
  readonly interrupted: () => boolean;
  readonly close: () => void;
}

type Input = NodeJS.ReadableStream & { readonly isTTY?: boolean };

/** Asks on one stream and listens on another. Lines that come before they are asked for wait: a pipe gives all of them at once. */
export function openAsker(input: Input, output: NodeJS.WritableStream): Asker {
  const atTerminal = input.isTTY === true;
  const waiting: string[] = [];
  let ended = false;
  let stopped = false;
  let wake: (() => void) | undefined;
  let lines: Interface | undefined;
  const open = (): Interface => {
    const made = createInterface(atTerminal ? { input, output, terminal: true } : { input });
    made.on('line', (line) => {
      waiting.push(line);
      wake?.();
    });
    made.on('SIGINT', () => {
      stopped = true;
      made.close();
    });
    made.on('close', () => {
      ended = true;
      wake?.();
    });
    return made;
  };
  return {
    atTerminal,
    ask: async (question) => {
      lines ??= open();
      if (!ended && atTerminal) {
        lines.setPrompt(question);
        lines.prompt();
      }
      while (waiting.length === 0 && !ended) {
        await new Promise<void>((done) => {
          wake = done;
        });
      }
      return waiting.shift();
    },
    interrupted: () => stopped,
    close: () => lines?.close(),
  };
}

/** Answers that were given beforehand, for tests and for a file of answers. */
export function answersBeforehand(lines: readonly string[]): Asker {
  const waiting = [...lines];
  return {
    atTerminal: false,
    ask: async () => Promise.resolve(waiting.shift()),
    interrupted: () => false,
    close: () => undefined,
  };
}
