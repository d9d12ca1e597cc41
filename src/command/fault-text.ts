// A fault of this program with all that lies behind it, for whoever reports it.

/** The stack of an error and of the errors that it was made from. */
export function faultText(cause: unknown): string {
  if (!(cause instanceof Error)) return String(cause);
  const own = cause.stack ?? cause.message;
  // The site generator keeps the first error under a name of its own.
  const inner: unknown = cause.cause ?? Reflect.get(cause, 'originalError');
  return inner === undefined || inner === null ? own : own + '\nbecause of\n' + faultText(inner);
}
