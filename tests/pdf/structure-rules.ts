// Rules of the reading structure: known roles, headings without a gap, tables whose rows are of one length, figures told in words, live places named.
import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRef, type PDFDocument, type PDFObject } from 'pdf-lib';
import type { Read } from './file-rules.ts';

const inside: Readonly<Record<string, readonly string[]>> = {
  Table: ['TR', 'Caption'],
  TR: ['TH', 'TD'],
  L: ['LI', 'Caption'],
  LI: ['Lbl', 'LBody'],
};
const known = new Set(
  'Document Sect H1 H2 H3 H4 H5 P BlockQuote L LI Lbl LBody Table TR TH TD Caption Figure Link Form'.split(' '),
);

interface Element {
  readonly role: string;
  readonly dict: PDFDict;
  readonly children: readonly Element[];
  readonly marks: number;
  readonly objects: readonly PDFDict[];
}

export function structureFaults(document: PDFDocument, read: Read): readonly string[] {
  const root = read.dict(document.catalog, 'StructTreeRoot');
  if (root === undefined) return ['there is no reading structure'];
  const tops = kidsOf(root, read).flatMap((kid) => elementOf(kid, read) ?? []);
  const all = tops.flatMap(every);
  const headings = all.flatMap(({ role }) => (/^H\d$/.test(role) ? [Number(role.slice(1))] : []));
  return [
    ...(tops.length === 1 && tops[0]?.role === 'Document' ? [] : ['the structure is not one document']),
    ...all.flatMap((element) => elementFaults(element, read)),
    ...headings.flatMap((level, index) =>
      level > (headings[index - 1] ?? 0) + 1
        ? [`heading ${String(level)} after ${String(headings[index - 1] ?? 0)}`]
        : [],
    ),
    ...annotationFaults(document, read, all),
  ];
}

function kidsOf(dict: PDFDict, read: Read): readonly PDFObject[] {
  const kids = read.at(dict.get(PDFName.of('K')));
  if (kids instanceof PDFArray) return kids.asArray();
  return kids === undefined ? [] : [kids];
}

function elementOf(kid: PDFObject, read: Read): Element | undefined {
  const dict = read.at(kid);
  if (!(dict instanceof PDFDict) || dict.get(PDFName.of('S')) === undefined) return undefined;
  const kids = kidsOf(dict, read);
  const children = kids.flatMap((each) => elementOf(each, read) ?? []);
  const objects = kids.flatMap((each) => {
    const found = read.at(each);
    return found instanceof PDFDict && read.text(found, 'Type') === 'OBJR' ? (read.dict(found, 'Obj') ?? []) : [];
  });
  const marks = kids.filter((each) => {
    const found = read.at(each);
    return found instanceof PDFNumber || (found instanceof PDFDict && read.text(found, 'Type') === 'MCR');
  }).length;
  return { role: read.text(dict, 'S') ?? '', dict, children, marks, objects };
}

function every(element: Element): readonly Element[] {
  return [element, ...element.children.flatMap(every)];
}

function elementFaults({ role, dict, children, marks, objects }: Element, read: Read): readonly string[] {
  const found: string[] = [];
  if (!known.has(role)) found.push('a role that is not of the standard: ' + role);
  const allowed = inside[role];
  for (const child of children)
    if (allowed !== undefined && !allowed.includes(child.role)) found.push(`${child.role} in ${role}`);
  if (allowed !== undefined && marks > 0) found.push(`${role} holds text of its own`);
  if (role === 'Figure' && (read.text(dict, 'Alt') ?? '').trim() === '') found.push('a figure without words');
  if (role === 'Figure' && !hasRoom(read.array(read.dict(dict, 'A'), 'BBox')))
    found.push('a figure that takes no room');
  if (role === 'TH' && read.text(read.dict(dict, 'A'), 'Scope') === undefined) found.push('a head that heads nothing');
  if (role === 'Link' && objects.length === 0) found.push('a link without a live place');
  if (role === 'Table') found.push(...tableFaults(children, read));
  return found;
}

