// Pages of one kind look alike; the slow checks look at one of each.

/** All pages at the top, and of the pages in a folder the first of each name that differs by more than a date or a job. */
export function oneOfEachKind(files: readonly string[]): readonly string[] {
  const kinds = new Map<string, string>();
  for (const file of files) {
    const kind = kindOf(file);
    if (!kinds.has(kind)) kinds.set(kind, file);
  }
  return [...kinds.values()];
}

function kindOf(file: string): string {
  if (!file.includes('/')) return file;
  const [folder = '', name = ''] = file.split('/');
  return folder === 'sheets' ? `sheets/${name.replace(/\d{4}-.*$/, '')}` : folder;
}
