// The seed of all random tests: always the same, so that a run says something of the change and nothing of luck; `npm run soak` takes others.

const usual = 20_240_917;

/** SPLITPIN_SEED, or the usual seed. */
export function seedOf(environment: NodeJS.ProcessEnv): number {
  const asked = environment['SPLITPIN_SEED'];
  if (asked === undefined || asked === '') return usual;
  const seed = Number(asked);
  if (!Number.isInteger(seed)) throw new Error(`SPLITPIN_SEED is no whole number: ${asked}`);
  return seed;
}
