// Schema of what stands around the records: the workshop they are worked in, and what came from a former owner.
import { day, list, object, ref, text, whole, type Schema } from './schema-parts.ts';

const place = ref('place');
const money = ref('money');
const texts = list(text);

export const aroundParts: Readonly<Record<string, Schema>> = {
  adopted: object(
    {
      date: day,
      records: list(object({ file: text, hash: text, at: place })),
      photos: list(object({ file: text, hash: text, at: place })),
      before: list(object({ date: day, at: place }, { fingerprint: text })),
    },
    { fingerprint: text },
  ),
  workshop: object({
    suppliers: list(
      object(
        {
          name: text,
          hours: list(object({ days: texts, spans: list(object({ from: whole, to: whole })), text })),
          at: place,
        },
        { leadDays: whole, note: text },
      ),
    ),
    stock: list(object({ part: text, at: place }, { number: text, count: whole })),
    shared: list(
      object({
        paid: money,
        date: day,
        for: text,
        group: text,
        between: list(object({ machine: text, shares: whole })),
        at: place,
      }),
    ),
  }),
};
