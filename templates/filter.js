// The filters of a long table: rows that do not match are hidden. A row matches
// when each choice is among the words of its own or its group's data of that
// name. A choice of a column hides the others. The address keeps the choice.
(function () {
  'use strict';

  const form = document.getElementById('filters'), table = document.getElementById('filtered'), counted = document.getElementById('counted');
  if (!form || !table) return;
  form.hidden = false;
  const heads = [...table.tHead.rows[0].cells];
  const ofColumns = new Set(heads.flatMap((head) => Object.keys(head.dataset)));

  const has = (el, name, value) => (el.dataset[name] ?? '').split(' ').includes(value);

  function apply() {
    const want = [...new FormData(form)].filter(([, value]) => value);
    const columns = heads.map((head) => want.every(([name, value]) => head.dataset[name] === undefined || head.dataset[name] === value));
    const open = columns.filter((on) => on).length - 1;
    heads.forEach((head, i) => { head.hidden = !columns[i]; });
    let shown = 0;
    for (const body of table.tBodies) {
      let any = false;
      for (const row of body.rows) {
        if (row.classList.contains('group')) continue;
        const on = want.every(([name, value]) => has(body, name, value) || has(row, name, value) || ofColumns.has(name) && !row.dataset[name]);
        row.hidden = !on;
        if (!on) continue;
        shown++;
        any = true;
        for (const cell of row.cells) {
          if (cell.colSpan > 1 || cell.dataset.wide) {
            cell.dataset.wide = 'yes';
            cell.colSpan = open;
          } else cell.hidden = !columns[cell.cellIndex];
        }
      }
      body.hidden = !any;
    }
    counted.textContent = shown === 0 ? counted.dataset.none : shown + (shown === 1 ? ' row.' : ' rows.');
    for (const link of document.querySelectorAll('a.keeps')) link.search = location.search;
  }

  const query = new URLSearchParams(location.search);
  for (const select of form.elements) if (query.has(select.name)) select.value = query.get(select.name);
  form.addEventListener('change', () => {
    const chosen = new URLSearchParams([...new FormData(form)].filter(([, value]) => value));
    try {
      history.replaceState(null, '', chosen.size ? '?' + chosen : location.pathname);
    } catch { /* an address that cannot be written is no reason not to filter */ }
    apply();
  });
  form.addEventListener('submit', (ev) => ev.preventDefault());
  if (location.search) apply();
})();