/** Four numbers: left, bottom, right, top. */
function hasRoom(box: readonly PDFObject[]): boolean {
  const [left = 0, bottom = 0, right = 0, top = 0] = box.map((side) =>
    side instanceof PDFNumber ? side.asNumber() : 0,
  );
  return box.length === 4 && right - left > 1 && top - bottom > 1;
}

/** Rows of one length, and at least one head. */
function tableFaults(children: readonly Element[], read: Read): readonly string[] {
  const rows = children.filter(({ role }) => role === 'TR');
  const widths = new Set(
    rows.map((row) =>
      row.children.reduce((sum, cell) => sum + (read.number(read.dict(cell.dict, 'A'), 'ColSpan') ?? 1), 0),
    ),
  );
  const heads = rows.flatMap((row) => row.children).filter(({ role }) => role === 'TH');
  return [
    ...(widths.size === 1 ? [] : ['a table whose rows are of ' + [...widths].join(', ') + ' columns']),
    ...(heads.length > 0 ? [] : ['a table without a head']),
  ];
}

/** Every live place is shown when printed, is named, and is found from both sides. */
function annotationFaults(document: PDFDocument, read: Read, all: readonly Element[]): readonly string[] {
  const byKey = parentTree(document, read);
  const named = new Set(all.flatMap(({ objects }) => objects));
  return document.getPages().flatMap((page, index) => {
    const found: string[] = [];
    const where = ' on page ' + String(index + 1);
    if (read.text(page.node, 'Tabs') !== 'S') found.push('reading order not that of the structure' + where);
    if (read.number(page.node, 'StructParents') === undefined) found.push('no structure' + where);
    for (const each of read.array(page.node, 'Annots')) {
      const annotation = read.at(each);
      if (!(annotation instanceof PDFDict)) continue;
      const kind = read.text(annotation, 'Subtype');
      const words = read.text(annotation, kind === 'Widget' ? 'TU' : 'Contents') ?? '';
      const parent = byKey.get(read.number(annotation, 'StructParent') ?? -1);
      const flags = read.number(annotation, 'F') ?? 0;
      if (kind !== 'Link' && kind !== 'Widget') found.push(`a live place of the kind ${kind ?? 'none'}${where}`);
      if (words.trim() === '') found.push('a live place without words' + where);
      if ((flags & 4) === 0 || (flags & 0b100011) !== 0) found.push('a live place that does not print' + where);
      if (read.text(parent, 'S') !== (kind === 'Widget' ? 'Form' : 'Link'))
        found.push('a live place outside the structure' + where);
      if (!named.has(annotation)) found.push('a live place that the structure does not name' + where);
      if (kind === 'Widget' && read.dict(annotation, 'AP') === undefined)
        found.push('a field without a drawing' + where);
    }
    return found;
  });
}

/** What each key of the parent tree leads to: an element, or for a page nothing here. */
export function parentTree(document: PDFDocument, read: Read): ReadonlyMap<number, PDFDict | undefined> {
  const pairs = read.array(read.dict(read.dict(document.catalog, 'StructTreeRoot'), 'ParentTree'), 'Nums');
  const found = new Map<number, PDFDict | undefined>();
  for (let at = 0; at + 1 < pairs.length; at += 2) {
    const key = pairs[at];
    const value = read.at(pairs[at + 1]);
    if (key instanceof PDFNumber) found.set(key.asNumber(), value instanceof PDFDict ? value : undefined);
  }
  return found;
}

/** How many pieces of a page the parent tree knows. */
export function piecesOf(document: PDFDocument, read: Read, key: number): number {
  const pairs = read.array(read.dict(read.dict(document.catalog, 'StructTreeRoot'), 'ParentTree'), 'Nums');
  const at = pairs.findIndex((each, index) => index % 2 === 0 && each instanceof PDFNumber && each.asNumber() === key);
  const list = read.at(pairs[at + 1]);
  return list instanceof PDFArray ? list.asArray().filter((each) => each instanceof PDFRef).length : -1;
}
