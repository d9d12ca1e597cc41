// One placed page drawn: items in their order, each run of one tag as one piece of marked content.
import type PDFDocument from 'pdfkit';
import type { PlacedItem, PlacedPage, Tag, TextItem } from '../layout/placed.ts';
import type { Destinations } from './destinations.ts';
import { itemOperators } from './draw-item.ts';
import type { FormFields } from './form-fields.ts';
import { extent } from './extent.ts';
import { drawPhoto, type PhotoAt } from './draw-photo.ts';
import { points } from './numbers.ts';
import { hexText, reserve, writeObject } from './objects.ts';
import { closePage, openPage, type OpenPage } from './open-page.ts';
import type { Structure } from './structure.ts';
import type { Total } from './total.ts';
import type { Typesetter } from './type.ts';

type Document = InstanceType<typeof PDFDocument>;

export interface Printing {
  readonly doc: Document;
  readonly type: Typesetter;
  readonly structure: Structure;
  readonly destinations: Destinations;
  readonly total: Total;
  readonly photo: PhotoAt;
  /** Number of the list of fonts that all pages share. */
  readonly fonts: number;
  /** Of a sheet that is printed as a form. */
  readonly fields?: FormFields;
}

/** Draws a page and lets go of it. */
export function drawPage(page: PlacedPage, printing: Printing): void {
  const { doc, structure } = printing;
  const sheet = openPage(doc, page.width, page.height);
  const key = structure.beginPage(sheet.self.id);
  // Downwards from the upper left corner, as in the layout.
  const parts: string[] = [`1 0 0 -1 0 ${points(page.height)} cm`, '0 g 0 G'];
  let tag: Tag | undefined;
  let open = false;
  const turn = (next: Tag | undefined): void => {
    if (open && next === tag) return;
    if (open) parts.push('EMC');
    parts.push(
      next === undefined ? '/Artifact BMC' : '/' + next.role + ' <</MCID ' + String(structure.mark(next)) + '>> BDC',
    );
    tag = next;
    open = true;
  };
  for (const item of page.items) {
    if (item.kind === 'anchor') printing.destinations.add(item, sheet);
    if ((item.kind === 'empty' || item.kind === 'field') && item.tag !== undefined) structure.touch(item.tag);
    if (item.kind === 'field' || item.kind === 'box') printing.fields?.place(item, sheet);
    if (item.kind === 'anchor' || item.kind === 'empty' || item.kind === 'field') continue;
    if (item.kind === 'text' && item.link !== undefined && item.tag !== undefined) {
      turn({ role: 'Link', parent: item.tag });
      if (tag !== undefined) annotate(item, item.link, tag, sheet, printing);
    } else {
      turn(item.tag);
    }
    if (item.tag?.role === 'Figure') takes(item, item.tag, page, structure);
    const operators = drawn(item, printing, sheet);
    if (operators !== '') parts.push(operators);
  }
  if (open) parts.push('EMC');
  closePage(doc, sheet, parts.join('\n'), key, printing.fonts);
  structure.endPage();
}

function takes(item: PlacedItem, tag: Tag, page: PlacedPage, structure: Structure): void {
  const part = extent(item);
  if (part !== undefined) structure.takes(tag, part, page.height);
}

function drawn(item: PlacedItem, printing: Printing, page: OpenPage): string {
  if (item.kind === 'photo') return drawPhoto(item, printing, page);
  if (item.kind === 'total') return printing.total.show(item, page);
  return itemOperators(item, printing.type);
}

/** A live place over a text that leads to another place of the same document. */
function annotate(item: TextItem, link: string, tag: Tag, page: OpenPage, printing: Printing): void {
  const top = page.height - item.y;
  const rectangle = [item.x, top - item.size * 0.25, item.x + item.width, top + item.size * 0.8];
  const annotation = reserve(printing.doc);
  const key = printing.structure.annotation(tag, annotation);
  page.annotations.push(annotation);
  writeObject(
    printing.doc,
    annotation,
    `<</Type/Annot/Subtype/Link/Rect[${rectangle.map(points).join(' ')}]/Border[0 0 0]/F 4` +
      `/Contents${hexText('Go to ' + item.text.trim())}/Dest ${printing.destinations.name(link)}/StructParent ${String(key)}>>`,
  );
}
