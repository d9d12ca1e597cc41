// The same records for other programs: sources and plain templates that give the same text as tables and prose.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { BenchRecord } from './workload.ts';

type Files = Readonly<Record<string, string>>;

/** Writes files below a folder that is emptied first. */
export function writeFolder(folder: string, files: Files): void {
  rmSync(folder, { recursive: true, force: true });
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
}

/** Front matter that every YAML reader takes the same way: all values quoted. */
function source(record: BenchRecord, more: Files): string {
  const fields = Object.entries(record.fields).map(([key, value]) => `  - {name: "${key}", value: "${value}"}`);
  const readings = record.readings.map(
    ({ item, found, left }) => `  - {item: "${item}", found: "${found}", left: "${left}"}`,
  );
  const parts = record.parts.map(
    ({ part, number, price }) => `  - {part: "${part}", number: "${number}", price: "${price}"}`,
  );
  const extra = Object.entries(more).map(([key, value]) => `${key}: ${value}`);
  return [
    '---',
    `title: "${record.title}"`,
    `date: ${record.date}`,
    ...extra,
    'fields:',
    ...fields,
    'readings:',
    ...readings,
    'parts:',
    ...parts,
    '---',
    record.body,
  ].join('\n');
}

const page = (head: string, body: string): string =>
  `<!doctype html>\n<html lang="en">\n<head><meta charset="utf-8"><title>${head}</title></head>\n<body>\n<h1>${head}</h1>\n${body}\n</body>\n</html>\n`;

const hugoRecord = page(
  '{{ .Title }}',
  `<p>{{ .Date.Format "2006-01-02" }} · {{ index .Params.kind 0 }}</p>
<table>{{ range .Params.fields }}<tr><th>{{ .name }}</th><td>{{ .value }}</td></tr>{{ end }}</table>
<table>{{ range .Params.readings }}<tr><td>{{ .item }}</td><td>{{ .found }}</td><td>{{ .left }}</td></tr>{{ end }}</table>
<table>{{ range .Params.parts }}<tr><td>{{ .part }}</td><td>{{ .number }}</td><td>{{ .price }}</td></tr>{{ end }}</table>
{{ .Content }}`,
);
const hugoList = page(
  '{{ .Title }}',
  '<ul>{{ range .Pages.ByDate }}<li>{{ .Date.Format "2006-01-02" }} <a href="{{ .RelPermalink }}">{{ .Title }}</a></li>{{ end }}</ul>',
);
const hugoRows = (key: string, cells: string): string =>
  page(
    '{{ .Title }}',
    `<table>{{ range where site.RegularPages.ByDate "Section" "jobs" }}{{ $p := . }}{{ range .Params.${key} }}<tr><td><a href="{{ $p.RelPermalink }}">{{ $p.Title }}</a></td>${cells}</tr>{{ end }}{{ end }}</table>`,
  );

/** A Hugo site: `hugo --quiet` is run in its folder. */
export function hugoFiles(all: readonly BenchRecord[]): Files {
  const jobs = all.map((record) => [
    `content/jobs/${record.id}.md`,
    source(record, { kind: `["${record.kind}"]`, year: `["${record.date.slice(0, 4)}"]` }),
  ]);
  return {
    'config.yaml':
      'baseURL: "http://localhost/"\ntitle: Bench\ndisableKinds: [RSS, sitemap, robotsTXT, "404"]\nuglyURLs: true\ntaxonomies: {kind: kind, year: year}\n',
    'layouts/_default/single.html': hugoRecord,
    'layouts/_default/list.html': hugoList,
    'layouts/_default/taxonomy.html': hugoList,
    'layouts/_default/term.html': hugoList,
    'layouts/index.html': hugoList.replace('.Pages.ByDate', 'site.RegularPages.ByDate'),
    'layouts/_default/parts.html': hugoRows('parts', '<td>{{ .part }}</td><td>{{ .number }}</td><td>{{ .price }}</td>'),
    'layouts/_default/readings.html': hugoRows(
      'readings',
      '<td>{{ .item }}</td><td>{{ .found }}</td><td>{{ .left }}</td>',
    ),
    'content/parts.md': '---\ntitle: Parts\nlayout: parts\n---\n',
    'content/readings.md': '---\ntitle: Readings\nlayout: readings\n---\n',
    ...Object.fromEntries(jobs),
  };
}

