// Whether a thing of content is for this machine, by its features.
import type { Applies } from '../records/content-model.ts';
import type { Features } from '../records/model.ts';

/** The words a feature may be named by in `applies`. */
function wordsOf(features: Features, key: string): readonly string[] {
  const value = Object.entries(features).find(([name]) => name === key)?.[1];
  if (key === 'cylinders') return [features.cylinders === 1 ? 'one' : 'more', String(features.cylinders)];
  if (key === 'volts') return features.volts === undefined ? ['none'] : [features.volts.text];
  if (typeof value === 'boolean') return [value ? 'yes' : 'no'];
  if (typeof value === 'string') return [value];
  return [];
}

/** The first key of `applies` that keeps a thing off this machine, with what the machine has; undefined when it applies. */
export function notFor(
  applies: Applies,
  features: Features,
): { readonly key: string; readonly has: string } | undefined {
  for (const [key, wanted] of Object.entries(applies)) {
    // What nobody has looked at, or said, may be of any kind: nothing is left out because of it.
    if (features.notKnown?.includes(key) === true) continue;
    const has = wordsOf(features, key);
    if (has.length === 0) continue;
    if (wanted !== undefined && !has.some((word) => wanted.includes(word))) return { key, has: has[0] ?? 'not known' };
  }
  return undefined;
}

/** True when nothing in `applies` speaks against this machine. */
export function appliesTo(applies: Applies, features: Features): boolean {
  return notFor(applies, features) === undefined;
}

const spoken: Readonly<Record<string, string>> = {
  frontBrake: 'front brake',
  rearBrake: 'rear brake',
  finalDrive: 'final drive',
};

/** A feature's name as its key is written: `front brake`. */
export function spacedKey(name: string): string {
  return spoken[name] ?? name;
}

/** `this machine: ignition magneto` — why a check or a step is not for this machine. */
export function whyNotFor(applies: Applies, features: Features): string | undefined {
  const against = notFor(applies, features);
  if (against === undefined) return undefined;
  return `this machine: ${spacedKey(against.key)} ${against.has}`;
}
