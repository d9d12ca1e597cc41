// Forms as they should not come: words that say what to do, and nothing written.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, openSync, ftruncateSync, closeSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { PDFDict, PDFDocument, PDFHexString, PDFName } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { formBounds, largestForm, readFormInThread } from '../../src/command/take/form-thread.ts';
import { readForm } from '../../src/command/take/read-form.ts';
import { carrierName, fieldName } from '../../src/pdf/form.ts';
import { bytesOf, copyOf, filled, jobForms, remove, type JobForm } from './job-forms.ts';
import { take } from './take-here.ts';

const hasQpdf = spawnSync('qpdf', ['--version']).status === 0;
const hasPoppler = spawnSync('pdftocairo', ['-v']).status === 0;
if (!hasQpdf || !hasPoppler)
  console.warn('SKIPPED: forms saved by qpdf or poppler were not read; these are not installed.');

const bore = '2026-11-21-top-end-again/bore/left top across/found';

let form: JobForm;
let good: Uint8Array;
let folder: string;
let away: string;
beforeAll(async () => {
  const forms = await jobForms('demo-bike');
  const found = forms.find(({ sheet }) => sheet.id.startsWith('measuring'));
  if (found === undefined) throw new Error('no form');
  form = found;
  good = await filled(form.bytes, { [bore]: '50,52' });
  folder = copyOf('demo-bike');
  away = mkdtempSync(join(tmpdir(), 'splitpin-bad-forms-'));
});
afterAll(() => {
  remove(folder);
  rmSync(away, { recursive: true, force: true });
});

async function changed(change: (document: PDFDocument) => void | Promise<void>): Promise<Uint8Array> {
  const document = await PDFDocument.load(good);
  await change(document);
  return document.save({ updateFieldAppearances: false });
}

async function refused(bytes: Uint8Array, words: string, name = 'bad.pdf'): Promise<void> {
  const path = join(away, name);
  writeFileSync(path, bytes);
  const before = bytesOf(folder);
  const took = await take(folder, [path], { yes: true });
  expect(took.said).toContain(words);
  expect(took.code).toBe(1);
  expect(bytesOf(folder)).toEqual(before);
}

function throughQpdf(...words: readonly string[]): Uint8Array {
  const from = join(away, 'from.pdf');
  const to = join(away, 'to.pdf');
  writeFileSync(from, good);
  expect(spawnSync('qpdf', [...words, from, to], { encoding: 'utf8' }).stderr).toBe('');
  return spawnSync('cat', [to], { maxBuffer: 1 << 26 }).stdout;
}

describe('a form that gives nothing', () => {
  it.each([
    ['no PDF at all', Buffer.from('Dear owner, the form is in the other mail.\n'), 'This is not a PDF'],
    ['an empty file', Buffer.alloc(0), 'This is not a PDF'],
    ['a beginning and nothing more', Buffer.from('%PDF-1.7\n'), 'cannot be read'],
    ['a thousand brackets', Buffer.from(`%PDF-1.7\n1 0 obj\n${'['.repeat(200_000)}\n%%EOF`), 'cannot be read'],
  ])('%s', async (_, bytes, words) => {
    await refused(bytes, words);
  });

  it('cut in the middle', async () => {
    await refused(good.slice(0, Math.floor(good.length / 3)), 'This PDF cannot be read: it is damaged');
  });

  it('flattened by the program that saved it', async () => {
    await refused(
      await changed((document) => document.getForm().flatten({ updateFieldAppearances: false })),
      'There are no fields in this PDF',
    );
  });

  it.skipIf(!hasPoppler)('printed anew as a picture of itself', async () => {
    const from = join(away, 'typed.pdf');
    const to = join(away, 'printed.pdf');
    writeFileSync(from, good);
    expect(spawnSync('pdftocairo', ['-pdf', from, to]).status).toBe(0);
    await refused(spawnSync('cat', [to], { maxBuffer: 1 << 26 }).stdout, 'There are no fields in this PDF');
  });

  it.skipIf(!hasQpdf)('locked with a password', async () => {
    await refused(throughQpdf('--encrypt', 'open', 'own', '256', '--'), 'locked with a password');
    await refused(throughQpdf('--encrypt', '', 'own', '256', '--'), 'locked with a password');
  });

  it('with a second form of another kind', async () => {
    const bytes = await changed((document) => {
      const dict = document.catalog.lookup(PDFName.of('AcroForm'), PDFDict);
      dict.set(PDFName.of('XFA'), document.context.register(document.context.flateStream('<xdp/>')));
    });
    await refused(bytes, 'a second form of another kind (XFA)');
  });

  it('a form that some other program made', async () => {
    const document = await PDFDocument.create();
    const field = document.getForm().createTextField(fieldName(bore));
    field.addToPage(document.addPage());
    field.setText('50.52');
    await refused(await document.save(), 'does not carry what says whose answers these are');
  });

  it('made by a program of a later format', async () => {
    const bytes = await changed((document) => carry(document, (text) => text.replace('"form":"1"', '"form":"2"')));
    await refused(bytes, 'It was made in format 2');
  });

  it('whose hidden text was damaged', async () => {
    await refused(await changed((document) => carry(document, (text) => text.slice(0, 40))), 'is damaged');
  });

  it('larger than a form can be', async () => {
    const path = join(away, 'huge.pdf');
    const file = openSync(path, 'w');
    ftruncateSync(file, largestForm + 1);
    closeSync(file);
    const took = await take(folder, [path], { yes: true });
    expect(took.code).toBe(1);
    expect(took.said).toContain('larger than a form can be');
  });

  it('no file of this name, and a kind that nothing reads', async () => {
    expect((await take(folder, [join(away, 'none.pdf')])).code).toBe(2);
    writeFileSync(join(away, 'a.bin'), 'x');
    const took = await take(folder, [join(away, 'a.bin')]);
    expect(took.code).toBe(2);
    expect(took.said).toContain('a filled form (PDF');
  });
});

