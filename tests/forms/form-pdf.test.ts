// The printed form: a field for every blank, in printed order, that says what is asked and can be seen and typed into anywhere.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFRef, PDFString } from 'pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askedInWords } from '../../src/command/sheet-form.ts';
import { blankOfField, carrierName, fieldName } from '../../src/pdf/form.ts';
import { everyNode, openPdf, structureOf } from '../pdf/read-pdf.ts';
import { fieldsIn, filled, jobForms, machines, type JobForm } from './job-forms.ts';

const hasQpdf = spawnSync('qpdf', ['--version']).status === 0;
const hasPoppler = spawnSync('pdftotext', ['-v']).status === 0;
if (!hasQpdf || !hasPoppler)
  console.warn('SKIPPED: forms were not looked at with qpdf or poppler, which are not installed.');

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'splitpin-form-pdf-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(tool: string, ...words: readonly string[]): string {
  const ran = spawnSync(tool, words, { encoding: 'utf8' });
  return ran.status === 0 ? ran.stdout : `${tool} says: ${ran.stderr}${ran.stdout}`;
}

/** Places on the pages, in the order of the pages' own lists. */
async function placesIn(bytes: Uint8Array): Promise<readonly PDFDict[]> {
  const document = await PDFDocument.load(bytes);
  return document.getPages().flatMap((page) =>
    (page.node.Annots()?.asArray() ?? []).flatMap((one) => {
      const dict = one instanceof PDFRef ? document.context.lookup(one) : one;
      return dict instanceof PDFDict && dict.get(PDFName.of('Subtype')) === PDFName.of('Widget') ? [dict] : [];
    }),
  );
}

function text(dict: PDFDict, key: string): string | undefined {
  const found = dict.lookup(PDFName.of(key));
  return found instanceof PDFString || found instanceof PDFHexString ? found.decodeText() : undefined;
}

/** The value of a field as the other library gives it. */
function valueIn(field: unknown): unknown {
  return typeof field === 'object' && field !== null && 'value' in field ? field.value : undefined;
}

