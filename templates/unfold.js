// Opens the working that the address names, and marks its column.
(function () {
  'use strict';

  function unfold() {
    for (const old of document.querySelectorAll('.asked')) old.classList.remove('asked');
    const named = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    const fold = named && named.closest('details');
    if (!fold) return;
    fold.open = true;
    if (named !== fold) {
      const at = named.cellIndex;
      for (const row of fold.querySelectorAll('tr')) if (row.cells.length > at && !row.querySelector('[colspan]')) row.cells[at].classList.add('asked');
    }
    fold.scrollIntoView({ block: 'start' });
    (named === fold ? fold.querySelector('summary') : named).focus({ preventScroll: true });
  }

  window.addEventListener('hashchange', unfold);
  unfold();
})();
