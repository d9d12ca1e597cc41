// The page before and the page after, where pages follow each other.
import type { Page } from '../sheet/sheet.ts';

type Beside = NonNullable<Page['previous']>;

/** For pages in their order: what stands before and after each, by its place. */
export function turning(pages: readonly Beside[]): (index: number) => Pick<Page, 'previous' | 'next'> {
  return (index) => {
    const previous = pages[index - 1];
    const next = pages[index + 1];
    return {
      ...(previous === undefined ? {} : { previous: nameOf(previous) }),
      ...(next === undefined ? {} : { next: nameOf(next) }),
    };
  };
}

function nameOf({ file, title }: Beside): Beside {
  return { file, title };
}
