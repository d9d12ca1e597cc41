// One fastener under two names: a nut in the steps and a bolt in the book. Then the steps print a blank beside a torque that is known.
import type { Problem } from '../../problem/problem.ts';
import type { Procedure } from '../../records/content-model.ts';
import { appliesTo } from '../applies.ts';
import type { Ground } from '../ground.ts';
import { plainName } from '../names.ts';
import { workDone } from '../work-by-verb.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** What books call the same fastener by; the words beside them say where it sits. */
const kinds: ReadonlySet<string> = new Set(['nut', 'bolt', 'stud', 'screw', 'capscrew', 'setscrew']);

/** A name without its kind, in British words: `cylinder-head-bolts` and `cylinder-head-nut` meet in one; undefined where it names no kind. */
function placeOf({ content }: Ground): (name: string) => string | undefined {
  const british = new Map(content.words.map(({ uk, us }) => [us, uk]));
  return (name) => {
    const words = plainName(name).split(' ');
    const place = words.filter((word) => !kinds.has(word)).map((word) => british.get(word) ?? word);
    return place.length === words.length || place.length === 0 ? undefined : place.join(' ');
  };
}

/** What steps for this machine hold by, by id, with the first procedure that does. */
function namedInSteps({ content, records }: Ground): ReadonlyMap<string, Procedure> {
  const { features } = records.machine;
  const found = new Map<string, Procedure>();
  for (const procedure of content.procedures.values()) {
    if (!appliesTo(procedure.applies, features)) continue;
    for (const step of [...procedure.steps, ...procedure.assembly]) {
      if (!appliesTo(step.applies, features)) continue;
      for (const id of step.fasteners) if (!found.has(id)) found.set(id, procedure);
    }
  }
  return found;
}

/** The book against the steps: asked of what the steps do not know, where they know what the book does not. */
function bookAgainstSteps(ground: Ground, place: ReturnType<typeof placeOf>): readonly Problem[] {
  const inSteps = namedInSteps(ground);
  const keys = new Set([...inSteps.keys()].map(ground.key));
  const wanted = new Map<string, { readonly id: string; readonly title: string }>();
  for (const [id, { title }] of inSteps) {
    const where = ground.fasteners.has(ground.key(id)) ? undefined : place(id);
    if (where !== undefined && !wanted.has(where)) wanted.set(where, { id, title });
  }
  if (wanted.size === 0) return [];
  return ground.maker.fasteners.flatMap((fastener) => {
    const where = keys.has(ground.key(fastener.id)) ? undefined : place(fastener.id);
    const other = where === undefined ? undefined : wanted.get(where);
    if (other === undefined) return [];
    const message = `${fastener.name}: the book has it as ${fastener.id}, the steps of “${other.title}” as ${other.id}; the same fastener?`;
    const hint = `if it is, write \`id: ${other.id}\` in the book and keep its name; the records that name ${fastener.id} with it`;
    return [query('fastener-named-two-ways', fastener.at, message, hint)];
  });
}

/** A record against the book: in words of its owner it was loosened or tightened, and the book has its place with another kind. */
function recordsAgainstBook(ground: Ground, place: ReturnType<typeof placeOf>): readonly Problem[] {
  const inBook = new Map(ground.maker.fasteners.map((one) => [place(one.id), one]));
  const asked = new Set<string>();
  const done = [...workDone(ground, 'loosened'), ...workDone(ground, 'tightened')];
  return done.flatMap(({ entry }) => {
    const key = ground.key(entry.thing);
    if (asked.has(key) || ground.fasteners.has(key)) return [];
    asked.add(key);
    const where = place(entry.thing);
    const fastener = where === undefined ? undefined : inBook.get(where);
    if (fastener === undefined) return [];
    const message = `${entry.thing}: the book has ${fastener.name} (${fastener.id}) there; the same fastener?`;
    return [query('fastener-named-two-ways', entry.at, message, `if it is, write \`${entry.verb}: ${fastener.id}\``)];
  });
}

/** Both ways; nothing where the book has both. Linear in fasteners and records. */
export const fastenerNamedTwoWays: Look = ({ ground }) => {
  const place = placeOf(ground);
  return [...bookAgainstSteps(ground, place), ...recordsAgainstBook(ground, place)];
};
