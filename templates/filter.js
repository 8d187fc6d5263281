// The filters of a long table. A choice that the heads of columns carry in their
// data shows those columns only, and the rows that have something in them; any
// other shows the rows whose own or whose group's data is that. The address
// keeps the choice.
(function () {
  'use strict';

  const form = document.getElementById('filters'), table = document.getElementById('filtered'), counted = document.getElementById('counted');
  if (!form || !table) return;
  form.hidden = false;
  const heads = [...table.tHead.rows[0].cells];
  const ofColumns = new Set(heads.flatMap((head) => Object.keys(head.dataset)));

  function apply() {
    const want = [...new FormData(form)].filter(([, value]) => value);
    const ofRows = want.filter(([name]) => !ofColumns.has(name));
    const columns = heads.map((head, i) => i === 0 || want.every(([name, value]) => !ofColumns.has(name) || head.dataset[name] === value));
    const open = columns.filter((on) => on).length;
    heads.forEach((head, i) => { head.hidden = !columns[i]; });
    let shown = 0;
    for (const body of table.tBodies) {
      let any = false;
      for (const row of body.rows) {
        if (row.classList.contains('group')) {
          row.cells[0].colSpan = open;
          continue;
        }
        const cells = [...row.cells];
        let full = false;
        for (const [i, cell] of cells.entries()) {
          if (i === 0) continue;
          if (cell.classList.contains('whole')) {
            cell.colSpan = open - 1;
            full = true;
          } else {
            cell.hidden = !columns[i];
            full ||= columns[i] && cell.firstChild !== null;
          }
        }
        const on = full && ofRows.every(([name, value]) => (body.dataset[name] ?? row.dataset[name]) === value);
        row.hidden = !on;
        if (on) { shown++; any = true; }
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
