// The job plan's page: takes the choices from the address and the form, fetches
// the scripts that hold the ink's and the medium's numbers, asks plan.js and shows its answer.
(function () {
  'use strict';

  const form = document.getElementById('plan-form');
  if (!form) return;
  const $ = (id) => document.getElementById(id);
  const FIELDS = ['ink', 'medium', 'film', 'coverage', 'storage', 'room', 'laminator', 'speed', 'grain', 'sheet', 'back', 'stack-rh', 'pieces', 'history', 'now', 'printed'];
  const MORE = ['speed', 'sheet', 'stack-rh', 'pieces', 'history'];
  const WORDS = { go: 'Go', wait: 'Wait', change: 'Change', refuse: 'Refuse' };
  const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
  const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

  // ---- scripts with data: tags added when they are needed; files cannot be fetched

  const asked = new Map();
  function script(name) {
    if (!asked.has(name)) {
      asked.set(name, new Promise((done, fail) => {
        const tag = document.createElement('script');
        tag.src = form.dataset.scripts + name;
        tag.onload = done;
        tag.onerror = () => { asked.delete(name); fail(new Error('the file ' + name + ' is missing beside this page')); };
        document.head.append(tag);
      }));
    }
    return asked.get(name);
  }

  // ---- the form and the address

  const pad = (n) => String(n).padStart(2, '0');
  const stamp = (d) => d.getFullYear() + '-' + pad(d.getMonth() + 1) + '-' + pad(d.getDate()) + 'T' + pad(d.getHours()) + ':' + pad(d.getMinutes());

  function fromAddress() {
    const query = new URLSearchParams(location.search);
    for (const name of FIELDS) {
      if (!query.has(name)) continue;
      const value = query.get(name);
      if (name === 'printed' && query.getAll(name).includes('unknown')) $('unknown').checked = true;
      else form.querySelector('#' + name).value = value;
    }
    if (!$('now').value) $('now').value = stamp(new Date());
    $('more').open = MORE.some((name) => query.get(name));
    return query.has('ink');
  }

  function job() {
    const j = {};
    for (const name of FIELDS) {
      const value = form.querySelector('#' + name).value.trim();
      if (value) j[name === 'stack-rh' ? 'stackRH' : name] = value;
    }
    if ($('unknown').checked) j.printed = 'unknown';
    return j;
  }

  function toAddress(j) {
    const query = new URLSearchParams();
    for (const [name, value] of Object.entries(j)) query.set(name === 'stackRH' ? 'stack-rh' : name, value);
    try {
      history.replaceState(null, '', '?' + query);
    } catch { /* an address that cannot be written is no reason not to answer */ }
  }

  // ---- showing

  const upper = (text) => text.charAt(0).toUpperCase() + text.slice(1);
  const hours = (h) => {
    const minutes = Math.round(h * 60), m = minutes % 60, whole = (minutes - m) / 60;
    if (whole === 0) return m + '\u00a0min';
    return whole + '\u00a0h' + (m ? ' ' + m + '\u00a0min' : '');
  };
  function when(text) {
    const d = new Date(text + ':00Z');
    return { big: DAYS[d.getUTCDay()] + ' ' + pad(d.getUTCHours()) + ':' + pad(d.getUTCMinutes()), date: d.getUTCDate() + ' ' + MONTHS[d.getUTCMonth()] };
  }
  function make(tag, text, cls) {
    const el = document.createElement(tag);
    if (text) el.textContent = text;
    if (cls) el.className = cls;
    return el;
  }
  const mark = (verdict) => {
    const svg = form.ownerDocument.querySelector('[data-verdict="' + verdict + '"] svg').cloneNode(true);
    svg.setAttribute('width', '52');
    svg.setAttribute('height', '9.5');
    return svg;
  };

  function ready(plan, j) {
    let big, under, what = 'Ready by';
    if (j.printed === 'unknown') {
      what = 'Ready'; big = 'test it'; under = 'The clock says nothing of a print of unknown age.';
    } else if (plan.wait_hours === null) {
      what = 'Kept like this'; big = plan.verdict === 'refuse' && !plan.counted ? '–' : 'hardly dries'; under = upper(plan.wait_reason);
    } else if (!plan.remaining_hours) {
      what = 'By the clock'; big = 'ready now'; under = hours(plan.wait_hours) + ' needed, ' + plan.counted + ' counted';
    } else {
      const t = plan.ready_by ? when(plan.ready_by) : null;
      what = t ? 'Ready by' : 'Still to go';
      big = t ? t.big : hours(plan.remaining_hours);
      under = (t ? t.date + '. ' : '') + hours(plan.wait_hours) + ' in all, ' + hours(plan.remaining_hours) + ' still to go';
    }
    $('a-ready-what').textContent = what;
    $('a-ready').textContent = big;
    $('a-ready').classList.toggle('wordy', !/\d/.test(big));
    $('a-ready-under').textContent = under;
  }

  // When it can leave the shop, and what is counted until then.
  function handOver(plan) {
    const t = plan.hand_over_by ? when(plan.hand_over_by) : null;
    $('a-hand-what').textContent = t || plan.hand_over_hours === null ? 'Hand over by' : 'Hand over after';
    $('a-hand').textContent = plan.hand_over_hours === null ? '' : t ? t.big + ', ' + t.date + '.' : hours(plan.hand_over_hours) + '.';
    $('a-hand-under').textContent = plan.hand_over_reason || upper(plan.hand_over);
  }

  const fahrenheit = (c) => Math.round(c * 1.8 + 32);
  const between = (span) => span.low_c + '–' + span.high_c;
  const inBoth = (span) => fahrenheit(span.low_c) + '–' + fahrenheit(span.high_c) + '\u00a0°F';

  // The window stands large: one for the whole run, or the first piece's with
  // the steady run's beside it. A cold film has what its maker says of a warmed roller.
  function rollers(plan) {
    const film = $('film').selectedOptions[0].dataset, w = plan.window;
    let what = film.what || 'Roller', big = film.number || '–', unit = film.unit || '', under = film.under ? film.under + '. ' : '';
    if (w) {
      const two = w.low_c === null, span = two ? w.first : w;
      const words = laydownPlan.data().limit_words;
      what = two ? 'Set for the first piece' : 'Set the rollers to';
      big = between(span);
      unit = '°C';
      under = inBoth(span) + '. Below, ' + words[w.low_limit] + ' is missed; above, it is ' + words[w.high_limit] + '.';
      if (two) {
        $('a-steady').textContent = between(w.steady);
        $('a-steady-under').textContent = inBoth(w.steady) + '. The cover cools as it runs: turn up after the first pieces.';
      }
    } else if (film.hot) {
      what = 'Set temperature';
      big = 'no window';
      unit = '';
      under = '';
    }
    $('a-window-what').textContent = what;
    $('a-window').textContent = big;
    $('a-window').classList.toggle('wordy', !/\d/.test(big));
    $('a-window-unit').textContent = unit ? ' ' + unit : '';
    $('a-window-under').textContent = under + plan.window_reason;
    $('a-steady-box').hidden = !(w && w.low_c === null);
  }

  function fill(list, items) {
    list.replaceChildren(...items);
  }

  function working(plan, j) {
    const rows = [];
    const put = (name, value) => rows.push(make('dt', name), make('dd', value));
    if (typeof plan.computed_hours === 'number') put('computed, kept as it is', hours(plan.computed_hours));
    if (plan.wait_hours !== null) put('told, rounded up', hours(plan.wait_hours));
    if (plan.counted) put('since printing', plan.counted);
    fill($('a-steps'), rows);
    $('a-link').href = 'tables/waits/' + j.ink + '.' + j.medium + '.html#' + [j.coverage, j.storage, j.room].join('.');
    $('a-link').parentElement.hidden = plan.verdict === 'refuse';
    const machine = laydownPlan.data().laminators.find((m) => m.id === j.laminator);
    const speed = machine.speeds.findIndex((v) => paceOf(v) === j.speed);
    $('a-heat-link').href = 'tables/windows/' + [j.film, j.medium, j.laminator].join('.') + '.html#' + [speed < 0 ? machine.usual : speed, j.room].join('.');
    $('a-heat-link').parentElement.hidden = !plan.window;
  }

  const blank = [document.querySelector('h1').textContent, document.querySelector('.lead').textContent, document.title];
  function noAnswer(why) {
    $('answer').hidden = true;
    [document.querySelector('h1').textContent, document.querySelector('.lead').textContent, document.title] = blank;
    $('plan-status').className = '';
    $('plan-status').textContent = why;
  }

  // The page takes the job for its title, and the answer goes before the form.
  function entitle(j) {
    const chosen = (id) => $(id).selectedOptions[0].textContent.trim();
    const lower = (text) => text.charAt(0).toLowerCase() + text.slice(1);
    const title = upper(chosen('ink')) + ', on ' + chosen('medium');
    let print = 'under ' + chosen('film') + '. ' + upper(j.coverage) + ' coverage, ' + lower(chosen('storage')) + ' in ' + lower(chosen('room'));
    if (j.printed === 'unknown') print += ', printed nobody knows when';
    else if (j.printed) print += ', since ' + when(j.printed).big + ' on ' + when(j.printed).date;
    if (j.history) print += ' (' + j.history + ')';
    const run = [chosen('laminator')];
    if (j.speed) run.push('at ' + chosen('speed'));
    if (j.sheet) run.push('sheet ' + j.sheet + ', grain ' + j.grain);
    if (j.back !== 'open') run.push('back ' + chosen('back'));
    if (j.stackRH) run.push(j.stackRH + ' in the stack');
    if (j.pieces) run.push(j.pieces + ' good pieces');
    document.querySelector('h1').textContent = title;
    document.querySelector('.lead').textContent = print + '. ' + upper(run.join(', ')) + '.';
    document.title = document.title.replace(/^.* · /, title + ' · ');
    if ($('answer').nextElementSibling !== form) {
      form.before($('answer'));
      form.prepend(make('h2', 'This job, or another'));
    }
  }

  function show(plan, j) {
    entitle(j);
    $('a-verdict').textContent = WORDS[plan.verdict];
    for (const el of document.querySelectorAll('.marks [data-verdict]')) el.hidden = el.dataset.verdict !== plan.verdict;
    ready(plan, j);
    rollers(plan);
    handOver(plan);
    fill($('a-reasons'), plan.reasons.map((r) => {
      const li = make('li');
      li.append(r.test ? make('span', '', 'tickbox') : mark(r.verdict), ' ', make('b', (r.test ? 'Test' : WORDS[r.verdict]) + '. '), upper(r.text));
      return li;
    }));
    const films = laydownPlan.data().films;
    $('a-others-box').hidden = !(plan.others && plan.others.length);
    fill($('a-others'), (plan.others || []).map((id) => {
      const li = make('li'), a = make('a', (films.find((f) => f.id === id) || { name: id }).name);
      a.href = '?' + new URLSearchParams({ ...j, film: id });
      li.append(a);
      return li;
    }));
    const tests = (plan.tests || []).map((id) => document.querySelector('[data-test="' + id + '"]')).filter(Boolean);
    $('a-tests-box').hidden = tests.length === 0;
    fill($('a-tests'), tests.map((a) => {
      const li = make('li');
      li.append(a.cloneNode(true));
      return li;
    }));
    $('a-feed').replaceChildren(make('b', upper(plan.feed.advice) + '. '), plan.feed.why);
    const weigh = (family) => laydownPlan.data().causes.filter((c) => c.family === family && plan.evidence[c.physics] !== undefined)
      .map((c) => c.id + ':' + Math.floor(plan.evidence[c.physics] * 100 + 0.5) / 100).join(',');
    $('a-faults-box').hidden = !(plan.faults && plan.faults.length);
    fill($('a-faults'), (plan.faults || []).map((f) => {
      const li = make('li'), a = make('a', f.text);
      a.href = 'faults/' + f.family + '.html?weigh=' + encodeURIComponent(weigh(f.family));
      li.append(a, ' ', make('small', f.factor + ' times as likely as in any job'));
      return li;
    }));
    $('a-laminate-box').hidden = plan.laminate.length === 0;
    fill($('a-laminate'), plan.laminate.flatMap((line) => [make('dt', upper(line.name)), make('dd', line.text)]));
    $('a-maker').textContent = hours(plan.maker_wait_hours);
    working(plan, j);
    fill($('a-cautions'), plan.cautions.map((text) => {
      const [lead, ...rest] = text.split('. '), words = make('p');
      words.append(make('strong', lead + '. '), rest.join('. '));
      return words;
    }));
    $('answer').hidden = false;
    $('plan-status').className = 'unseen'; // the answer below says it to eyes
    $('plan-status').textContent = WORDS[plan.verdict] + '. ' + $('a-ready-what').textContent + ' ' + $('a-ready').textContent + '.';
  }

  // ---- recent plans: on this device, in the browser's own store, and nowhere else

  const STORE = 'laydown-plans', MOST = 8;
  function recent() {
    try {
      const list = JSON.parse(localStorage.getItem(STORE));
      return Array.isArray(list) ? list.filter((p) => typeof p.query === 'string' && typeof p.name === 'string') : [];
    } catch { return []; /* a store that is shut or spoiled holds nothing */ }
  }
  function keep(list) {
    try {
      localStorage.setItem(STORE, JSON.stringify(list.slice(0, MOST)));
    } catch { /* then they are not kept */ }
    listRecent();
  }
  function listRecent() {
    const list = recent();
    $('recent').hidden = list.length === 0;
    fill($('recent-list'), list.map((p) => {
      const li = make('li'), a = make('a', p.name);
      a.href = '?' + p.query;
      li.append(a);
      return li;
    }));
  }
  // The clock belongs to the day it was asked on: a plan that is opened again counts anew.
  function remember(j) {
    const query = new URLSearchParams();
    for (const [name, value] of Object.entries(j)) if (name !== 'now') query.set(name === 'stackRH' ? 'stack-rh' : name, value);
    const chosen = (id) => $(id).selectedOptions[0].textContent.trim();
    const name = upper(chosen('ink')) + ' on ' + chosen('medium') + ' under ' + chosen('film');
    keep([{ query: String(query), name }, ...recent().filter((p) => p.query !== String(query))]);
  }
  $('recent-forget').addEventListener('click', () => keep([]));

  // ---- answering

  let turn = 0;
  function answer(asked) {
    const j = job(), mine = ++turn;
    const missing = ['ink', 'medium', 'film'].filter((name) => !j[name]);
    if (missing.length > 0) {
      noAnswer('Still to choose: ' + missing.join(', ') + '.');
      return;
    }
    toAddress(j);
    script('plan-data.js').then(() => Promise.all([script('plan-' + j.ink + '.js'), script('heat-' + j.medium + '.js'), script('laminate-' + j.medium + '.js')])).then(() => {
      if (mine !== turn) return;
      show(laydownPlan.answer(j), j);
      remember(j);
      if (asked) {
        $('answer').focus({ preventScroll: true });
        scrollTo(0, 0);
      }
    }).catch((fault) => {
      if (mine !== turn) return;
      noAnswer(upper(fault.message) + '.');
    });
  }

  // The media that the ink prints on come first in their list.
  function sortMedia() {
    const ink = $('ink').value, list = $('medium');
    if (!ink) return;
    script('plan-data.js').then(() => {
      const of = new Map(laydownPlan.data().media.map((m) => [m.id, m.inks.includes(ink)]));
      const chosen = list.value, groups = [make('optgroup'), make('optgroup')];
      groups[0].label = 'printed with this ink';
      groups[1].label = 'not made for it';
      const options = [...list.querySelectorAll('option')].filter((o) => o.value);
      options.forEach((o) => groups[of.get(o.value) ? 0 : 1].append(o));
      list.replaceChildren(list.querySelector('option[value=""]') || make('option', 'which medium?'), ...groups.filter((g) => g.children.length > 0));
      list.value = chosen;
    }, () => { /* the answer says that the file is missing */ });
  }

  // The speeds of the chosen machine that windows are held for. One that the
  // address asks for and the machine has not stays, so that the answer says so.
  const paceOf = (v) => Math.round(v * 60 * 1000) / 1000 + ' m/min';
  function listSpeeds(wanted) {
    return script('plan-data.js').then(() => {
      const machine = laydownPlan.data().laminators.find((m) => m.id === $('laminator').value), list = $('speed');
      const options = machine.speeds.map((v, i) => {
        const option = make('option', paceOf(v).replace(' ', '\u00a0') + ' (' + Number((v * 60 / 0.3048).toPrecision(3)) + '\u00a0ft/min)' + (i === machine.usual ? ', usual' : ''));
        option.value = paceOf(v);
        return option;
      });
      if (wanted && !options.some((o) => o.value === wanted)) {
        const option = make('option', wanted);
        option.value = wanted;
        options.push(option);
      }
      list.replaceChildren(list.options[0], ...options);
      list.value = wanted;
    }, () => { /* the answer says that the file is missing */ });
  }

  form.addEventListener('submit', (ev) => { ev.preventDefault(); answer(true); });
  form.addEventListener('change', (ev) => {
    if (ev.target.id === 'ink') sortMedia();
    if (ev.target.id === 'laminator') {
      listSpeeds('').then(() => answer());
      return;
    }
    if (ev.target.id === 'unknown') $('printed').disabled = $('unknown').checked;
    answer();
  });
  listRecent();
  const told = fromAddress();
  $('printed').disabled = $('unknown').checked;
  sortMedia();
  const asks = new URLSearchParams(location.search).get('speed') || '';
  if (told) listSpeeds(asks).then(() => answer());
  else listSpeeds(asks);
})();
