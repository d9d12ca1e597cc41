// Pages of one kind look alike; the slow checks look at one of each.

/** All pages at the top (one of those that follow each other), and of the pages in a folder the first of each name that differs by more than a date or a job. */
export function oneOfEachKind(files: readonly string[]): readonly string[] {
  const kinds = new Map<string, string>();
  for (const file of files) {
    const kind = kindOf(file);
    if (!kinds.has(kind)) kinds.set(kind, file);
  }
  return [...kinds.values()];
}

function kindOf(file: string): string {
  // Further pages of a long one, and the years of a log, are like the first.
  if (!file.includes('/')) return file.replace(/(?:-\d+)+(?=\.html$)/, '');
  const [folder = '', name = ''] = file.split('/');
  if (folder === 'part-by-part') return name.startsWith('only-fitted') ? 'part-by-part/only-fitted' : folder;
  return folder === 'sheets' ? `sheets/${name.replace(/\d{4}-.*$/, '')}` : folder;
}

/** Pages that between them have every template and every block of a site; looks that differ only by their colours are held against these. */
const templates = [
  'index.html',
  'off.html',
  'torque.html',
  'log.html',
  'costs.html',
  'photos.html',
  'next-test.html',
  'search.html',
  'part-by-part/',
  'measurements/',
  'log/',
  'jobs/',
  'bench/',
  'calculations/',
  'sheets/measuring',
  'sheets/teardown',
  'sheets/tags',
  'sheets/timing-strip',
] as const;

/** The first page of each of them. */
export function oneOfEachTemplate(files: readonly string[]): readonly string[] {
  return templates.flatMap((begin) => files.find((file) => file.startsWith(begin)) ?? []);
}
