// Made by src/tools/browser-scripts.ts from src/bench/photo-view.ts; not edited by hand.
/* oxlint-disable */
'use strict';
(() => {
  // src/bench/elements.ts
  function part(tag, text = '', className = '') {
    const element = document.createElement(tag);
    element.textContent = text;
    if (className !== '') element.className = className;
    return element;
  }
  function button(words, press) {
    const made = part('button', words);
    made.type = 'button';
    made.addEventListener('click', press);
    return made;
  }

  // src/bench/photo-view.ts
  var leastSwipe = 48;
  var shots = [...document.querySelectorAll('.photo > a, a.side')].map(shotOf);
  if (shots.length > 0 && typeof HTMLDialogElement === 'function') begin();
  function shotOf(link) {
    const alt = link.querySelector('img')?.alt ?? '';
    const caption = link.closest('figure')?.querySelector('figcaption');
    return { link, alt, caption: caption?.textContent?.trim() ?? alt };
  }
  function begin() {
    const dialog = part('dialog', '', 'full-view');
    const picture = part('img');
    const caption = part('p', '', 'words');
    const place = part('p', '', 'place');
    place.setAttribute('role', 'status');
    dialog.setAttribute('aria-label', shots[0]?.link.className === 'side' ? 'First side' : 'Photo');
    let at = 0;
    const show = (index) => {
      at = (index + shots.length) % shots.length;
      const shot = shots[at];
      if (shot === void 0) return;
      picture.src = shot.link.href;
      picture.alt = shot.alt;
      caption.textContent = shot.caption;
      place.textContent = shots.length === 1 ? '' : `${String(at + 1)} of ${String(shots.length)}`;
    };
    const close = () => dialog.close();
    const before = button('Before', () => show(at - 1));
    const after = button('After', () => show(at + 1));
    const hands = part('p', '', 'hands');
    hands.append(...(shots.length === 1 ? [] : [before, after]), button('Close', close));
    dialog.append(picture, caption, place, hands);
    document.body.append(dialog);
    const keys = {
      ArrowLeft: () => show(at - 1),
      ArrowRight: () => show(at + 1),
      Home: () => show(0),
      End: () => show(shots.length - 1),
    };
    dialog.addEventListener('keydown', (event) => {
      const turn = keys[event.key];
      if (turn === void 0 || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      turn();
    });
    turnBySwipe(dialog, keys);
    dialog.addEventListener('close', () => shots[at]?.link.focus());
    for (const [index, { link }] of shots.entries()) {
      link.addEventListener('click', (event) => {
        if (event.ctrlKey || event.metaKey || event.shiftKey) return;
        event.preventDefault();
        show(index);
        dialog.showModal();
      });
    }
  }
  function turnBySwipe(dialog, keys) {
    let from;
    dialog.addEventListener('touchstart', ({ touches }) => {
      from = touches.length === 1 ? touches[0]?.clientX : void 0;
    });
    dialog.addEventListener('touchend', ({ changedTouches }) => {
      const [finger] = changedTouches;
      if (from === void 0 || finger === void 0) return;
      const gone = finger.clientX - from;
      from = void 0;
      if (Math.abs(gone) >= leastSwipe) keys[gone > 0 ? 'ArrowLeft' : 'ArrowRight']?.();
    });
  }
})();
