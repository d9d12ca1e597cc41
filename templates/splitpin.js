// What reading does not need: narrowing long lists, and not stopping the tab key at tables that need no scrolling.
'use strict';

(function () {
  /** Lists shorter than this are read at a glance. */
  var longList = 15;

  /** Rows of a table as things to narrow; a band across the table belongs to the rows below it. */
  function rowsOf(table) {
    return Array.from(table.tBodies[0].rows).map(function (row) {
      return { parts: [row], isBand: row.classList.contains('band') };
    });
  }

  /** Entries of the log: a heading, and what follows it up to the next heading. A year belongs to the entries below it. */
  function entriesOf(headings) {
    return headings.map(function (heading) {
      var parts = [heading];
      var next = heading.nextElementSibling;
      while (next && !/^(H[1-6]|NAV)$/.test(next.tagName)) {
        parts.push(next);
        next = next.nextElementSibling;
      }
      return { parts: parts, isBand: heading.id.startsWith('year-') };
    });
  }

  /** Threads and sizes are found however their sign and spaces are written: M8x1.25 for M8 × 1.25. */
  function plain(text) {
    return text
      .toLowerCase()
      .replace(/[\s\u00a0\u2009\u202f]+/g, ' ')
      .replace(/ ?[x×] ?(?=\d)/g, 'x');
  }

  function show(thing, visible) {
    thing.parts.forEach(function (part) {
      part.hidden = !visible;
    });
  }

  /** Hides what lacks a word; a band stays when something under it stays. Gives the number of what is shown. */
  function narrow(things, words) {
    var shown = 0;
    var bands = [];
    var afterRow = true;
    things.forEach(function (thing) {
      if (thing.isBand && afterRow) bands = [];
      if (thing.isBand) bands.push(thing);
      afterRow = !thing.isBand;
      var stays = words.every(function (word) {
        return thing.text.includes(word);
      });
      var visible = words.length === 0 || (stays && !thing.isBand);
      show(thing, visible);
      if (!visible || thing.isBand) return;
      shown += 1;
      bands.forEach(function (band) {
        show(band, true);
      });
    });
    return shown;
  }

  /** Puts a line to narrow by before an element. */
  function addNarrowing(things, before) {
    var total = things.filter(function (thing) {
      return !thing.isBand;
    }).length;
    if (total < longList) return;
    things.forEach(function (thing) {
      thing.text = plain(thing.parts.map((part) => part.textContent).join(' '));
    });
    var line = document.createElement('p');
    var label = document.createElement('label');
    var input = document.createElement('input');
    var count = document.createElement('span');
    line.className = 'narrowing';
    input.type = 'search';
    count.setAttribute('role', 'status');
    label.append('Only entries with', input);
    line.append(label, count);
    input.addEventListener('input', function () {
      var words = plain(input.value).split(' ').filter(Boolean);
      var shown = narrow(things, words);
      count.textContent = words.length ? shown + ' of ' + total : '';
    });
    before.before(line);
  }

  function spareTabStops() {
    document.querySelectorAll('.wide, pre').forEach(function (frame) {
      if (frame.scrollWidth > frame.clientWidth) frame.setAttribute('tabindex', '0');
      else frame.removeAttribute('tabindex');
    });
  }

  // One long table on a page is narrowed; where there are several, each stands under a heading that is found faster.
  var tables = Array.from(document.querySelectorAll('.narrows table.read')).filter(function (table) {
    return table.tBodies[0].rows.length >= longList;
  });
  if (tables.length === 1) addNarrowing(rowsOf(tables[0]), tables[0].parentElement);
  var log = Array.from(document.querySelectorAll('.narrows > :is([id^="log-"], [id^="year-"])'));
  if (log.length > 0) addNarrowing(entriesOf(log), log[0]);
  spareTabStops();
  addEventListener('resize', spareTabStops);
  // Letters of another width arrive after the page.
  void document.fonts.ready.then(spareTabStops);
})();
