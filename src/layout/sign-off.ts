// The foot of a job sheet: what state the machine was left in, what comes next, whose hand, which day. It never has a page of its own.
import type { PlacedItem, Tag } from './placed.ts';
import { firm, half, small } from './scale.ts';
import { setLines } from './set-line.ts';
import { linesOf, under, type Setting } from './setting.ts';
import type { Slab } from './slab.ts';

const row = 28;
const between = 16;

interface Field {
  /** Its part of the blank's id. */
  readonly name: string;
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** So many lines or rows go with the foot, so that it never stands nearly alone. */
const company = 3;

/** The slabs with the foot after them; what stands last goes with it where the page has no room for both. `job` keeps what is written there. */
export function* signedOff(slabs: Iterable<Slab>, setting: Setting, job: string | undefined): Generator<Slab> {
  let last: Slab[] = [];
  for (const slab of slabs) {
    if (slab.begins !== undefined) {
      yield* last;
      yield slab;
      last = [];
      continue;
    }
    last.push(slab);
    if (last.length > company) yield* last.splice(0, 1);
  }
  yield* last.map((slab) => ({ ...slab, keep: true }));
  yield signOffSlab(setting, job);
}

/** Three lines; two or one where there is no room. */
function signOffSlab(setting: Setting, job: string | undefined): Slab {
  const whole = setting.width;
  const pair = (whole - between) / 2;
  const three = [
    { name: 'state-left-in', label: 'state left in', x: 0, y: 0, width: whole },
    { name: 'next', label: 'next', x: 0, y: row, width: whole },
    { name: 'hand', label: 'hand', x: 0, y: 2 * row, width: pair },
    { name: 'date', label: 'date', x: pair + between, y: 2 * row, width: pair },
  ];
  const two = [
    { name: 'state-left-in', label: 'state left in', x: 0, y: 0, width: pair },
    { name: 'next', label: 'next', x: pair + between, y: 0, width: pair },
    { name: 'hand', label: 'hand', x: 0, y: row, width: pair },
    { name: 'date', label: 'date', x: pair + between, y: row, width: pair },
  ];
  const fourth = (whole - 3 * between) / 4;
  const one = two.map((field, index) => ({ ...field, x: index * (fourth + between), y: 0, width: fourth }));
  return {
    ...footSlab(three, setting, job),
    shorter: { ...footSlab(two, setting, job), shorter: footSlab(one, setting, job) },
  };
}

function footSlab(fields: readonly Field[], setting: Setting, job: string | undefined): Slab {
  const tag = under(setting.section, 'P');
  const last = fields.reduce((most, field) => Math.max(most, field.y), 0);
  return {
    height: last + row + half,
    before: half,
    foot: true,
    draw: (x, y, out) => {
      for (const field of fields) {
        const rule = y + field.y + row;
        const label = linesOf(field.label, small, field.width, setting);
        setLines(label, { x: x + field.x, y: rule - small.leading - 1, width: field.width, tag }, out);
        const x2 = x + field.x + field.width;
        if (job !== undefined) out.push(fieldOf(field, job, x, rule, tag));
        out.push({ kind: 'line', x1: x + field.x, y1: rule, x2, y2: rule, weight: firm / 2 });
      }
    },
  };
}

/** From the label to the end of the line. */
function fieldOf({ name, label, ...at }: Field, job: string, x: number, rule: number, tag: Tag): PlacedItem {
  const beside = Math.min(at.width / 2, label.length * small.size * 0.5 + 6);
  const height = row - 8;
  const id = `${job}/foot/${name}`;
  return { kind: 'field', id, x: x + at.x + beside, y: rule - height, width: at.width - beside, height, tag };
}
