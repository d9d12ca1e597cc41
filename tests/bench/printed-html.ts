// The records as one document to print: set so that it fills as many pages as our history, for programs that print HTML.
import MarkdownIt from 'markdown-it';
import type { BenchRecord } from './workload.ts';

const style = `@page { size: A4; margin: 20mm 15mm 20mm 22mm; }
body { font: 10pt/1.3 "IBM Plex Sans", "DejaVu Sans", sans-serif; }
h2 { font-size: 15pt; }
table { border-collapse: collapse; width: 100%; margin: 3mm 0; }
figure { break-inside: avoid; margin: 3mm 0; }
img { max-width: 100%; max-height: 110mm; }
td, th { border-bottom: 0.3pt solid #000; padding: 0.6mm; text-align: left; }`;

/** One record after the other, with its tables and its words. */
export function asPrintedHtml(all: readonly BenchRecord[]): string {
  const markdown = new MarkdownIt({ html: false });
  const body = all.map((record) => recordHtml(record, markdown)).join('\n');
  return `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>History</title><style>${style}</style></head>\n<body>\n<h1>History</h1>\n${body}\n</body></html>\n`;
}

function recordHtml(record: BenchRecord, markdown: ReturnType<typeof MarkdownIt>): string {
  const rows = (cells: readonly (readonly string[])[]): string =>
    `<table>${cells.map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join('')}</tr>`).join('\n')}</table>`;
  return [
    `<h2>${record.date} ${record.title}</h2>`,
    rows(Object.entries({ kind: record.kind, ...record.fields })),
    markdown.render(record.body),
    record.photo === undefined
      ? ''
      : `<figure><img src="machine/${record.photo}" alt="${record.title}"><figcaption>${record.title}</figcaption></figure>`,
    rows(record.readings.map(({ item, found, left }) => [item, found, left])),
    rows(record.parts.map(({ part, number, price }) => [part, number, price])),
  ].join('\n');
}
