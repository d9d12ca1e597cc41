// Fields out of the bytes of a PDF, whoever saved it. Nothing in the file is run, drawn or followed outside.
import {
  PDFArray,
  PDFDict,
  PDFHexString,
  PDFName,
  PDFParser,
  PDFRef,
  PDFString,
  type PDFContext,
  type PDFObject,
} from 'pdf-lib';
import { carrierName } from '../../pdf/form.ts';
import type { FilledField, FormReading } from './filled-form.ts';

/** A form has hundreds of fields, a few deep. */
const mostFields = 20_000;
const deepest = 24;
/** What one blank can hold; more is no answer. */
const longest = 4_000;

interface Inherited {
  readonly name: string;
  readonly type?: string;
  readonly value?: PDFObject;
  readonly before?: PDFObject;
}

/** Reads a form. A file that is none, or cannot be read, gives a fault and never throws. */
export async function readForm(bytes: Uint8Array): Promise<FormReading> {
  const head = Buffer.from(bytes.subarray(0, 1024)).toString('latin1');
  if (!head.includes('%PDF-')) return { fault: 'not a PDF' };
  // A file that was cut has lost what was added last, which is what was typed.
  const tail = Buffer.from(bytes.subarray(-8192)).toString('latin1');
  if (!tail.includes('%%EOF')) return { fault: 'damaged' };
  try {
    const context = await PDFParser.forBytesWithOptions(bytes, Number.MAX_SAFE_INTEGER, false, false).parseDocument();
    return fieldsOf(context);
  } catch {
    return { fault: 'damaged' };
  }
}

function fieldsOf(context: PDFContext): FormReading {
  if (context.trailerInfo.Encrypt !== undefined) return { fault: 'locked' };
  const root = context.lookup(context.trailerInfo.Root);
  if (!(root instanceof PDFDict)) return { fault: 'damaged' };
  const form = get(root, 'AcroForm');
  if (form instanceof PDFDict && get(form, 'XFA') !== undefined) return { fault: 'other kind of form' };
  const found = new Map<string, FilledField>();
  const listed = form instanceof PDFDict ? get(form, 'Fields') : undefined;
  const seen = new Set<PDFDict>();
  if (listed instanceof PDFArray)
    for (const field of dictsIn(listed)) walk(field, { name: '' }, { found, seen, depth: 0 });
  // Some programs lose the list and keep the fields on their pages.
  if (found.size === 0) {
    for (const [, object] of context.enumerateIndirectObjects())
      if (object instanceof PDFDict && nameOf(get(object, 'Subtype')) === 'Widget')
        walk(object, aboveOf(object), { found, seen, depth: 0 });
  }
  if (found.size === 0) return { fault: 'no fields' };
  const carrier = found.get(carrierName);
  found.delete(carrierName);
  return { fields: [...found.values()], ...(carrier === undefined ? {} : { carries: carrier.value }) };
}

interface Walk {
  readonly found: Map<string, FilledField>;
  readonly seen: Set<PDFDict>;
  readonly depth: number;
}

/** A field and what is below it. Parts of a name are joined by full stops, as the standard says. */
function walk(dict: PDFDict, above: Inherited, at: Walk): void {
  if (at.seen.has(dict) || at.depth > deepest || at.found.size >= mostFields) return;
  at.seen.add(dict);
  const here = inherit(dict, above);
  const kids = get(dict, 'Kids');
  const below = kids instanceof PDFArray ? dictsIn(kids) : [];
  const named = below.filter((kid) => get(kid, 'T') !== undefined);
  for (const kid of named) walk(kid, here, { ...at, depth: at.depth + 1 });
  if (named.length > 0 || here.name === '') return;
  const places = below.length > 0 ? below : [dict];
  const field = fieldOf(here, places);
  if (field !== undefined && !at.found.has(field.name)) at.found.set(field.name, field);
}

function inherit(dict: PDFDict, above: Inherited): Inherited {
  const part = textOf(get(dict, 'T'));
  const type = nameOf(get(dict, 'FT')) ?? above.type;
  const value = get(dict, 'V') ?? above.value;
  const before = get(dict, 'DV') ?? above.before;
  return {
    name: part === undefined ? above.name : above.name === '' ? part : above.name + '.' + part,
    ...(type === undefined ? {} : { type }),
    ...(value === undefined ? {} : { value }),
    ...(before === undefined ? {} : { before }),
  };
}

/** What a place on a page has from the field above it, when it is met without going through that. */
function aboveOf(dict: PDFDict): Inherited {
  const parent = get(dict, 'Parent');
  return parent instanceof PDFDict && get(dict, 'T') === undefined ? inherit(parent, { name: '' }) : { name: '' };
}

function fieldOf({ name, type, value, before }: Inherited, places: readonly PDFDict[]): FilledField | undefined {
  if (type === 'Btn') {
    const ticked = value === undefined ? places.some((place) => isOn(get(place, 'AS'))) : isOn(value);
    return {
      name,
      kind: 'tick',
      value: ticked ? 'yes' : '',
      ...(before === undefined ? {} : { before: isOn(before) ? 'yes' : '' }),
    };
  }
  if (type !== 'Tx' && type !== 'Ch') return undefined;
  const printed = textOf(before);
  return {
    name,
    kind: 'text',
    value: textOf(value) ?? '',
    ...(printed === undefined ? {} : { before: printed }),
  };
}

/** A tick is on in any name but the one for off. */
function isOn(object: PDFObject | undefined): boolean {
  const name = nameOf(object) ?? textOf(object);
  return name !== undefined && name !== 'Off' && name !== '';
}

/** An entry of a dictionary, whatever stands between; undefined when there is none or it leads nowhere. */
function get(dict: PDFDict, key: string): PDFObject | undefined {
  let object: PDFObject | undefined = dict.get(PDFName.of(key));
  for (let step = 0; object instanceof PDFRef && step < deepest; step += 1) object = dict.context.lookup(object);
  return object instanceof PDFRef ? undefined : object;
}

function dictsIn(list: PDFArray): readonly PDFDict[] {
  const count = Math.min(list.size(), mostFields);
  return Array.from({ length: count }, (_, index) => list.lookup(index)).filter((one) => one instanceof PDFDict);
}

function nameOf(object: PDFObject | undefined): string | undefined {
  return object instanceof PDFName ? object.decodeText() : undefined;
}

/** A text on one line, without what cannot be seen. */
function textOf(object: PDFObject | undefined): string | undefined {
  if (!(object instanceof PDFString || object instanceof PDFHexString)) return undefined;
  const text = object.decodeText().slice(0, longest);
  return text.replaceAll(/[\p{Cc}\u2028\u2029]+/gu, ' ').trim();
}
