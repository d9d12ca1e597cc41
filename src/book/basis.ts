// A series begins again when the part is renewed: by a repair that changes the data, a part fitted, a replacement.
import { keptWith } from '../records/kept-with.ts';
import type { Job, Limit, Repair } from '../records/model.ts';
import type { Namer } from './names.ts';

export interface Renewal {
  /** Key of the item whose series begins again. */
  readonly item: string;
  readonly what: string;
  readonly repair?: Repair;
}

const places = new Set([
  'left',
  'right',
  'front',
  'rear',
  'inner',
  'outer',
  'upper',
  'lower',
  'primary',
  'ignition',
  'standard',
  'new',
]);

/** `piston +0.50 left` is a piston: words for place and size are dropped from the end. */
export function shorter(key: string): string | undefined {
  const cut = key.lastIndexOf(' ');
  if (cut === -1) return undefined;
  const last = key.slice(cut + 1);
  return places.has(last) || /^[+\d]/u.test(last) ? key.slice(0, cut) : undefined;
}

export type ByPart = ReadonlyMap<string, readonly string[]>;

/** What compression hangs on, whichever of them the book measures it on: any of them renewed, and it begins again. */
const holdCompression = [
  'rings',
  'piston rings',
  'piston',
  'barrel',
  'cylinder',
  'valves',
  'inlet valve',
  'exhaust valve',
];

/** Which measured items a part carries: by the item's own name and by the part it is measured on. */
export const itemsByPart = keptWith((limits: ReadonlyMap<string, Limit>, key: Namer): ByPart => {
  const found = new Map<string, string[]>();
  for (const [item, limit] of limits) {
    const held = limit.unit.dimension === 'gauge pressure' && /\bcompression\b/u.test(item) ? holdCompression : [];
    const parts = [item, ...(limit.of === undefined ? [] : [key(limit.of)]), ...held.map(key)];
    for (const part of new Set(parts)) {
      const items = found.get(part) ?? [];
      items.push(item);
      found.set(part, items);
    }
  }
  return found;
});

function itemsOf(part: string, byPart: ByPart): readonly string[] {
  for (let name: string | undefined = part; name !== undefined; name = shorter(name)) {
    const items = byPart.get(name);
    if (items !== undefined) return items;
  }
  return [];
}

/** The parts a record renewed, by key, with the name as it was written. */
function renewedBy(job: Job, key: Namer): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const add = (part: string): void => {
    if (!found.has(key(part))) found.set(key(part), part);
  };
  for (const part of job.parts) if (part.state === 'fitted') add(part.part);
  for (const entry of job.work) if (entry.verb === 'replaced') add(entry.thing);
  return found;
}

/** What a record renewed, each with the words to print where the series begins again. */
export const renewals = keptWith((job: Job, key: Namer, byPart: ByPart): readonly Renewal[] => {
  const found: Renewal[] = job.repairs.map((repair) => ({ item: key(repair.of), what: repair.now, repair }));
  for (const [part, name] of renewedBy(job, key)) {
    for (const item of itemsOf(part, byPart)) {
      if (!found.some((one) => one.item === item)) found.push({ item, what: `${name} fitted` });
    }
  }
  return found;
});
