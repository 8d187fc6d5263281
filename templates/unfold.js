// Opens the working that the address names, and marks its column.
(function () {
  'use strict';

  function unfold() {
    for (const old of document.querySelectorAll('.asked')) old.classList.remove('asked');
    const head = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    const fold = head && head.closest('details');
    if (!fold) return;
    fold.open = true;
    const at = head.cellIndex;
    for (const row of fold.querySelectorAll('tr')) if (row.cells.length > at && !row.querySelector('[colspan]')) row.cells[at].classList.add('asked');
    fold.scrollIntoView({ block: 'start' });
    head.focus({ preventScroll: true });
  }

  window.addEventListener('hashchange', unfold);
  unfold();
})();
