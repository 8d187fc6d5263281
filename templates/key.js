// Steps through a fault key: one check or remedy at a time. The address holds the
// answers given so far, so that a step can be sent, and the browser's own back works.
// ?weigh=cause:3,other:0.5 multiplies the weights of causes by what a job's numbers say.
(function () {
  'use strict';

  const box = document.getElementById('walk');
  if (!box) return;
  const $ = (id) => document.getElementById(id);
  let key = null, factors = null;

  function make(tag, text, cls) {
    const el = document.createElement(tag);
    if (text) el.textContent = text;
    if (cls) el.className = cls;
    return el;
  }
  const upper = (text) => text.charAt(0).toUpperCase() + text.slice(1);
  const percent = (x) => (x > 0 && x < 0.005 ? 'under 1' : Math.round(100 * x)) + '\u00a0%';

  // The answers so far, from the address.
  const given = () => location.hash.startsWith('#at=') ? decodeURIComponent(location.hash.slice(4)).split('.').filter(Boolean) : [];
  const address = (answers) => answers.length ? '#at=' + encodeURIComponent(answers.join('.')) : '#at=';

  const ACT = 0, LEFT = 1, COUNT = 2, INSTEAD = 3, DEARER = 4, FIRST = 5;

  // walk follows the answers: the steps met, each with its answer and what is believed
  // before it, and the step that comes now.
  function walk(answers) {
    const met = [];
    let row = key.steps[0], belief = normal(key.prior.map((p, i) => p * factors[i])), end = '';
    for (const id of answers) {
      const act = row && key.acts[row[ACT]], i = act ? act.outcomes.findIndex((o) => o.id === id) : -1;
      if (i < 0) break;
      met.push({ act, says: act.outcomes[i].says, id, belief });
      belief = normal(belief.map((p, c) => p * act.outcomes[i].chance[c]));
      const next = row[FIRST + i];
      end = next === 0 ? 'gone' : next < 0 ? 'help' : '';
      row = next > 0 ? key.steps[next - 1] : null;
    }
    return { met, row, belief, end };
  }

  function normal(list) {
    const sum = list.reduce((a, b) => a + b, 0);
    return sum > 0 ? list.map((p) => p / sum) : list;
  }

  function readFactors() {
    factors = key.ids.map(() => 1);
    const text = new URLSearchParams(location.search).get('weigh') || '';
    for (const part of text.split(',')) {
      const [id, value] = part.split(':'), i = key.ids.indexOf(id), x = Number(value);
      if (i >= 0 && x > 0 && Number.isFinite(x)) factors[i] = x;
    }
    return factors.some((x) => x !== 1);
  }

  const minutes = (m) => m < 100 ? Math.round(m * 2) / 2 + '\u00a0min' : (m / 60).toPrecision(2) + '\u00a0h';

  function why(row, act) {
    if (act.free) return 'It takes no time, so it comes before anything that does.';
    if (row[INSTEAD] < 0) return 'Nothing else is left that is worth its time.';
    const other = key.acts[row[INSTEAD]].name;
    if (row[DEARER] < 0.05) return other + ' would do as well.';
    return 'The next best is: ' + other + '. It would take ' + minutes(row[DEARER]) + ' longer on the mean.';
  }

  function showCauses(belief, before) {
    const order = belief.map((_, i) => i).sort((a, b) => belief[b] - belief[a] || a - b).filter((i) => belief[i] >= 0.005 || before[i] >= 0.005);
    $('walk-causes').replaceChildren(...order.slice(0, 8).map((i) => {
      const li = make('li'), bar = make('meter'), share = make('span', percent(belief[i]), 'share');
      if (Math.abs(belief[i] - before[i]) >= 0.005) share.append(' ', make('small', 'was ' + percent(before[i])));
      bar.min = 0; bar.max = 1; bar.value = belief[i];
      bar.setAttribute('aria-label', key.causes[i]);
      li.append(make('b', key.causes[i]), bar, share);
      return li;
    }));
  }

  function showAct(row, answers) {
    const act = key.acts[row[ACT]], head = make('p', '', 'walk-act'), kind = { check: 'a check, ', remedy: 'a remedy, ', help: '' }[act.kind];
    head.append(make('b', act.name), ' ', make('small', kind + act.takes));
    const parts = [head, make('p', act.do)];
    for (const id of act.cautions || []) parts.push(make('p', key.cautions[id], 'walk-caution'));
    const list = make('ul', '', 'walk-answers');
    act.outcomes.forEach((o) => {
      const li = make('li'), link = make('a', upper(o.says));
      link.href = address([...answers, o.id]);
      li.append(link);
      list.append(li);
    });
    parts.push(list, make('p', 'Why now: ' + why(row, act) + ' From here it takes ' + minutes(row[LEFT]) + ' on the mean, in ' + row[COUNT] + ' steps.', 'said'));
    $('walk-now').replaceChildren(...parts);
  }

  function show(focus) {
    const { met, row, belief, end } = walk(given());
    const answers = met.map((m) => m.id);
    $('walk-done').replaceChildren(...met.map((m, i) => {
      const p = make('p', '', 'walk-met'), again = make('a', m.act.name);
      again.href = address(answers.slice(0, i));
      p.append(again, ': ' + m.says);
      return p;
    }));
    if (row) showAct(row, answers);
    else if (end === 'help') $('walk-now').replaceChildren(make('p', 'Call for help. What is left is dearer to look for than to ask.', 'walk-act'));
    else $('walk-now').replaceChildren(make('p', 'Gone. Write the cause into the log, so that the next key knows it.', 'walk-act'));
    showCauses(belief, met.length ? met[met.length - 1].belief : belief);
    $('walk-back').parentElement.hidden = met.length === 0;
    if (focus) $('walk-now').focus({ preventScroll: true });
  }

  window.laydownKey = (data) => {
    key = data;
    if (readFactors()) {
      box.querySelector('h2').after(make('p', 'The causes are weighed with the numbers of the job that you came from; the order of the steps is that of any job.', 'said'));
    }
    box.hidden = false;
    show(false);
    window.addEventListener('hashchange', () => show(true));
    $('walk-back').addEventListener('click', () => { location.hash = address(given().slice(0, -1)); });
    $('walk-again').addEventListener('click', () => { location.hash = address([]); });
  };
  const tag = document.createElement('script');
  tag.src = box.dataset.script;
  document.head.append(tag);
})();