const eleventyRecord = page(
  '{{ title }}',
  `<p>{{ day }} · {{ kind }}</p>
<table>{% for f in fields %}<tr><th>{{ f.name }}</th><td>{{ f.value }}</td></tr>{% endfor %}</table>
<table>{% for r in readings %}<tr><td>{{ r.item }}</td><td>{{ r.found }}</td><td>{{ r.left }}</td></tr>{% endfor %}</table>
<table>{% for p in parts %}<tr><td>{{ p.part }}</td><td>{{ p.number }}</td><td>{{ p.price }}</td></tr>{% endfor %}</table>
{{ content | safe }}`,
);
const listOf = (collection: string): string =>
  `<ul>{% for job in ${collection} %}<li>{{ job.data.day }} <a href="{{ job.url }}">{{ job.data.title }}</a></li>{% endfor %}</ul>`;
const rowsOf = (key: string, cells: string): string =>
  `<table>{% for job in collections.jobs %}{% for row in job.data.${key} %}<tr><td><a href="{{ job.url }}">{{ job.data.title }}</a></td>${cells}</tr>{% endfor %}{% endfor %}</table>`;
const groups = (name: string): string =>
  `---\npagination: {data: collections.${name}, size: 1, alias: group}\npermalink: "${name}/{{ group.name }}.html"\n---\n` +
  page('{{ group.name }}', listOf('group.jobs'));

const eleventyConfig = `module.exports = (config) => {
  const jobs = (api) => api.getFilteredByTag('jobs');
  const by = (name, key) => config.addCollection(name, (api) => {
    const groups = new Map();
    for (const job of jobs(api)) {
      const value = key(job.data);
      groups.set(value, [...(groups.get(value) ?? []), job]);
    }
    return [...groups].map(([name, jobs]) => ({ name, jobs }));
  });
  by('kinds', (data) => data.kind);
  by('years', (data) => data.day.slice(0, 4));
  return { dir: { input: 'src', output: 'out' }, markdownTemplateEngine: false, htmlTemplateEngine: 'njk' };
};
`;

/** A plain Eleventy site of Markdown files: its command is run in the folder. */
export function eleventyFiles(all: readonly BenchRecord[]): Files {
  const jobs = all.map((record) => [
    `src/jobs/${record.id}.md`,
    source(record, { kind: `"${record.kind}"`, day: `"${record.date}"` }),
  ]);
  return {
    'eleventy.config.cjs': eleventyConfig,
    'package.json': '{}',
    'src/_includes/record.njk': eleventyRecord,
    'src/jobs/jobs.11tydata.cjs':
      'module.exports = { layout: "record.njk", tags: "jobs", permalink: (data) => "jobs/" + data.page.fileSlug + data.day + ".html" };',
    'src/index.njk': '---\npermalink: index.html\n---\n' + page('Bench', listOf('collections.jobs')),
    'src/parts.njk':
      '---\npermalink: parts.html\n---\n' +
      page('Parts', rowsOf('parts', '<td>{{ row.part }}</td><td>{{ row.number }}</td><td>{{ row.price }}</td>')),
    'src/readings.njk':
      '---\npermalink: readings.html\n---\n' +
      page('Readings', rowsOf('readings', '<td>{{ row.item }}</td><td>{{ row.found }}</td><td>{{ row.left }}</td>')),
    'src/kinds.njk': groups('kinds'),
    'src/years.njk': groups('years'),
    ...Object.fromEntries(jobs),
  };
}
