// The full view of photos and of the first sides of sheets: by touch and by keyboard, with caption, one after another. Without a script each leads to its large picture.
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { button, part } from './elements.ts';

interface Shot {
  readonly link: HTMLAnchorElement;
  readonly alt: string;
  readonly caption: string;
}

/** A finger that goes less far than this across the screen, in pixels, has not turned the page. */
const leastSwipe = 48;

const shots = [...document.querySelectorAll<HTMLAnchorElement>('.photo > a, a.side')].map(shotOf);
if (shots.length > 0 && typeof HTMLDialogElement === 'function') begin();

function shotOf(link: HTMLAnchorElement): Shot {
  const alt = link.querySelector('img')?.alt ?? '';
  const caption = link.closest('figure')?.querySelector('figcaption');
  // The small picture of a sheet stands in no figure: its words are those that name it.
  return { link, alt, caption: caption?.textContent?.trim() ?? alt };
}

function begin(): void {
  const dialog = part('dialog', '', 'full-view');
  const picture = part('img');
  const caption = part('p', '', 'words');
  const place = part('p', '', 'place');
  place.setAttribute('role', 'status');
  dialog.setAttribute('aria-label', shots[0]?.link.className === 'side' ? 'First side' : 'Photo');
  let at = 0;
  const show = (index: number): void => {
    at = (index + shots.length) % shots.length;
    const shot = shots[at];
    if (shot === undefined) return;
    picture.src = shot.link.href;
    picture.alt = shot.alt;
    caption.textContent = shot.caption;
    place.textContent = shots.length === 1 ? '' : `${String(at + 1)} of ${String(shots.length)}`;
  };
  const close = (): void => dialog.close();
  const before = button('Before', () => show(at - 1));
  const after = button('After', () => show(at + 1));
  const hands = part('p', '', 'hands');
  hands.append(...(shots.length === 1 ? [] : [before, after]), button('Close', close));
  dialog.append(picture, caption, place, hands);
  document.body.append(dialog);
  const keys: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => show(at - 1),
    ArrowRight: () => show(at + 1),
    Home: () => show(0),
    End: () => show(shots.length - 1),
  };
  dialog.addEventListener('keydown', (event) => {
    const turn = keys[event.key];
    if (turn === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    turn();
  });
  turnBySwipe(dialog, keys);
  // Whoever closes the view is where he was, at the photo he saw last.
  dialog.addEventListener('close', () => shots[at]?.link.focus());
  for (const [index, { link }] of shots.entries()) {
    link.addEventListener('click', (event) => {
      // A new tab stays a new tab.
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      show(index);
      dialog.showModal();
    });
  }
}

function turnBySwipe(dialog: HTMLDialogElement, keys: Readonly<Record<string, () => void>>): void {
  let from: number | undefined;
  dialog.addEventListener('touchstart', ({ touches }) => {
    // Two fingers enlarge.
    from = touches.length === 1 ? touches[0]?.clientX : undefined;
  });
  dialog.addEventListener('touchend', ({ changedTouches }) => {
    const [finger] = changedTouches;
    if (from === undefined || finger === undefined) return;
    const gone = finger.clientX - from;
    from = undefined;
    if (Math.abs(gone) >= leastSwipe) keys[gone > 0 ? 'ArrowLeft' : 'ArrowRight']?.();
  });
}
