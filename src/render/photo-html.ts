// A photo with its caption; where the picture is missing, its place and its words are kept.
import type { PhotoBlock } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import type { Scope } from './scope.ts';
import { plainText, textHtml } from './text-html.ts';

/** The figure of a photo: the small file is shown and leads to the large one. Width and height keep its place while loading. */
export function photoHtml(photo: PhotoBlock, scope: Scope): string {
  const found = scope.site.photoOf(photo.file);
  const taken = photo.taken === undefined ? '' : ` <span class="taken">${escapeHtml(photo.taken)}</span>`;
  const caption = `<figcaption>${textHtml(photo.caption, scope)}${taken}</figcaption>`;
  const alt = escapeHtml(photo.alt);
  if (found === undefined) {
    return `<figure class="photo ${photo.size}"><p class="missing">Picture not here: ${escapeHtml(photo.file)}${
      alt === '' ? '' : `. ${alt}`
    }</p>${caption}</figure>\n`;
  }
  const shown = photo.size === 'small' ? found.small : found.large;
  const label = escapeHtml(`Larger picture: ${photo.alt || plainText(photo.caption) || photo.file}`);
  return (
    `<figure class="photo ${photo.size}"><a href="${escapeHtml(scope.href(found.large))}" aria-label="${label}">` +
    `<img src="${escapeHtml(scope.href(shown))}" alt="${alt}" width="${found.width}" height="${found.height}" loading="lazy">` +
    `</a>${caption}</figure>\n`
  );
}
