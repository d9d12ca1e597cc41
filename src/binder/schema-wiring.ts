// Schema of what wiring.yaml says: wires, runs, earths.
import { day, list, object, ref, text, type Schema } from './schema-parts.ts';

const place = ref('place');
const measure = ref('measure');

export const wiringParts: Readonly<Record<string, Schema>> = {
  wiring: object(
    {
      wires: list(
        object(
          { id: text, colours: text, from: text, to: text, at: place },
          { circuit: text, connector: text, through: measure, photo: text, note: text },
        ),
      ),
      runs: list(object({ id: text, name: text, way: text, at: place }, { clips: text, photo: text, note: text })),
      earths: list(object({ id: text, name: text, on: text, at: place }, { drop: measure })),
    },
    { read: day },
  ),
};
