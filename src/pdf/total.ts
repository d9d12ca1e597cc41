// "of how many": one small drawing used on every page and filled in when the last page is known.
import type PDFDocument from 'pdfkit';
import type { TotalItem } from '../layout/placed.ts';
import { widthOf } from './faces.ts';
import { points } from './numbers.ts';
import type { OpenPage } from './open-page.ts';
import type { Typesetter } from './type.ts';

type Document = InstanceType<typeof PDFDocument>;

export interface Total {
  /** Shows the words before the number, and the number. */
  readonly show: (item: TotalItem, page: OpenPage) => string;
  /** Fills the number in. */
  readonly end: (pages: number) => void;
}

export function total(doc: Document, type: Typesetter): Total {
  const data: Record<string, unknown> = { Type: 'XObject', Subtype: 'Form', BBox: [0, -20, 80, 20] };
  const form = doc.ref(data);
  let size = 9;
  return {
    show: (item, page) => {
      ({ size } = item);
      page.drawings.set('Total', form.id);
      const words = item.before.trimEnd();
      const x = item.x + widthOf(words, 'regular') * size;
      return (
        type.show(words, 'regular', size, item.x, item.y) +
        '\nq 1 0 0 1 ' +
        points(x) +
        ' ' +
        points(item.y) +
        ' cm /Total Do Q'
      );
    },
    end: (pages) => {
      const shown = type.show(' ' + String(pages), 'regular', size, 0, 0);
      data['Resources'] = {
        Font: Object.fromEntries([...type.fonts].map(([name, { reference }]) => [name, reference])),
      };
      form.end(shown);
    },
  };
}
