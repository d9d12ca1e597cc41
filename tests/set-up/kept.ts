// What several test files make of the same machine of the project, made once by each worker. Whoever changes something makes its own.

/** True of the folders that no test writes to. */
function isOurs(folder: string): boolean {
  return folder === 'demo-bike' || folder.startsWith('tests/fixtures/');
}

/** A keeper of what `make` gives for a folder and a day; of a folder that a test wrote it is made every time. */
export function keeper<T>(make: (folder: string, today: string) => T): typeof make {
  const kept = new Map<string, T>();
  return (folder, today) => {
    if (!isOurs(folder)) return make(folder, today);
    const key = `${folder} ${today}`;
    const found = kept.get(key);
    if (found !== undefined) return found;
    const fresh = make(folder, today);
    kept.set(key, fresh);
    return fresh;
  };
}
