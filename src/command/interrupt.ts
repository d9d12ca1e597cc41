// Ctrl+C and a polite kill: half-made folders are cleared away before the process ends.

const numbers = { SIGINT: 2, SIGTERM: 15, SIGHUP: 1 } as const;

/** Calls `clear` when the process is interrupted; the function that is given back ends the watch. */
export function onInterrupt(clear: () => void): () => void {
  const handlers = Object.entries(numbers).map(([signal, number]) => {
    const handler = (): void => {
      clear();
      // As a shell counts it: 128 and the number of the signal.
      process.exit(128 + number);
    };
    process.on(signal, handler);
    return { signal, handler };
  });
  return () => {
    for (const { signal, handler } of handlers) process.off(signal, handler);
  };
}

/** Waits until the process is interrupted. */
export async function interrupted(): Promise<void> {
  await new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => done());
  });
}
