// Photos at three sizes; small ones that follow each other stand side by side. Captions below.
import type { PhotoBlock, Text } from '../../sheet/sheet.ts';
import type { PlacedItem } from '../placed.ts';
import { gutter, leading, small, thin } from '../scale.ts';
import { heightOf, setLines, type SetLine } from '../set-line.ts';
import { linesOf, under, type Setting } from '../setting.ts';
import type { Slab } from '../slab.ts';

const acrossOf = { full: 1, half: 2, small: 3 } as const;

/** Photos of one size, in rows as wide as the frame. */
export function photoSlabs(photos: readonly PhotoBlock[], setting: Setting): readonly Slab[] {
  const across = acrossOf[photos[0]?.size ?? 'full'];
  const slabs: Slab[] = [];
  for (let from = 0; from < photos.length; from += across) {
    slabs.push(rowOfPhotos(photos.slice(from, from + across), across, setting));
  }
  return slabs;
}

function rowOfPhotos(photos: readonly PhotoBlock[], across: number, setting: Setting): Slab {
  const width = (setting.width - gutter * 1.5 * (across - 1)) / across;
  const set = photos.map((photo) => setPhoto(photo, width, setting));
  const height = set.reduce((most, one) => Math.max(most, one.height), 0);
  return {
    height,
    before: leading,
    draw: (x, y, out) => {
      for (const [index, one] of set.entries()) one.draw(x + index * (width + gutter * 1.5), y, out);
    },
  };
}

interface SetPhoto {
  readonly height: number;
  readonly draw: (x: number, y: number, out: PlacedItem[]) => void;
}

function setPhoto(photo: PhotoBlock, width: number, setting: Setting): SetPhoto {
  const pixels = setting.measure.photo?.(photo.file);
  const known =
    pixels ??
    (photo.width !== undefined && photo.height !== undefined
      ? { width: photo.width, height: photo.height }
      : undefined);
  const ratio = known === undefined || known.width <= 0 || known.height <= 0 ? 0.66 : known.height / known.width;
  const captionRoom = setting.height * 0.3;
  const most = Math.min(setting.height * 0.48, width * 1.2);
  const shown = Math.min(width, most / ratio);
  const tall = shown * ratio;
  const caption = capped(linesOf(captionText(photo), small, width, setting), captionRoom, setting);
  const figure = under(setting.section, 'Figure', { alt: photo.alt === '' ? 'Photo' : photo.alt });
  const words = under(setting.section, 'P');
  const missing = pixels === undefined && setting.measure.photo !== undefined;
  return {
    height: tall + 3 + heightOf(caption),
    draw: (x, y, out) => {
      if (missing) {
        out.push({ kind: 'box', x, y, width: shown, height: tall, weight: thin, use: 'frame', tag: figure });
        const note = linesOf('The photo is not at hand: ' + photo.file, small, shown - 12, setting);
        setLines(
          note.slice(0, Math.max(1, Math.floor(tall / small.leading) - 1)),
          { x: x + 6, y: y + 6, width: shown - 12, tag: figure },
          out,
        );
      } else {
        out.push({ kind: 'photo', file: photo.file, x, y, width: shown, height: tall, tag: figure });
      }
      setLines(caption, { x, y: y + tall + 3, width, tag: words }, out);
    },
  };
}

function captionText(photo: PhotoBlock): Text {
  if (photo.taken === undefined || photo.taken === '') return photo.caption;
  const inlines = typeof photo.caption === 'string' ? [photo.caption] : photo.caption;
  return [...inlines, ' (' + photo.taken + ')'];
}

/** A caption longer than its room ends with a mark; the record has it whole. */
function capped(lines: readonly SetLine[], room: number, setting: Setting): readonly SetLine[] {
  const count = Math.max(1, Math.floor(room / small.leading));
  if (lines.length <= count) return lines;
  return [
    ...lines.slice(0, count - 1),
    ...linesOf('… (whole in the record)', small, setting.width, setting).slice(0, 1),
  ];
}
