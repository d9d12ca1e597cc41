// The door that Firefox keeps for tests: JSON over a socket, one command answered after another. The commands are WebDriver’s.
import { connect } from 'node:net';

export interface Marionette {
  /** Gives a command and waits for what it answers; what Firefox refuses is an error in its words. */
  readonly send: (command: string, parameters?: Readonly<Record<string, unknown>>) => Promise<unknown>;
  /** False once Firefox has gone. */
  readonly isOpen: () => boolean;
  readonly close: () => void;
}

interface Waiting {
  readonly answered: (result: unknown) => void;
  readonly refused: (error: Error) => void;
}

/** Comes in and waits for the greeting. */
export function comeIn(port: number): Promise<Marionette> {
  const socket = connect(port, '127.0.0.1');
  const waiting = new Map<number, Waiting>();
  let given = 0;
  let ended = false;
  const send: Marionette['send'] = (command, parameters = {}) =>
    new Promise((answered, refused) => {
      if (ended) return refused(new Error(`Firefox has gone before ${command}`));
      given += 1;
      waiting.set(given, { answered, refused });
      const text = JSON.stringify([0, given, command, parameters]);
      socket.write(`${String(Buffer.byteLength(text))}:${text}`);
    });
  return new Promise((open, closed) => {
    const take = (message: unknown): void => {
      // The greeting is the only message that is no answer.
      if (!Array.isArray(message)) return open({ send, isOpen: () => !ended, close: () => void socket.destroy() });
      const [, id, error, result]: readonly unknown[] = message;
      const asked = typeof id === 'number' ? waiting.get(id) : undefined;
      if (typeof id === 'number') waiting.delete(id);
      if (error === null) asked?.answered(result);
      else asked?.refused(new Error(JSON.stringify(error).slice(0, 600)));
    };
    socket.on('data', messagesTo(take));
    // A reset when Firefox ends is told by the closing, which follows it.
    socket.on('error', () => undefined);
    socket.on('close', () => {
      ended = true;
      const gone = new Error('Firefox has gone');
      closed(gone);
      for (const { refused } of waiting.values()) refused(gone);
    });
  });
}

/** Puts pieces together again: each message is its length in bytes, a colon, and JSON. */
function messagesTo(take: (message: unknown) => void): (piece: Buffer) => void {
  let kept = Buffer.alloc(0);
  return (piece) => {
    kept = Buffer.concat([kept, piece]);
    for (;;) {
      const colon = kept.indexOf(':');
      const end = colon + 1 + Number(kept.subarray(0, Math.max(colon, 0)).toString());
      if (colon < 0 || kept.length < end) return;
      const message: unknown = JSON.parse(kept.subarray(colon + 1, end).toString());
      kept = kept.subarray(end);
      take(message);
    }
  };
}
