// The fields of a form, gathered page by page where the sheet has its boxes, and written at the end, in the printed order.
import type PDFDocument from 'pdfkit';
import type { BoxItem, FieldItem, Tag } from '../layout/placed.ts';
import { carrierName, fieldName, type Form, type FormField } from './form.ts';
import { formFont, formFontName } from './form-font.ts';
import { textLook, tickLook } from './form-look.ts';
import type { OpenPage } from './open-page.ts';
import { pdfText, type Structure } from './structure.ts';
import type { Typesetter } from './type.ts';

type Document = InstanceType<typeof PDFDocument>;
type Reference = PDFKit.PDFKitReference;

export interface FormFields {
  /** Puts a field where the box stands, if the form has one for it. */
  readonly place: (item: BoxItem | FieldItem, page: OpenPage) => void;
  /** Writes all fields and the form itself. */
  readonly end: () => void;
}

interface Widget {
  readonly item: BoxItem | FieldItem;
  readonly data: Record<string, unknown>;
  readonly reference: Reference;
}
interface Making {
  readonly doc: Document;
  readonly type: Typesetter;
}

const noSpelling = 1 << 22;
const readOnly = 1;
/** Annotation flag: printed. */
const printed = 4;

export function formFields(doc: Document, form: Form, structure: Structure, type: Typesetter): FormFields {
  const placed = new Map<string, Widget[]>();
  let carrier: Reference | undefined;
  return {
    place: (item, page) => {
      if (item.id === undefined || item.tag === undefined || form.field(item.id) === undefined) return;
      const data: Record<string, unknown> = {
        Type: 'Annot',
        Subtype: 'Widget',
        Rect: [item.x, page.height - item.y - item.height, item.x + item.width, page.height - item.y],
        F: printed,
        P: page.self,
      };
      const reference = doc.ref(data);
      data['StructParent'] = structure.annotation({ role: 'Form', parent: item.tag }, reference.id);
      page.annotations.push(reference.id);
      placed.set(item.id, [...(placed.get(item.id) ?? []), { item, data, reference }]);
      if (carrier !== undefined) return;
      carrier = carrierField(doc, form.carries, item.tag, structure, page);
      page.annotations.push(carrier.id);
    },
    end: () => {
      if (carrier === undefined) return;
      const making = { doc, type };
      const fields = [...placed].map(([id, widgets]) => writeField(id, form.field(id), widgets, making));
      // The library ends the form, and fields with several places, when the document ends; it asks for the form's fonts then.
      Object.assign(doc, { _acroform: { fonts: { [formFontName]: formFont(doc) } } });
      doc._root.data['AcroForm'] = doc.ref({
        Fields: [carrier, ...fields],
        NeedAppearances: false,
        DA: pdfText(appearance),
        DR: { Font: {} },
      });
    },
  };
}

/** Size 0: as large as fits. */
const appearance = `/${formFontName} 0 Tf 0 g`;

/**
 * A text that takes no room and that nobody can change, which every program that saves the form saves with it. It is not marked as hidden:
 * archives allow no such mark (ISO 19005-3, 6.3.2).
 */
function carrierField(
  doc: Document,
  carries: Form['carries'],
  beside: Tag,
  structure: Structure,
  page: OpenPage,
): Reference {
  const nothing = doc.ref({ Type: 'XObject', Subtype: 'Form', BBox: [0, 0, 0, 0] });
  nothing.end('/Tx BMC EMC');
  const data: Record<string, unknown> = {
    Type: 'Annot',
    Subtype: 'Widget',
    FT: 'Tx',
    T: pdfText(carrierName),
    TU: pdfText('which machine, job and sheet this form is of'),
    V: pdfText(JSON.stringify(carries)),
    Ff: readOnly,
    F: printed,
    Rect: [0, 0, 0, 0],
    DA: pdfText(appearance),
    AP: { N: nothing },
    P: page.self,
  };
  const field = doc.ref(data);
  data['StructParent'] = structure.annotation({ role: 'Form', parent: beside }, field.id);
  field.end(undefined);
  return field;
}

/** One field; where its blank stands twice on the sheet, with two places to fill it in. */
function writeField(
  id: string,
  field: FormField | undefined,
  widgets: readonly Widget[],
  making: Making,
): Reference | undefined {
  if (field === undefined) return undefined;
  const about = { ...fieldData(field), T: pdfText(fieldName(id)), TU: pdfText(field.asks) };
  const [only, second] = widgets;
  if (only !== undefined && second === undefined) {
    writeWidget(only, field, about, making);
    return only.reference;
  }
  const whole = making.doc.ref({ ...about, Kids: widgets.map(({ reference }) => reference) });
  for (const widget of widgets) writeWidget(widget, field, { Parent: whole, TU: pdfText(field.asks) }, making);
  return whole;
}

function fieldData(field: FormField): Record<string, unknown> {
  if (field.kind === 'tick') {
    const value = field.given === 'yes' ? 'Yes' : 'Off';
    return { FT: 'Btn', V: value, DV: value };
  }
  const given = field.given ?? '';
  return { FT: 'Tx', Ff: noSpelling, DA: pdfText(appearance), V: pdfText(given), DV: pdfText(given) };
}

function writeWidget(
  { item, data, reference }: Widget,
  field: FormField,
  more: Record<string, unknown>,
  { doc, type }: Making,
): void {
  const look = (operators: string): Reference => {
    const fonts = [...type.fonts].map(([name, font]) => [name, font.reference] as const);
    const drawing = doc.ref({
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [0, 0, item.width, item.height],
      Resources: { Font: Object.fromEntries(fonts) },
    });
    drawing.end(operators);
    return drawing;
  };
  if (field.kind === 'tick') {
    const states = { Yes: look(tickLook(true, item)), Off: look(tickLook(false, item)) };
    Object.assign(data, more, { AS: field.given === 'yes' ? 'Yes' : 'Off', AP: { N: states } });
  } else {
    const centred = item.kind === 'box';
    const drawn = textLook(field.given ?? '', item, centred, type);
    Object.assign(data, more, { AP: { N: look(drawn) }, ...(centred ? { Q: 1 } : {}) });
  }
  reference.end(undefined);
}
