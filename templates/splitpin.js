// What reading does not need: narrowing long tables, and not stopping the tab key at tables that need no scrolling.
'use strict';

(function () {
  /** Tables shorter than this are read at a glance. */
  var longTable = 15;

  /** Hides the rows that lack a word; a band across the table stays when a row under it stays. */
  function narrowRows(rows, words) {
    var shown = 0;
    var bands = [];
    var afterRow = true;
    rows.forEach(function (row) {
      var isBand = row.classList.contains('band');
      if (isBand && afterRow) bands = [];
      if (isBand) bands.push(row);
      afterRow = !isBand;
      var text = row.textContent.toLowerCase();
      var stays = words.every(function (word) {
        return text.includes(word);
      });
      row.hidden = words.length > 0 && (isBand || !stays);
      if (row.hidden || isBand) return;
      shown += 1;
      bands.forEach(function (band) {
        band.hidden = false;
      });
    });
    return shown;
  }

  function addNarrowing(table) {
    var rows = Array.from(table.tBodies[0].rows);
    var total = rows.filter(function (row) {
      return !row.classList.contains('band');
    }).length;
    if (total < longTable) return;
    var line = document.createElement('p');
    var label = document.createElement('label');
    var input = document.createElement('input');
    var count = document.createElement('span');
    line.className = 'narrowing';
    input.type = 'search';
    count.setAttribute('role', 'status');
    label.append('Only rows with', input);
    line.append(label, count);
    input.addEventListener('input', function () {
      var words = input.value.toLowerCase().split(/\s+/).filter(Boolean);
      var shown = narrowRows(rows, words);
      count.textContent = words.length ? shown + ' of ' + total + ' rows' : '';
    });
    table.parentElement.before(line);
  }

  function spareTabStops() {
    document.querySelectorAll('.wide').forEach(function (frame) {
      if (frame.scrollWidth > frame.clientWidth) frame.setAttribute('tabindex', '0');
      else frame.removeAttribute('tabindex');
    });
  }

  document.querySelectorAll('table.read').forEach(addNarrowing);
  spareTabStops();
  addEventListener('resize', spareTabStops);
})();
