// The filters of the table of waits: rows that do not match are hidden. The
// address keeps the choice.
(function () {
  'use strict';

  const form = document.getElementById('filters'), table = document.getElementById('waits'), counted = document.getElementById('counted');
  if (!form || !table) return;
  form.hidden = false;
  const bodies = [...table.tBodies];

  function apply() {
    const want = Object.fromEntries(new FormData(form));
    let shown = 0;
    for (const body of bodies) {
      const here = (!want.ink || body.dataset.ink === want.ink) && (!want.medium || body.dataset.medium === want.medium);
      let any = false;
      for (const row of body.rows) {
        if (!row.dataset.coverage) continue;
        const on = here && (!want.coverage || row.dataset.coverage === want.coverage) && (!want.storage || row.dataset.storage === want.storage);
        row.hidden = !on;
        if (on) { shown++; any = true; }
      }
      body.hidden = !any;
    }
    counted.textContent = shown === 0 ? 'No row: this ink is not printed on this medium, or the medium cannot be kept so.' : shown + (shown === 1 ? ' row.' : ' rows.');
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
