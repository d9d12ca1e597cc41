// Opens one page after another in Firefox and says what is wrong with any: for the test of each kind, and for the audit of all.
import type { Pages } from './pages.ts';

/** What a page that opened as it should has none of. A page for a telephone takes the typeface of the telephone. */
const wrongs = `Promise.all([...document.fonts].slice(0, 1).map((one) => one.load())).then(
  () => [
    document.documentElement.scrollWidth > innerWidth && 'sticks out',
    document.querySelector('h1')?.checkVisibility() !== true && 'has no heading that is seen',
    getComputedStyle(document.body).margin === '8px' && 'has no style',
    [...document.images].some((one) => one.src !== '' && one.complete && one.naturalWidth === 0) && 'lacks a picture',
  ].filter(Boolean),
  () => ['has not its typeface'],
)`;

/** Sentences, each with its page; then all that Firefox complained of while they were open. */
export async function wrongOn(firefox: Pages, files: readonly string[]): Promise<readonly string[]> {
  const found: string[] = [];
  for (const file of files) {
    await firefox.open(file);
    const wrong = await firefox.read(wrongs);
    found.push(...(Array.isArray(wrong) ? wrong : ['gives no answer']).map((what) => `${file} ${String(what)}`));
  }
  return [...found, ...(await firefox.complaints())];
}
