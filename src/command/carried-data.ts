// The data that the history carries inside its file, so that it can be read by other programs in twenty years, wherever the file went.
import { binderData, withoutPrivate, type Binder } from '../build.ts';
import type { Sheet } from '../build.ts';
import type { Attached } from '../pdf/attach.ts';

/** What a sheet's file carries; nothing for most sheets. */
export type Carried = (sheet: Sheet) => readonly Attached[];

type BinderData = ReturnType<typeof binderData>;

/** Data as in `data/binder.json`, without what is marked as private; made when the first sheet asks for it. */
export function carriedData(
  binder: Binder,
  unwanted: boolean,
  data: () => BinderData = () => binderData(binder.book),
): Carried {
  let made: readonly Attached[] | undefined;
  return (sheet) => {
    if (unwanted || sheet.carriesData !== true) return [];
    made ??= dataOf(binder, data());
    return made;
  };
}

function dataOf({ book }: Binder, all: BinderData): readonly Attached[] {
  const data = withoutPrivate(all, book.records.kept ?? []);
  if (data === undefined) return [];
  const bytes = Buffer.from(JSON.stringify(data, null, 1) + '\n', 'utf8');
  const description = 'The data that this history was made from, without what is marked as private';
  return [{ name: 'binder.json', description, type: 'application/json', bytes }];
}
