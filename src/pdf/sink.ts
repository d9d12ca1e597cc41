// Bytes gathered into large pieces before they are handed on: one write a line would cost more than drawing it.

export interface Sink {
  readonly take: (chunk: Uint8Array) => void;
  /** Hands on what is left. */
  readonly end: () => void;
}

const most = 1 << 17;

export function sink(out: (chunk: Uint8Array) => void): Sink {
  let held: Uint8Array[] = [];
  let length = 0;
  const end = (): void => {
    if (length > 0) out(Buffer.concat(held, length));
    held = [];
    length = 0;
  };
  return {
    end,
    take: (chunk) => {
      held.push(chunk);
      length += chunk.length;
      if (length >= most) end();
    },
  };
}