function carry(document: PDFDocument, change: (text: string) => string): void {
  const field = document.getForm().getTextField(carrierName);
  field.acroField.dict.set(PDFName.of('V'), PDFHexString.fromText(change(field.getText() ?? '')));
}

describe('a form that another program saved', () => {
  const value = async (bytes: Uint8Array): Promise<string | undefined> => {
    const reading = await readForm(bytes);
    if ('fault' in reading) throw new Error(reading.fault);
    expect(reading.carries).toContain('"job":"2026-11-21-top-end-again"');
    return reading.fields.find(({ name }) => name === fieldName(bore))?.value;
  };

  it('a viewer of web pages fills and saves it by an addition at the end', async () => {
    const document = await getDocument({ data: new Uint8Array(form.bytes), verbosity: 0 }).promise;
    let typed = 0;
    for (let page = 1; page <= document.numPages; page += 1) {
      for (const place of await (await document.getPage(page)).getAnnotations()) {
        if (place.fieldName !== fieldName(bore)) continue;
        document.annotationStorage.setValue(String(place.id), { value: '50,53' });
        typed += 1;
      }
    }
    expect(typed).toBe(1);
    const saved = await document.saveDocument();
    await document.destroy();
    expect(await value(saved)).toBe('50,53');
  });

  it.skipIf(!hasQpdf).each([
    ['for the web', ['--linearize']],
    ['packed', ['--object-streams=generate', '--recompress-flate']],
    ['unpacked', ['--qdf', '--object-streams=disable']],
  ])('%s', async (_, words) => {
    expect(await value(throughQpdf(...words))).toBe('50,52');
  });

  it('which lost the list of fields and kept them on the pages', async () => {
    expect(await value(await changed((document) => void document.catalog.delete(PDFName.of('AcroForm'))))).toBe(
      '50,52',
    );
  });

  it('with some fields renamed: these are named, the others are taken', async () => {
    const bytes = await changed((document) => {
      const field = document.getForm().getTextField(fieldName(bore));
      field.acroField.setPartialName('Text17');
    });
    const path = join(away, 'renamed.pdf');
    writeFileSync(path, bytes);
    const took = await take(folder, [path], { show: true });
    expect(took.said).toContain('the sheet has no blank “Text17” (50,52)');
    expect(took.said).toContain('1 blank of the sheet did not come back');
    expect(took.said).toContain('Nothing new is in it');
  });
});

describe('the thread', () => {
  /** A PDF whose objects unpack to far more than they take. */
  function bomb(megabytes: number): Uint8Array {
    const packed = deflateSync(Buffer.alloc(megabytes << 20, 0x20));
    const head = `%PDF-1.7\n1 0 obj\n<</Type/ObjStm/N 1/First 4/Filter/FlateDecode/Length ${String(packed.length)}>>\nstream\n`;
    return Buffer.concat([Buffer.from(head, 'latin1'), packed, Buffer.from('\nendstream\nendobj\n%%EOF\n', 'latin1')]);
  }

  it('is stopped when what it unpacks outgrows its bounds', async () => {
    expect(await readFormInThread(bomb(192), { ...formBounds, growth: 60 })).toEqual({ fault: 'too much' });
  });

  it('is stopped when its time is over', async () => {
    expect(await readFormInThread(good, { ...formBounds, time: 1 })).toEqual({ fault: 'too long' });
  });

  it('reads a form well within its bounds', async () => {
    const reading = await readFormInThread(good);
    expect('fields' in reading && reading.fields.length).toBe(form.blanks.length);
  });
});