describe.each(machines)('%s', (machine) => {
  let forms: readonly JobForm[];
  beforeAll(async () => {
    forms = await jobForms(machine);
  });

  it('has a field for every blank of every sheet of a job, by its id, in the printed order', async () => {
    expect(forms.length).toBeGreaterThan(0);
    for (const { bytes, blanks, sheet } of forms) {
      const names = (await fieldsIn(bytes)).map(blankOfField);
      expect(names, sheet.id).toEqual(blanks.map(({ id }) => id));
      const onPages = (await placesIn(bytes)).flatMap((place) => text(place, 'T') ?? []);
      expect(onPages.filter((name) => name !== carrierName).map(blankOfField), sheet.id).toEqual(names);
    }
  });

  it('reads out item, unit and limit; carries a look of its own for each state, and its place in the reading order', async () => {
    for (const { bytes, blanks, sheet } of forms) {
      const byId = new Map(blanks.map((blank) => [fieldName(blank.id), blank]));
      for (const place of await placesIn(bytes)) {
        const blank = byId.get(text(place, 'T') ?? '');
        if (text(place, 'T') === carrierName) continue;
        expect(blank).toBeDefined();
        if (blank === undefined) continue;
        const asked = text(place, 'TU') ?? '';
        expect(asked).toBe(askedInWords(blank));
        for (const part of [blank.asks, blank.unit ?? '', blank.limit ?? '', blank.caution?.text ?? ''])
          expect(asked).toContain(part);
        const looks = place.lookup(PDFName.of('AP'), PDFDict).lookup(PDFName.of('N'));
        expect(looks).toBeDefined();
        if (blank.kind === 'tick' && looks instanceof PDFDict)
          expect(
            looks
              .keys()
              .map((key) => key.decodeText())
              .toSorted(),
          ).toEqual(['Off', 'Yes']);
        expect(place.get(PDFName.of('StructParent'))).toBeDefined();
      }
      const { context } = await PDFDocument.load(bytes);
      const elements = context.enumerateIndirectObjects().flatMap(([, one]) => (one instanceof PDFDict ? [one] : []));
      const forms = elements.filter((one) => one.get(PDFName.of('S')) === PDFName.of('Form'));
      // One for each blank, and one for the field that says what the form is of.
      expect(forms.length, sheet.id).toBe(blanks.length + 1);
      const document = await openPdf(bytes);
      const seen = new Set<string>();
      for (let page = 1; page <= document.numPages; page += 1)
        for (const { role } of everyNode(await structureOf(document, page))) seen.add(role);
      await document.destroy();
      expect([...seen]).toContain('Form');
    }
  });

  it('asks no viewer to draw anything anew, and brings its font along', async () => {
    for (const { bytes } of forms) {
      const document = await PDFDocument.load(bytes);
      const form = document.catalog.lookup(PDFName.of('AcroForm'), PDFDict);
      expect(String(form.get(PDFName.of('NeedAppearances')))).toBe('false');
      const fonts = form.lookup(PDFName.of('DR'), PDFDict).lookup(PDFName.of('Font'), PDFDict);
      const font = fonts.lookup(PDFName.of('SpText'), PDFDict);
      const about = font.lookup(PDFName.of('FontDescriptor'), PDFDict);
      expect(about.get(PDFName.of('FontFile2'))).toBeDefined();
      expect(font.lookup(PDFName.of('Widths'), PDFArray).size()).toBe(224);
    }
  });

  it('is the same to the byte each time', async () => {
    const again = await jobForms(machine);
    expect(again.map(({ bytes }) => bytes.toString('base64'))).toEqual(
      forms.map(({ bytes }) => bytes.toString('base64')),
    );
  });

  it('filled by one library, every field of every sheet is read by another', async () => {
    for (const { bytes, blanks, sheet } of forms) {
      const answers = blanks.map(
        ({ id, kind }, index) => [id, kind === 'tick' ? 'yes' : `n ${String(index)}`] as const,
      );
      const typed = await filled(bytes, Object.fromEntries(answers));
      const task = getDocument({ data: new Uint8Array(typed), verbosity: 0 });
      const fields = (await (await task.promise).getFieldObjects()) ?? {};
      await task.destroy();
      const values = new Map(
        Object.entries(fields).map(([name, [first]]) => [blankOfField(name), String(valueIn(first))] as const),
      );
      const read = answers.map(([id, said]) => [id, said === 'yes' ? values.get(id) !== 'Off' : values.get(id)]);
      expect(read, sheet.id).toEqual(answers.map(([id, said]) => [id, said === 'yes' ? true : said]));
    }
  });

  it.skipIf(!hasQpdf || !hasPoppler)('is sound, with every font inside, and shows what is typed', async () => {
    for (const { bytes, blanks, sheet } of forms) {
      const path = join(folder, `${sheet.id}.pdf`);
      writeFileSync(path, bytes);
      expect(run('qpdf', '--check', path)).toContain('No syntax or stream encoding errors found');
      const fonts = run('pdffonts', path).trim().split('\n').slice(2);
      expect(fonts.length).toBeGreaterThan(0);
      for (const line of fonts) expect(line).toMatch(/ yes (?:yes|no) +(?:yes|no) +\d+ +0$/);
      const blank = blanks.find(({ kind }) => kind !== 'tick');
      if (blank === undefined) continue;
      const typed = await filled(bytes, { [blank.id]: '0,37' });
      // A viewer that draws the fields itself does it with the font of the form.
      const drawn = await PDFDocument.load(typed);
      drawn.getForm().acroForm.dict.set(PDFName.of('NeedAppearances'), drawn.context.obj(true));
      writeFileSync(path, await drawn.save({ updateFieldAppearances: false }));
      expect(run('pdftotext', path, '-')).toContain('0,37');
    }
  });
});
