// Rules of what is drawn: everything lies in the structure or is furniture, in the greys that the colour space covers, with fonts of the page.
import { PDFArray, PDFRawStream, type PDFDocument, type PDFPage } from 'pdf-lib';
import { bytesOf, type Read } from './file-rules.ts';
import { piecesOf } from './structure-rules.ts';

/** Operators that draw; what they draw must be marked. */
const drawing = new Set(['f', 'f*', 'F', 'S', 's', 'b', 'B', 'b*', 'B*', 'Do', 'TJ', 'Tj', "'", '"']);
/** Operators that we have reason to use; any other is looked at by a person first. */
const usual = new Set([...drawing, ...'q Q cm w d J j M m l c h re n W g G BT ET Tm Tf Td Tr BDC BMC EMC'.split(' ')]);

export function contentFaults(document: PDFDocument, read: Read): readonly string[] {
  return document
    .getPages()
    .flatMap((page, index) => pageFaults(document, page, read).map((fault) => `${fault} on page ${String(index + 1)}`));
}

function pageFaults(document: PDFDocument, page: PDFPage, read: Read): readonly string[] {
  const found = new Set<string>();
  let open: 'content' | 'furniture' | undefined;
  let nested = 0;
  let deepest = 0;
  const marks: number[] = [];
  for (const line of operatorsOf(page, read)) {
    const operator = line.operator;
    if (!usual.has(operator)) found.add('an operator we do not use: ' + operator);
    if (operator === 'q') deepest = Math.max(deepest, (nested += 1));
    if (operator === 'Q') nested -= 1;
    if (operator === 'EMC') open = undefined;
    if (operator === 'BDC' || operator === 'BMC') {
      if (open !== undefined) found.add('one piece marked inside another');
      open = line.before.includes('/Artifact') ? 'furniture' : 'content';
      const mark = /\/MCID (\d+)/.exec(line.before)?.[1];
      if (mark !== undefined) marks.push(Number(mark));
    }
    if (drawing.has(operator) && open === undefined) found.add('drawn outside the structure: ' + operator);
  }
  if (nested !== 0 || deepest > 28) found.add('states not closed, or too deep');
  if (marks.some((mark, index) => mark !== index)) found.add('marks out of their order');
  const known = piecesOf(document, read, read.number(page.node, 'StructParents') ?? -1);
  if (known !== marks.length)
    found.add(`${String(marks.length)} pieces, of which the structure knows ${String(known)}`);
  return [...found];
}

interface Operator {
  readonly operator: string;
  readonly before: string;
}

/** The operators of a page with what stands before each; texts between parentheses are passed over whole, so that none can look like one. */
function operatorsOf(page: PDFPage, read: Read): readonly Operator[] {
  const contents = page.node.Contents();
  const parts = contents instanceof PDFArray ? contents.asArray().map((each) => read.at(each)) : [contents];
  const text = parts.map((part) => (part instanceof PDFRawStream ? bytesOf(part).toString('latin1') : '')).join('\n');
  const found: Operator[] = [];
  let before = '';
  const tokens = /\((?:\\[^]|[^\\()])*\)|<<.*?>>|<[0-9a-fA-F]*>|\[|\]|\/[^\s/<[\]>(]+|[^\s/<[\]>(]+/g;
  for (const token of text.match(tokens) ?? []) {
    if (/^[A-Za-z'"*]+\*?$/.test(token)) {
      found.push({ operator: token, before });
      before = '';
    } else before += ' ' + token;
  }
  return found;
}
