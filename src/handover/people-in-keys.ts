// People who stand where a record says from whom a part came, to whom work went or where an old part is kept: a private seller has a name, a firm has a trade.
import type { Place } from '../problem/problem.ts';
import type { Records } from '../records/model.ts';
import type { PrivateValue } from './private-value.ts';

/** What stands in the place of such a name. */
const somebody = 'a private person';

/** Words by which firms, clubs and markets are known; common practice, and no list of firms. */
const trades =
  /\b(?:ltd|limited|plc|inc|llc|llp|gmbh|kg|ag|bv|sarl|srl|spa|ab|oy|co|company|corp|corporation|bros|brothers|sons|motors?|motorcycles?|cycles?|bikes?|spares?|parts?|scheme|shops?|stores?|works?|workshops?|garages?|engineers?|engineering|supply|supplies|suppliers?|services?|centres?|centers?|dealers?|agents?|agency|factors?|makers?|menders?|repairs?|breakers?|dismantlers?|autojumble|jumble|market|auctions?|auctioneers?|clubs?|museum|library|foundry|platers?|plating|chrome|chroming|coatings?|blasting|welding|machining|machinists?|reborers?|rebores?|reliners?|tyres?|tires?|wheels?|bearings?|seals?|gaskets?|chains?|pistons?|magnetos?|electrics|batteries|tools?|fasteners?|steel|metals|paints?|upholstery|trimmers?|school|college|council|office)\b/iu;

/** A word as names have them, or an initial with its point; not a unit such as `N·m`, and no small word. */
const word = String.raw`(?:\p{Lu}\.|\p{Lu}[\p{L}'’-]*\p{Ll}[\p{L}'’-]*)`;
const name = new RegExp(String.raw`(?<![\p{L}\p{N}·])${word}(?: ${word}){0,2}(?![\p{L}\p{N}·])`, 'u');
const small = /^(?:The|A|An|My|Our|His|Her|Their|From|By|At|In|On|Off|Old|New)\s+/u;

/**
 * The name of a person in what stands under `from` or `to`; undefined where none does, or where a trade is named. `known` are the
 * machine’s own words: its make stands in the names of many things.
 */
export function personNamed(text: string, known: ReadonlySet<string>): string | undefined {
  if (trades.test(text) || /^\d/u.test(text)) return undefined;
  const found = name.exec(text.replace(small, ''))?.[0];
  const words = (found ?? '').split(' ').filter((one) => !known.has(one.toLowerCase()));
  return found === undefined || words.every((one) => one.length < 3) ? undefined : found;
}

/** What is told of a single word that nothing stands beside: it is left out, and the owner, who reads the list, may let it go. */
const oneWord = 'one word, of a person or a firm;';

function isAlone(person: string, text: string | undefined): boolean {
  return !person.includes(' ') && text?.replace(small, '').trim() === person;
}

/** Each once, at its first place. */
export function peopleInKeys({ jobs, machine }: Records): readonly PrivateValue[] {
  const known = new Set([machine.make, machine.model, machine.name].flatMap((one) => one.toLowerCase().split(/\s+/u)));
  const said = jobs.flatMap((job): readonly (readonly [string | undefined, Place])[] => [
    ...job.parts.flatMap(({ from, originalKept, at }) => [[from, at] as const, [originalKept, at] as const]),
    ...job.work.map(({ verb, to, at }) => [verb === 'sent out' ? to : undefined, at] as const),
  ]);
  const found = new Map<string, PrivateValue>();
  for (const [text, at] of said) {
    const person = text === undefined ? undefined : personNamed(text, known);
    if (person !== undefined && !found.has(person))
      found.set(person, { what: isAlone(person, text) ? oneWord : 'a name', text: person, at, instead: somebody });
  }
  return [...found.values()];
}
