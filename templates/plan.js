// The job plan's arithmetic. It gives the same answers as the command
// "laydown plan"; every number it starts from was computed when the handbook
// was published. It knows nothing of the page: plan-page.js asks and shows.
//
//   laydownPlan.common(data)   called by plan-data.js: what every job needs
//   laydownPlan.ink(data)      called by plan-<ink>.js: one ink's laws
//   laydownPlan.heat(data)     called by heat-<medium>.js: what heat does on it
//   laydownPlan.has(ink, medium)  whether what a job needs is there
//   laydownPlan.data()         what common was given
//   laydownPlan.answer(job)    the plan; throws an Error that says what is
//                              wrong with the job
(function () {
  'use strict';

  let data = null;
  const inks = new Map();
  const heats = new Map();
  const laminates = new Map();

  // ---- the slab: u(x) = level + Σ a_n·cos(β_n·x − φ_n), and the rest that the
  // modes do not carry (the program's package drying says why)

  function modes(slab) {
    const [rate, floor, face, back] = slab;
    const beta = slab.slice(4);
    const slope = (biot, b) => biot / (b * b + biot * biot);
    const sine = (biot, b) => biot / Math.hypot(b, biot);
    const m = { rate, floor, face, back, beta, phi: [], norm: [], mean: [] };
    beta.forEach((b, n) => {
      m.phi.push(b === 0 || back === 0 ? 0 : Math.atan(back / b));
      m.norm.push(b === 0 ? 1 : (1 + slope(face, b) + slope(back, b)) / 2);
      m.mean.push(b === 0 ? 1 : ((n % 2 ? -1 : 1) * sine(face, b) + sine(back, b)) / b);
    });
    return m;
  }

  function wave(k, p) {
    const half = k / 2;
    return Math.cos(half - p) * (Math.abs(half) > 1e-8 ? Math.sin(half) / half : 1);
  }

  const overlap = (a, p, b, q) => (wave(a - b, p - q) + wave(a + b, p + q)) / 2;

  const last = (m) => m.beta[m.beta.length - 1];

  function amount(s) {
    let sum = s.level + s.rest;
    if (s.modes) s.amplitude.forEach((a, n) => { sum += a * s.modes.mean[n]; });
    return sum;
  }

  // enter gives the same content in the modes of another storage.
  function enter(s, m) {
    const next = { level: m.floor, modes: m, amplitude: [], rest: 0 };
    let even = s.level - m.floor;
    if (s.modes && s.modes.face === m.face && s.modes.back === m.back) {
      next.amplitude = s.amplitude.slice();
    } else {
      even += s.rest;
      next.amplitude = m.beta.map((b, k) => {
        let sum = 0;
        if (s.modes) {
          s.amplitude.forEach((a, n) => { sum += a * overlap(s.modes.beta[n], s.modes.phi[n], b, m.phi[k]); });
        }
        return sum / m.norm[k];
      });
    }
    next.amplitude = next.amplitude.map((a, n) => a + even * m.mean[n] / m.norm[n]);
    next.rest = amount(s) - amount(next);
    return next;
  }

  // eigenvalues solves β − atan(face/β) − atan(back/β) = n·π for the first n roots,
  // each alone between n·π and (n+1)·π.
  function eigenvalues(face, back, count) {
    const phase = (biot, b) => (biot === 0 ? 0 : Math.atan(biot / b));
    const slope = (biot, b) => (biot === 0 ? 0 : biot / (b * b + biot * biot));
    const list = [];
    for (let n = 0; n < count; n++) {
      const target = n * Math.PI;
      let lo = target;
      let hi = target + Math.PI;
      const total = face + back;
      if (n === 0 && total === 0) {
        list.push(0);
        continue;
      }
      let b = n > 0 ? lo : total > 1e-8 ? Math.sqrt(1 / (1 + 1 / total)) : Math.sqrt(total);
      for (let i = 0; i < 200; i++) {
        const f = b - phase(face, b) - phase(back, b) - target;
        if (f === 0) break;
        if (f < 0) lo = Math.max(lo, b); else hi = Math.min(hi, b);
        let next = b - f / (1 + slope(face, b) + slope(back, b));
        if (!(next >= lo && next <= hi)) next = lo + (hi - lo) / 2;
        const moved = Math.abs(next - b);
        b = next;
        if (moved <= 4e-16 * b) break;
      }
      list.push(b);
    }
    return list;
  }

  // covered is a Biot number with a film over that face: resistances in series.
  const covered = (biot, film) => (biot === 0 || film === Infinity ? 0 : 1 / (1 / biot + film));

  function after(s, hours) {
    const fo = s.modes.rate * hours;
    return {
      level: s.level,
      modes: s.modes,
      amplitude: s.amplitude.map((a, n) => a * Math.exp(-s.modes.beta[n] * s.modes.beta[n] * fo)),
      rest: s.rest * Math.exp(-last(s.modes) * last(s.modes) * fo),
    };
  }

  // ---- the laws: each has fresh, march, until (hours, or null for "hardly dries") and left

  function slabLaw(law, medium, coverage, safe, shut) {
    const of = (room, storage) => {
      const key = room + '/' + storage;
      const m = law.media[medium];
      return modes((shut && m.shut && m.shut[key]) || m.slabs[key]);
    };
    return {
      fresh: { level: law.media[medium].start[coverage], modes: null, amplitude: [], rest: 0 },
      limit: safe,
      left: amount,
      march: (s, room, storage, hours) => after(enter(s, of(room, storage)), hours),
      until: (s, room, storage) => until(s, of(room, storage), safe, data.hardly_h),
      // clears is until under a film, from now on; null for more than a year.
      clears(s, room, storage, film, back) {
        const m = law.media[medium];
        const [rate, floor, face, open] = m.slabs[room + '/' + storage];
        const over = m.over_m / film.pass;
        const top = covered(face, over);
        const under = back === 'mounted' ? 0 : back === 'film' ? covered(open, over) : open;
        return until(s, modes([rate, floor, top, under].concat(eigenvalues(top, under, s.modes ? s.modes.beta.length : 32))), safe, data.locked_h);
      },
    };
  }

  // until is the further time in a place until no more than the limit is left; null
  // where that takes longer than most.
  function until(s, m, limit, most) {
    if (amount(s) <= limit) return 0;
    const from = enter(s, m);
    if (from.level >= limit || amount(after(from, most)) > limit) return null;
    let lo = 0;
    let hi = most;
    for (let i = 0; i < 60; i++) {
      const mid = (lo + hi) / 2;
      if (amount(after(from, mid)) > limit) lo = mid; else hi = mid;
    }
    return hi;
  }

  function rateLaw(law, medium, coverage) {
    const rate = (room, storage) => law.rates[room + '/' + storage];
    return {
      fresh: law.media[medium].start[coverage],
      limit: law.safe,
      left: (s) => s,
      march: (s, room, storage, hours) => s * Math.exp(-rate(room, storage) * hours),
      until(s, room, storage) {
        if (s <= law.safe) return 0;
        const hours = Math.log(s / law.safe) / rate(room, storage);
        return hours <= data.hardly_h ? hours : null;
      },
    };
  }

  function clockLaw(law, medium, coverage) {
    return {
      fresh: law.media[medium].start[coverage],
      limit: 0,
      left: (s) => s,
      march: (s, room, storage, hours) => Math.max(s - hours, 0),
      until: (s) => (s <= data.hardly_h ? s : null),
    };
  }

  function lawOf(r) {
    const law = inks.get(r.ink.id);
    if (law.kind === 'modes') {
      return slabLaw(law, r.medium.id, r.coverage, r.film.safe === null ? law.safe : r.film.safe, r.shut);
    }
    return (law.kind === 'rate' ? rateLaw : clockLaw)(law, r.medium.id, r.coverage);
  }

  // ---- words

  function fill(phrase, values) {
    return Object.entries(values).reduce((text, [name, value]) => text.split('{' + name + '}').join(value), phrase);
  }

  function duration(hours) {
    const minutes = Math.floor(hours * 60 + 0.5);
    const h = Math.floor(minutes / 60);
    const m = minutes % 60;
    if (h === 0) return m + '\u00a0min';
    return m === 0 ? h + '\u00a0h' : h + '\u00a0h ' + m + '\u00a0min';
  }

  function durationOf(seconds) {
    const minutes = Math.floor(seconds / 60 + 0.5);
    return duration(minutes / 60);
  }

  const side = (m) => (m * 1000).toFixed(0) + '\u00a0mm (' + (m / 0.0254).toFixed(1) + '\u00a0in)';
  const pace = (v) => (v * 60).toFixed(1) + '\u00a0m/min (' + (v * 60 / 0.3048).toFixed(1) + '\u00a0ft/min)';

  // two significant digits, as the terminal prints them: a half is rounded up
  function short(x, unit) {
    const text = Number((x * (1 + 1e-9)).toPrecision(2));
    return (x !== 0 && (x < 1e-4 || x >= 100) ? text.toExponential().replace(/e([+-])(\d)$/, 'e$10$2') : String(text)) + '\u00a0' + unit;
  }

  function roundDays(hours) {
    const step = hours / 24 < 3 ? 0.5 : 1;
    const days = Math.ceil(hours / 24 / step - 1e-6) * step;
    if (days > 30) return data.phrases['many-days'];
    if (days <= 0.5) return data.phrases['half-day'];
    if (days === 1) return data.phrases['one-day'];
    return fill(data.phrases.days, { n: Math.floor(days) + (days % 1 ? '½' : '') });
  }

  function roundUp(hours) {
    const step = hours < 3 ? 0.5 : hours <= 48 ? 1 : hours <= 96 ? 2 : 6;
    return Math.max(Math.ceil((hours - 1 / 60) / step), 0) * step;
  }

  // ---- reading a job

  function find(list, id, what) {
    const found = list.find((x) => x.id === id);
    if (!found) throw new Error(id ? 'no ' + what + ' is called "' + id + '"' : 'which ' + what + '? none is given');
    return found;
  }

  const LENGTHS = { mm: 0.001, cm: 0.01, m: 1, in: 0.0254, '"': 0.0254, ft: 0.3048 };
  const SPEEDS = { 'm/min': 1 / 60, 'ft/min': 0.3048 / 60, fpm: 0.3048 / 60, 'mm/s': 0.001, 'm/s': 1, 'in/s': 0.0254 };

  function measure(text, units, what) {
    const m = /^\s*(\d+(?:\.\d+)?|\.\d+)\s*([^\s\d][^\s]*)\s*$/.exec(text);
    if (!m || !(m[2] in units)) throw new Error('"' + text + '" is not ' + what);
    return Number(m[1]) * units[m[2]];
  }

  function readSheet(text, medium) {
    text = (text || '').trim();
    if (text === '' && medium.length_m > 0) return { across: medium.width_m, along: medium.length_m, roll: false };
    if (text === '' || text === 'roll') return { across: medium.width_m, along: 0, roll: true };
    const what = 'a sheet: write the side along the roller, then the side along the feed, such as 320x450 mm, or roll';
    const parts = text.replace(/×/g, 'x').split(/x(.*)/s);
    if (parts.length < 2) throw new Error('"' + text + '" is not ' + what);
    const unit = parts[1].trim().replace(/^[\d. ]+/, '');
    const first = /^[\d. ]+$/.test(parts[0].trim()) ? parts[0].trim() + ' ' + unit : parts[0];
    const sheet = { across: measure(first, LENGTHS, what), along: measure(parts[1], LENGTHS, what), roll: false };
    if (!(sheet.across > 0 && sheet.along > 0)) throw new Error('"' + text + '" is not ' + what);
    return sheet;
  }

  function readPieces(text) {
    text = (text || '').trim();
    const n = text === '' ? 1 : Number(text);
    if (!/^[+-]?\d*$/.test(text) || !(n >= 1 && n <= 1e6)) {
      throw new Error('"' + text + '" is not a number of pieces: write a whole number from 1 to a million');
    }
    return n;
  }

  // stepOf is which row of a window holds for a humidity measured in the stack:
  // 0 is the room's own, the rest are the steps, taken up to the safe side.
  function stepOf(text) {
    const h = measure(text, { '%': 0.01 }, 'a humidity such as 55 %');
    if (h > 1) throw new Error('humidity of the stack: ' + text + ' is not between 0 % and 100 %');
    const i = data.humidity_steps.findIndex((step) => h <= step + 1e-9);
    return 1 + (i < 0 ? data.humidity_steps.length - 1 : i);
  }

  const TIMES = { h: 1, hour: 1, hours: 1, min: 1 / 60, minutes: 1 / 60, d: 24, day: 24, days: 24, week: 168, weeks: 168 };

  function readHistory(text) {
    if (!(text || '').trim()) return [];
    return text.split(',').map((part) => {
      const m = /^\s*(.*\S)\s+(\S+)\s*$/.exec(part);
      if (!m) throw new Error('"' + part.trim() + '" is not a stay: write a time and a storage, such as 6 h hung');
      return {
        hours: measure(m[1], TIMES, 'a time such as 6 h'),
        storage: find(data.storages, m[2], 'storage').id,
      };
    });
  }

  // Times on the shop's clock carry no zone: they are read as if in UTC, so
  // that no change to summer time falls into a wait.
  function clock(text, what) {
    const m = /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::\d\d)?$/.exec(text);
    const at = m && Date.UTC(m[1], m[2] - 1, m[3], m[4], m[5]);
    if (!m || new Date(at).toISOString().slice(0, 16) !== text.slice(0, 10) + 'T' + text.slice(11, 16)) {
      throw new Error(what + ': "' + text + '" is not a time such as 2026-11-24T15:40');
    }
    return at / 60000; // minutes
  }

  const suits = (medium) => data.storages.filter((s) => s.forms.some((f) => medium.forms.includes(f)));

  function usualStorage(medium) {
    const list = suits(medium);
    const usual = data.defaults.storage;
    return list.length === 0 || list.some((s) => s.id === usual) ? usual : list[0].id;
  }

  function read(job) {
    const r = {
      ink: find(data.inks, job.ink, 'ink'),
      medium: find(data.media, job.medium, 'medium'),
      film: find(data.films, job.film, 'film'),
      machine: find(data.laminators, job.laminator || data.defaults.laminator, 'laminator'),
      room: find(data.rooms, job.room || data.defaults.room, 'room'),
      coverage: job.coverage || 'normal',
      grain: job.grain || 'unknown',
      back: job.back || 'open',
      shut: job.back === 'film' || job.back === 'mounted',
    };
    r.storage = find(data.storages, job.storage || usualStorage(r.medium), 'storage');
    r.sheet = readSheet(job.sheet, r.medium);
    r.pieces = readPieces(job.pieces);
    r.speed = job.speed ? measure(job.speed, SPEEDS, 'a speed such as 1.5 m/min') : 0;
    r.humidity = job.stackRH ? stepOf(job.stackRH) : 0;
    r.stack = job.stackRH ? measure(job.stackRH, { '%': 0.01 }, 'humidity of the stack') : null;
    r.history = readHistory(job.history);
    r.now = job.now ? clock(job.now, 'now') : null;
    r.unknown = job.printed === 'unknown';
    if (r.unknown) r.history = [];
    const told = r.history.reduce((sum, stay) => sum + stay.hours, 0);
    r.elapsed = told;
    if (r.unknown) r.elapsed = 0;
    else if (job.printed) {
      const at = clock(job.printed, 'printed');
      if (r.now === null) throw new Error('a time of printing needs the time now');
      if (at > r.now) throw new Error('printed ' + job.printed + ' is later than now, ' + job.now);
      r.elapsed = (r.now - at) / 60;
      const rest = r.elapsed - told;
      if (rest < -1 / 60) {
        throw new Error('the history lasts ' + duration(told) + ', but only ' + duration(r.elapsed) + ' have passed since printing');
      }
      if (rest > 0) r.history.push({ hours: rest, storage: r.storage.id });
    }
    const kept = [r.storage.id, ...r.history.map((stay) => stay.storage)].map((id) => find(data.storages, id, 'storage'));
    const wrong = kept.find((s) => !suits(r.medium).includes(s));
    if (wrong) {
      throw new Error(wrong.id + ' (' + wrong.name + ') does not suit ' + r.medium.name + ', which comes as ' + r.medium.forms.join(' or '));
    }
    return r;
  }

  // ---- judging

  function pair(r, film) {
    const among = (kinds, classes, id, cls) => (kinds || []).length + (classes || []).length === 0 ||
      (kinds || []).includes(id) || (classes || []).includes(cls);
    const found = data.rules.filter((rule) => among(rule.film_ids, rule.films, film.id, film.class) &&
      among(rule.inks, rule.ink_classes, r.ink.id, r.ink.class) &&
      among(rule.media, rule.medium_classes, r.medium.id, r.medium.class) &&
      ((rule.coverages || []).length === 0 || rule.coverages.includes(r.coverage)));
    const reasons = found.map((rule) => ({
      verdict: rule.verdict === 'test' ? 'go' : rule.verdict, test: rule.verdict === 'test' || undefined, text: rule.why, source: rule.source,
    }));
    return { reasons, verdict: worst(reasons), test: found.some((rule) => rule.verdict === 'test') };
  }

  const worse = (a, b) => (data.verdicts.indexOf(b) > data.verdicts.indexOf(a) ? b : a);
  const worst = (reasons) => reasons.reduce((v, reason) => worse(v, reason.verdict), 'go');

  function fits(film, medium, machine) {
    const say = (name, values) => ({ verdict: 'change', text: fill(data.phrases[name], values) });
    const why = [];
    if (!machine.films.includes(film.class)) why.push(say('film-class', { laminator: machine.name, class: film.class }));
    else if (!film.runs_on.includes(machine.id)) why.push(say('film-machine', { film: film.name, laminator: machine.name }));
    if (!medium.forms.some((f) => machine.forms.includes(f))) why.push(say('form', { laminator: machine.name, medium: medium.name }));
    if (machine.opening_m > 0 && medium.thickness_m + film.thickness_m > machine.opening_m) {
      why.push(say('opening', { medium: medium.name, laminator: machine.name }));
    }
    return why;
  }

  function filmsFor(r) {
    const ok = data.films.filter((film) => !['change', 'refuse'].includes(pair(r, film).verdict));
    const runs = ok.filter((film) => fits(film, r.medium, r.machine).length === 0);
    const here = runs.filter((film) => film.class === 'cold' || open(windowOf(r, film, speedIndex(r), r.humidity)));
    const elsewhere = ok.filter((film) => !runs.includes(film) &&
      data.laminators.some((m) => fits(film, r.medium, m).length === 0));
    return here.concat(elsewhere);
  }

  // ---- heat: windows were computed for the machine's listed speeds

  function speedIndex(r) {
    if (r.speed === 0 || r.speed < r.machine.slowest || r.speed > r.machine.fastest) return r.machine.usual;
    const i = r.machine.speeds.findIndex((v) => Math.abs(v / r.speed - 1) < 1e-6);
    if (i < 0) {
      throw new Error('this page holds windows for ' + r.machine.speeds.map(pace).join(', ') + '; ' + pace(r.speed) + ' is not among them');
    }
    return i;
  }

  // windowOf reads a window: [first low, steady low, then for the room and each
  // humidity step first high, steady high, and what limits either]. It is null
  // where the medium's record says nothing of heat.
  function windowOf(r, film, speed, humidity) {
    const held = heats.get(r.medium.id).windows[film.id + '/' + r.machine.id];
    if (!held) return null;
    const row = held[speed][data.rooms.indexOf(r.room)];
    const at = 2 + 4 * humidity;
    return {
      first: { low_c: row[0], high_c: row[at] },
      steady: { low_c: row[1], high_c: row[at + 1] },
      firstLimit: data.limits[row[at + 2]],
      steadyLimit: data.limits[row[at + 3]],
    };
  }

  const open = (w) => w !== null && w.first.low_c <= w.first.high_c && w.steady.low_c <= w.steady.high_c;
  const degrees = (c) => c.toFixed(0) + '\u00a0°C (' + (c * 1.8 + 32).toFixed(0) + '\u00a0°F)';
  const between = (span) => degrees(span.low_c) + ' to ' + degrees(span.high_c);

  function crossing(w) {
    const gap = (span) => span.low_c - span.high_c;
    const worse = gap(w.steady) > gap(w.first);
    const span = worse ? w.steady : w.first;
    return fill(data.phrases['no-window'], {
      low: degrees(span.low_c), 'why-low': data.limit_words.activation,
      high: degrees(span.high_c), 'why-high': data.limit_words[worse ? w.steadyLimit : w.firstLimit],
      gap: gap(span).toFixed(0) + '\u00a0K (' + (gap(span) * 1.8).toFixed(0) + '\u00a0°F)',
    });
  }

  function waysOut(r, speed) {
    const ways = [];
    for (let i = r.machine.speeds.length - 1; i >= 0; i--) {
      if (r.machine.speeds[i] < r.machine.speeds[speed] && open(windowOf(r, r.film, i, r.humidity))) {
        ways.push(fill(data.phrases['way-slower'], { speed: pace(r.machine.speeds[i]) }));
        break;
      }
    }
    const now = r.humidity === 0 ? r.room.humidity : data.humidity_steps[r.humidity - 1];
    for (let i = data.humidity_steps.length - 1; i >= 0; i--) {
      if (data.humidity_steps[i] < now && open(windowOf(r, r.film, speed, i + 1))) {
        ways.push(fill(data.phrases['way-drier'], { humidity: Math.round(data.humidity_steps[i] * 100) + '\u00a0%' }));
        break;
      }
    }
    const films = data.films.filter((film) => film.class !== 'cold' && film !== r.film &&
      fits(film, r.medium, r.machine).length === 0 && open(windowOf(r, film, speed, r.humidity)));
    if (films.length > 0) ways.push(fill(data.phrases['way-film'], { films: films.map((f) => f.name).join(', ') }));
    return ways;
  }

  function judgeHeat(plan, r, misfit, because) {
    if (r.film.class === 'cold') {
      plan.window_reason = data.phrases.cold;
      return;
    }
    if (misfit) {
      plan.window_reason = data.phrases['window-misfit'];
      return;
    }
    const speed = speedIndex(r);
    const w = windowOf(r, r.film, speed, r.humidity);
    if (w === null) {
      plan.window_reason = fill(data.phrases['heat-unknown'], { medium: r.medium.name });
      return;
    }
    if (!open(w)) {
      plan.window_reason = crossing(w);
      because({ verdict: 'change', text: plan.window_reason });
      waysOut(r, speed).forEach((text) => because({ verdict: 'change', text }));
      return;
    }
    const low = Math.max(w.first.low_c, w.steady.low_c);
    const high = Math.min(w.first.high_c, w.steady.high_c);
    plan.window = {
      low_c: low <= high ? low : null, high_c: low <= high ? high : null,
      first: w.first, steady: w.steady, low_limit: 'activation', high_limit: w.firstLimit,
    };
    if (low > high) {
      because({ verdict: 'go', text: fill(data.phrases['start-and-run'], { first: between(w.first), steady: between(w.steady) }) });
    }
  }

  function feed(r) {
    const advise = (advice, why, values) => ({ advice, why: fill(data.feeds[why], { ...values, rule: data.feeds.rule }) });
    if (r.film.class === 'cold') return advise('does not matter', 'cold');
    if (!r.medium.grain) return advise('does not matter', 'no-grain');
    if (r.sheet.roll) return advise('cannot be turned', 'roll');
    if (r.grain === 'unknown') return advise('unknown: test first', 'unknown');
    if ((r.grain === 'long') === (r.sheet.across >= r.sheet.along)) return advise('as it lies', 'lies');
    if (r.sheet.along > r.machine.width_m) {
      return advise('too wide that way', 'wide', { across: side(r.sheet.along), laminator: r.machine.name, limit: side(r.machine.width_m) });
    }
    return advise('turn it', 'turn');
  }

  // The way that the grain lies once the advice has been followed.
  function fedGrain(r, advice) {
    if (!r.medium.grain) return '';
    if (advice === 'as it lies' || advice === 'turn it') return 'across';
    if (advice === 'cannot be turned' || advice === 'too wide that way') return 'along';
    return 'unknown';
  }

  const textsOf = (r) => laminates.get(r.medium.id).texts[r.film.id + '/' + r.machine.id] || {};

  // What comes with the nip and after it, line by line.
  function laminateLines(r, advice) {
    const texts = textsOf(r);
    return [
      ['start a test strip', texts.start],
      ['silvering', (texts.silvering || {})[r.ink.id]],
      ['cooling', texts.cooling],
      ['curl', (texts.curl || {})[fedGrain(r, advice)]],
    ].filter(([, text]) => text).map(([name, text]) => ({ name, text }));
  }

  // ---- what the job's numbers say of causes of faults: the same rules as the program's

  function stepped(x, low, below, high, above) {
    if (x <= low) return below;
    return x >= high ? above : 1;
  }

  function earliness(plan) {
    if (plan.remaining_hours === null && plan.wait_hours === null && plan.wait_reason !== '') return 5;
    if (plan.remaining_hours === null || plan.wait_hours === null || plan.wait_hours <= 0) return 1;
    if (plan.remaining_hours <= 0) return 0.4;
    return 1 + 4 * Math.min(1, plan.remaining_hours / plan.wait_hours);
  }

  function heatEvidence(w) {
    if (!w) return { 'moist-sheet': 1, 'too-hot': 1, 'too-cold': 1, 'first-piece': 1 };
    const width = Math.min(w.first.high_c - w.first.low_c, w.steady.high_c - w.steady.low_c);
    const narrow = Math.min(5, Math.max(0.4, 15 / Math.max(width, 1)));
    return { 'moist-sheet': w.high_limit === 'gas' ? narrow : 0.6, 'too-hot': narrow, 'too-cold': narrow, 'first-piece': w.low_c === null ? 3 : 0.5 };
  }

  function evidenceOf(plan, r) {
    const list = { outgassing: earliness(plan) }, texts = plan.laminate.length ? textsOf(r) : {};
    Object.assign(list, r.film.class === 'cold' ? { 'moist-sheet': 0.2, 'too-hot': 0.2, 'first-piece': 0.2 } : heatEvidence(plan.window));
    const wet = (texts.wet_out || {})[r.ink.id], grain = (texts.grain || {})[fedGrain(r, plan.feed.advice)];
    if (wet !== undefined) list['wet-out'] = wet;
    if (grain !== undefined) list.grain = grain;
    const humidity = r.room.humidity;
    list['dry-air'] = stepped(humidity, 0.35, 3, 0.5, 0.4);
    list['dry-room'] = stepped(humidity, 0.35, 3, 0.45, 0.5);
    list['damp-room'] = stepped(-humidity, -0.6, 3, -0.5, 0.5);
    if (r.stack !== null) list['stack-moisture'] = stepped(-Math.floor(Math.abs(r.stack - humidity) * 1e4 + 0.5) / 100, -10, 3, -5, 0.5);
    return list;
  }

  function likely(evidence) {
    const factor = (c) => evidence[c.physics] === undefined ? 1 : evidence[c.physics];
    return data.causes.filter((c) => factor(c) >= 2).sort((a, b) => b.share * factor(b) - a.share * factor(a)).slice(0, 5)
      .map((c) => ({ family: c.family, cause: c.id, text: c.text, factor: Math.floor(factor(c) * 100 + 0.5) / 100 }));
  }

  function cautions(r) {
    const list = ['nip'];
    if (r.film.class !== 'cold' || r.machine.heated) list.push('hot-roller');
    if (r.film.class !== 'cold') list.push('fumes');
    if (r.ink.class === 'solvent') list.push('solvent');
    if (r.sheet.roll || r.medium.class === 'board') list.push('lifting');
    return list.concat('blade').map((id) => data.cautions[id]);
  }

  function misfits(r) {
    const list = fits(r.film, r.medium, r.machine);
    const no = (phrase, values) => list.push({ verdict: 'change', text: fill(data.phrases[phrase], values) });
    if (r.sheet.across > r.machine.width_m) {
      no('too-wide', { width: side(r.sheet.across), laminator: r.machine.name, limit: side(r.machine.width_m) });
    }
    if (r.speed !== 0 && (r.speed < r.machine.slowest || r.speed > r.machine.fastest)) {
      no('speed', { laminator: r.machine.name, slowest: pace(r.machine.slowest), fastest: pace(r.machine.fastest), speed: pace(r.speed) });
    }
    return list;
  }

  function judgeFilm(plan, r, because) {
    const p = pair(r, r.film);
    p.reasons.forEach(because);
    if (p.test) because({ verdict: 'go', test: true, text: data.phrases['test-first'] });
    const wrong = misfits(r);
    wrong.forEach(because);
    judgeHeat(plan, r, wrong.length > 0, because);
    if (wrong.length === 0) plan.laminate = laminateLines(r, plan.feed.advice);
    if (plan.verdict !== 'change') return;
    if (p.verdict !== 'change' && wrong.length > 0) {
      const machines = data.laminators.filter((m) => m !== r.machine && fits(r.film, r.medium, m).length === 0 && r.sheet.across <= m.width_m);
      if (machines.length > 0) {
        because({ verdict: 'change', text: fill(data.phrases['other-machines'], { laminators: machines.map((m) => m.name).join(', ') }) });
        return;
      }
      because({ verdict: 'change', text: data.phrases['no-machine'] });
    }
    const films = filmsFor(r);
    plan.others = films.map((f) => f.id);
    if (films.length === 0) because({ verdict: 'refuse', text: data.phrases['no-film'] });
    else because({ verdict: 'change', text: fill(data.phrases.others, { films: films.map((f) => f.name).join(', ') }) });
  }

  // ready is the time from printing until the print is dry: within its history
  // or after it. It also gives the state at the history's end.
  function ready(r, law) {
    let s = law.fresh;
    let spent = 0;
    for (const stay of r.history) {
      const t = law.until(s, r.room.id, stay.storage);
      if (t !== null && t <= stay.hours) return { total: spent + t };
      s = law.march(s, r.room.id, stay.storage, stay.hours);
      spent += stay.hours;
    }
    const t = law.until(s, r.room.id, r.storage.id);
    return { total: t === null ? null : spent + t, state: s };
  }

  function hardly(plan, r, law, s, because) {
    const late = law.left(law.march(s, r.room.id, r.storage.id, data.hardly_h));
    const unit = inks.get(r.ink.id).unit;
    plan.wait_reason = fill(data.phrases.hardly, { storage: r.storage.name, left: short(late, unit), limit: short(law.limit, unit) });
    because({ verdict: 'wait', text: plan.wait_reason });
    let best = null;
    for (const other of suits(r.medium)) {
      const t = law.until(s, r.room.id, other.id);
      if (t !== null && (best === null || t < best.hours)) best = { hours: t, name: other.name };
    }
    if (best === null) {
      because({ verdict: 'refuse', text: data.phrases.never });
      return;
    }
    because({ verdict: 'wait', text: fill(data.phrases['hardly-hung'],
      { storage: best.name, wait: duration(roundUp(Math.max(best.hours, r.ink.least_h - r.elapsed))) }) });
    judgeEarly(plan, r, law, s, because);
  }

  // judgeEarly says what would stay in a print that is laminated now, before its time.
  function judgeEarly(plan, r, law, s, because) {
    if (!law.clears || ['change', 'refuse'].includes(plan.verdict) || law.left(s) <= law.limit || r.film.pass === null) return;
    const unit = inks.get(r.ink.id).unit;
    const values = { left: short(law.left(s), unit), limit: short(law.limit, unit) };
    const hours = law.clears(s, r.room.id, r.storage.id, r.film, r.back);
    const phrase = hours === null ? 'early-locked' : 'early';
    if (hours !== null) values.days = roundDays(hours);
    because({ verdict: 'wait', text: fill(data.phrases[phrase], values) });
  }

  const minutes = (hours) => Math.round(hours * 60) / 60;

  function judgeWait(plan, r, because) {
    const law = lawOf(r);
    const { total, state } = ready(r, law);
    if (total === null) {
      hardly(plan, r, law, state, because);
      return;
    }
    const least = r.ink.least_h;
    const told = roundUp(Math.max(total, least));
    const remaining = Math.max(told - r.elapsed, 0);
    plan.wait_hours = minutes(told);
    plan.computed_hours = total;
    if (least - total > 1 / 60) {
      because({ verdict: 'go', text: fill(data.phrases.maker, { maker: duration(r.ink.maker_h), least: duration(least) }) });
    }
    if (r.unknown) {
      because({ verdict: 'wait', text: data.phrases['unknown-print'] });
      return;
    }
    plan.remaining_hours = minutes(remaining);
    r.remaining = remaining;
    plan.counted = duration(r.elapsed);
    if (r.now !== null) {
      plan.ready_by = new Date((r.now + Math.ceil(remaining * 60 - 1e-6)) * 60000).toISOString().slice(0, 16);
    }
    if (remaining > 0) {
      because({ verdict: 'wait', text: fill(data.phrases.wait,
        { remaining: duration(remaining), wait: duration(told), storage: r.storage.name }) });
      if (state !== undefined) judgeEarly(plan, r, law, state, because);
      return;
    }
    because({ verdict: 'go', text: fill(data.phrases.ready, { counted: duration(r.elapsed), wait: duration(told) }) });
  }

  // ---- hand-over: dry, then the machine, the film's rest, and the trimming

  function noPromise(plan, r) {
    if (plan.verdict === 'change' || plan.verdict === 'refuse') return data.phrases['no-hand-over'];
    if (r.unknown) return data.phrases['hand-over-unknown'];
    if (plan.wait_hours === null) return data.phrases['hand-over-hardly'];
    if (data.work === null) return data.phrases['hand-over-work'];
    if (r.film.rest_s === null) return fill(data.phrases['hand-over-rest'], { film: r.film.name });
    return '';
  }

  function promise(plan, r) {
    plan.hand_over_reason = noPromise(plan, r);
    if (plan.hand_over_reason) return;
    const w = data.work;
    const border = r.machine.overlaps ? 0 : w.border_m;
    const gap = r.machine.overlaps ? 0 : w.gap_m;
    const run = Math.ceil(r.pieces / (1 - w.spoils) - 1e-9);
    const speed = r.speed || r.machine.speeds[r.machine.usual];
    const running = r.sheet.roll ? 0 : run * (r.sheet.along + Math.max(gap, 2 * border)) / speed;
    const warmUp = r.film.class === 'cold' ? 0 : r.machine.warm_up_s;
    const trim = run * w.trim_s;
    const machine = w.set_up_s + warmUp + running + run * w.feeding_s;
    const total = r.remaining * 3600 + machine + (r.film.rest_s + trim);
    plan.hand_over_hours = minutes(total / 3600);
    if (r.now !== null) {
      plan.hand_over_by = new Date((r.now + Math.ceil(total / 60 - 1e-6)) * 60000).toISOString().slice(0, 16);
    }
    plan.hand_over = fill(data.phrases[r.sheet.roll ? 'hand-over-roll' : 'hand-over'], {
      pieces: r.pieces > 1 ? r.pieces + ' pieces' : '1 piece', machine: durationOf(machine),
      parts: fill(data.phrases[warmUp > 0 ? 'set-up-hot' : 'set-up-cold'], { 'set-up': durationOf(w.set_up_s), 'warm-up': durationOf(warmUp) }),
      rest: durationOf(r.film.rest_s), trim: durationOf(trim),
    });
  }

  function answer(job) {
    const r = read(job);
    const plan = {
      verdict: 'go', reasons: [], wait_hours: null, wait_reason: '', remaining_hours: null,
      maker_wait_hours: r.ink.maker_h, ready_by: null, counted: '',
      hand_over_by: null, hand_over_hours: null, hand_over: '', hand_over_reason: '', window: null, window_reason: '',
      others: [], laminate: [], feed: feed(r), cautions: cautions(r), tests: r.ink.tests || [],
    };
    const because = (reason) => {
      plan.reasons.push(reason);
      plan.verdict = worse(plan.verdict, reason.verdict);
    };
    if (!r.medium.inks.includes(r.ink.id)) {
      because({ verdict: 'refuse', text: fill(data.phrases['no-pair'], { medium: r.medium.name, ink: r.ink.name }) });
      plan.wait_reason = plan.window_reason = plan.reasons[0].text;
      plan.hand_over_reason = data.phrases['no-hand-over'];
      return plan;
    }
    judgeFilm(plan, r, because);
    judgeWait(plan, r, because);
    promise(plan, r);
    plan.reasons.sort((a, b) => data.verdicts.indexOf(b.verdict) - data.verdicts.indexOf(a.verdict));
    plan.evidence = evidenceOf(plan, r);
    plan.faults = likely(plan.evidence);
    return plan;
  }

  window.laydownPlan = {
    common(d) { data = d; },
    ink(d) { inks.set(d.id, d); },
    heat(d) { heats.set(d.medium, d); },
    laminate(d) { laminates.set(d.medium, d); },
    has: (ink, medium) => inks.has(ink) && heats.has(medium) && laminates.has(medium),
    data: () => data,
    answer,
  };
})();
