// Search: a classic script, from file:// too, under a strict content security policy.
//
// What the pages give it:
//   every page    <form class="ask" action="ROOTsearch.html" method="get" role="search">
//                   <input name="q" type="search" aria-label="…"></form>
//                 (may be hidden: the script shows it)
//   search page   <div id="search-app" data-index="search-index.js" data-root="">
//                   <form class="ask"> <input id="q" name="q" type="search"> </form>
//                   <p id="found" role="status" aria-live="polite"></p>
//                   <div id="first"></div> <div id="direct"></div> <div id="hits"></div>
//                   <nav id="places"> links to the thumb index's places </nav>
//                 </div>      #places shows while there is nothing else to show
// What it makes:
//   #first           what to do where somebody may be hurt: div.caution
//   #direct          direct answers: div.cellbox
//   #hits            section > h2, ol > li > a[href] (title), p.snippet, a shelf
//                    each; words found in <mark>; a button for what a shelf has more
//   #found           text, and a.read (look for another word) inside
// The index is what gen/book/search writes. tokens and find are the same
// algorithm as there; testdata/search-cases.json holds the two together.
(function () {
  'use strict';

  // ---- Words and quantities -------------------------------------------------

  const isDigit = (c) => c >= '0' && c <= '9' && c.length === 1;
  const isWord = (c) => {
    if ((c >= 'a' && c <= 'z') || isDigit(c)) return true;
    const n = c.charCodeAt(0);
    if (n < 0xc0 || n === 0xd7 || n === 0xf7) return false;
    return n < 0x2b0 || (n >= 0x370 && n < 0x2000) || (n >= 0x3040 && n < 0x3190) ||
      (n >= 0x3400 && n < 0xa000) || (n >= 0xac00 && n < 0xd7a4) || (n >= 0xf900 && n < 0xfb00);
  };

  // fold lower-cases and takes accents, odd spaces and dashes off: c the
  // characters, at where each stood.
  function fold(x, text) {
    const c = [], at = [];
    for (let i = 0; i < text.length; i++) {
      const n = text.charCodeAt(i);
      if (n >= 0x300 && n < 0x370) continue;
      const low = n < 0x530 ? text[i].toLowerCase() : text[i];
      for (const f of x.fold.get(text[i]) ?? x.fold.get(low) ?? low) { c.push(f); at.push(i); }
    }
    return { c, at };
  }

  // tokens splits a text into {text, kind: word|joined|amount, inside, start, end}.
  function tokens(x, text) {
    const { c, at } = fold(x, text), out = [];
    const add = (text, kind, inside, from, to) =>
      out.push({ text, kind, inside, start: at[from], end: at[to - 1] + 1, from, to });
    let inside = 0;
    for (let i = 0; i < c.length;) {
      if (!isWord(c[i])) { i++; continue; }
      if (isDigit(c[i])) {
        const amount = i >= inside && amountAt(x, c, i);
        if (amount) { add(amount.term, 'amount', false, i, amount.end); inside = amount.end; }
        const [number, stop] = numberAt(c, i), second = separatorAt(c, stop);
        if (i < inside || second > 0 || stop === c.length || !isWord(c[stop])) {
          add(number, 'word', i < inside, i, stop);
          i = Math.max(stop, second);
          continue;
        }
      }
      let word = '', j = i;
      for (; j < c.length; j++) {
        if (isWord(c[j])) word += c[j];
        else if (c[j] !== "'" || j + 1 === c.length || !isWord(c[j + 1])) break;
      }
      add(word, 'word', i < inside, i, j);
      i = j;
    }
    return joinHyphens(c, out);
  }

  function joinHyphens(c, list) {
    const plain = (t) => t && t.kind === 'word' && !t.inside && !isDigit(t.text[0]);
    const out = [];
    let first = 0, joined = '';
    list.forEach((t, i) => {
      out.push(t);
      if (!plain(t)) { joined = ''; return; }
      if (joined === '') first = i;
      joined += t.text;
      const next = list[i + 1];
      if (plain(next) && next.from === t.to + 1 && c[t.to] === '-') return;
      if (first < i) out.push({ ...list[first], text: joined, kind: 'joined', end: t.end, to: t.to });
      joined = '';
    });
    return out;
  }

  function numberAt(c, i) {
    const run = (j) => { while (j < c.length && isDigit(c[j])) j++; return j; };
    let j = run(i), s = c.slice(i, j).join('');
    while (j > i && j + 1 < c.length && (c[j] === '.' || c[j] === ',') && isDigit(c[j + 1])) {
      const end = run(j + 1), thousands = c[j] === ',' && end === j + 4 && c[i] !== '0';
      s += (thousands ? '' : '.') + c.slice(j + 1, end).join('');
      j = end;
      if (!thousands) break;
    }
    return [s, j];
  }

  // The number at i as [value, stop], the longest reading first: 8 1/2, 1/8, 8.
  function figuresAt(c, i) {
    const plain = (i) => { const [s, stop] = numberAt(c, i); return [Number(s), stop]; };
    const digitAt = (i) => i < c.length && isDigit(c[i]);
    const one = plain(i);
    let whole = 0, top = one;
    if (c[one[1]] === ' ' && digitAt(one[1] + 1)) { whole = one[0]; top = plain(one[1] + 1); }
    if (c[top[1]] === '/' && digitAt(top[1] + 1)) {
      const bottom = plain(top[1] + 1);
      if (bottom[0] >= 2 && bottom[0] <= 64) return [[whole + top[0] / bottom[0], bottom[1]], one];
    }
    return [one];
  }

  function separatorAt(c, i) {
    if (c[i] === ' ') i++;
    if (c[i] === '-' || c[i] === 'x' || c[i] === '×') i++;
    else if (c[i] === 't' && c[i + 1] === 'o') i += 2;
    else return 0;
    if (c[i] === ' ') i++;
    return i < c.length && isDigit(c[i]) ? i : 0;
  }

  function valueAt(x, c, i) {
    const figures = figuresAt(c, i);
    for (const [value, stop] of figures) {
      const u = unitAt(x, c, stop);
      if (u && quantity(x, u.measure, value)) return { value, measure: u.measure, end: u.end };
    }
    for (const [value, stop] of figures) { // the first number of a range
      const second = separatorAt(c, stop);
      for (const [, after] of second ? figuresAt(c, second) : []) {
        const u = unitAt(x, c, after);
        if (u && quantity(x, u.measure, value)) return { value, measure: u.measure, end: stop };
      }
    }
    return null;
  }

  function amountAt(x, c, i) {
    const v = valueAt(x, c, i);
    return v && { term: quantity(x, v.measure, v.value), end: v.end };
  }

  function unitAt(x, c, i) {
    for (let j = 0; j < 2 && c[i] === ' '; j++) i++;
    if (c[i] === '-') i++;
    next: for (const { name, measure } of x.units) { // the longest first
      let j = i;
      for (const r of name) {
        if (r === ' ') { while (c[j] === ' ') j++; } else if (c[j++] !== r) continue next;
      }
      if (j < c.length && (isWord(c[j]) || '/·^'.includes(c[j]))) continue;
      return { measure, end: j };
    }
    return null;
  }

  const si = (m, number) => number * m.factor + m.offset;

  const reach = (x, kind) => (kind === 'T' ? x.steps.degreeReach : x.steps.ratioReach);

  function quantity(x, u, number) {
    let v = si(u, number);
    if (u.kind === 'T') v *= x.steps.degree;
    else if (v > 0) v = Math.log(v) * x.steps.ratio;
    else return '';
    return Math.abs(v) <= 1e6 ? '#' + u.kind + Math.floor(v + 0.5) : '';
  }

  // stem takes the lightest endings off.
  function stem(w) {
    if (w.length < 4 || /[^a-z]/.test(w)) return w;
    const cut = (n) => { w = w.slice(0, w.length - n); };
    const ends = (...list) => list.some((e) => w.endsWith(e));
    const vowel = (s) => /[aeiouy]/.test(s);
    const double = () => w.length > 1 && w.at(-1) === w.at(-2);
    if (ends('ies') && w.length > 4) { cut(3); w += 'y'; }
    else if (ends('sses', 'shes', 'ches', 'xes', 'zes')) cut(2);
    else if (ends('s') && !ends('ss', 'us', 'is', 'gas')) cut(1);
    let verb = true;
    if (ends('ied') && w.length > 4) { cut(3); w += 'y'; }
    else if (ends('ing') && w.length >= 6 && vowel(w.slice(0, -3))) cut(3);
    else if (ends('ed') && !ends('eed') && w.length >= 5 && vowel(w.slice(0, -2))) cut(2);
    else if (ends('ation') && w.length >= 8) cut(3);
    else verb = false;
    if (verb && double() && !ends('l', 's', 'z', 'f')) cut(1);
    if (ends('isat', 'izat')) cut(2);
    if (ends('e') && w.length >= 4) cut(1);
    if (ends('iz', 'yz')) { cut(1); w += 's'; }
    if (w.length >= 6 && double()) cut(1);
    return w;
  }

  // distance counts typing errors; with prefix, against any beginning of word.
  function distance(a, b, most, prefix) {
    if (a.length - b.length > most || (!prefix && b.length - a.length > most)) return most + 1;
    let before = [], row = Array.from({ length: b.length + 1 }, (_, j) => j), next = [];
    let least = 0, was = 0; // of the last row, and of the one before: later rows have no less than both
    for (let i = 1; i <= a.length; i++) {
      if (least > most && was > most) return most + 1;
      next = [i];
      was = least;
      least = i;
      for (let j = 1; j <= b.length; j++) {
        const cost = a[i - 1] === b[j - 1] ? 0 : 1;
        next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + cost);
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) next[j] = Math.min(next[j], before[j - 2] + 1);
        least = Math.min(least, next[j]);
      }
      before = row; row = next;
    }
    return Math.min(prefix ? Math.min(...row) : row[b.length], most + 1);
  }

  const slack = (w) => (w.length < 4 ? 0 : w.length > 7 ? 2 : 1);

  // ---- The index ------------------------------------------------------------

  const parted = (text, by) => (text ? text.split(by) : []);

  // numbers reads what is written in digits.
  function numbers(x, text) {
    const out = [], half = x.digits.length / 2;
    let n = 0;
    for (let i = 0; i < text.length; i++) {
      const d = x.values[text.charCodeAt(i)];
      if (d < half) { out.push(n * half + d); n = 0; } else n = n * half + d - half;
    }
    return out;
  }

  // load unpacks what the index script set.
  function load(raw) {
    const x = { ...raw, fold: new Map(), stop: new Set(raw.stop.split(' ')), slots: new Map(), lists: new Map(), members: new Map(), names: new Map(), heads: [], longest: 0, entries: [], values: [] };
    [...raw.digits].forEach((ch, i) => { x.values[ch.charCodeAt(0)] = i; });
    for (const line of raw.fold) {
      const cut = line.indexOf('=');
      for (const ch of line.slice(cut + 1)) x.fold.set(ch, line.slice(0, cut));
    }
    x.measures = raw.measures.map(([shown, kind, factor, offset, names, to]) => ({ shown, kind, factor, offset, names, to }));
    x.units = x.measures.flatMap((measure) => measure.names.split(',').map((name) => ({ name, measure })))
      .sort((a, b) => [...b.name].length - [...a.name].length);

    const unpack = (last, text) => [...last].slice(0, raw.digits.indexOf(text[0])).join('') + text.slice(1);
    let last = '';
    x.words = parted(raw.words, '<').map((w) => (last = unpack(last, w)));
    const slot = (term) => { if (!x.slots.has(term)) x.slots.set(term, x.slots.size); };
    for (const w of x.words) slot(stem(w));
    for (const list of parted(raw.amounts, '<')) {
      let step = -1048576;
      for (const n of numbers(x, list.slice(1))) slot('#' + list[0] + (step += n));
    }
    (raw.groups || []).forEach((text, group) => {
      const parts = text.split('|');
      x.heads.push(parts[0]);
      slot('=' + group);
      ['s', 'm', 'n'].forEach((how, i) => {
        for (const key of parted(parts[i + 1], ',')) {
          const here = x.members.get(key) || [];
          x.members.set(key, here);
          if (here.some(([g]) => g === group)) continue;
          here.push([group, how]);
          x.longest = Math.max(x.longest, key.split(' ').length);
        }
      });
    });
    x.posts = raw.posts.split('<');

    const names = numbers(x, raw.names);
    for (let i = 0, hash = 0; i < names.length;) {
      hash += names[i];
      const list = [];
      let n = names[i + 1], entry = 0;
      for (i += 2; n > 0; n--, i++) list.push(entry += names[i]);
      x.names.set(hash, list);
    }

    let page = '', section = '', kind = '';
    for (const e of raw.entries || []) {
      if (e[0][0] === '#') { x.entries.push([page + e[0], e[1], section, kind, e[2]]); continue; }
      x.entries.push(e);
      [page] = e[0].split('#');
      section = page === e[0] ? e[1] : e[2];
      kind = e[3];
    }

    x.pins = (raw.pins || []).map(([title, say, url, ask, alone]) => ({ title, say, url, ask: parted(ask, '|'), alone: parted(alone, '|') }));
    x.asks = raw.asks.map(([key, asking, filling]) => ({ key, asking: stems(asking), filling: stems(filling) }));
    x.things = (raw.things || []).map(([name, words, names, sizes]) => ({
      name, stems: new Set(parted(words, ' ')), names: new Set(parted(names, '|')), sizes: parted(sizes, ' ') }));
    let lastUnder = '', lastURL = '';
    x.facts = (raw.facts || []).map(([ask, one, other, number, unit, under, url, what]) => {
      lastUnder = unpack(lastUnder, under);
      lastURL = unpack(lastURL, url);
      return { ask: x.asks[ask], about: (other < 0 ? [one] : [one, other]).map((i) => x.things[i]),
        box: { what: what || '', number, unit, under: lastUnder, url: lastURL } };
    });
    x.charts = raw.charts || [];
    return x;
  }

  const stems = (text) => new Set(parted(text, ' ').map(stem));

  // posts decodes a term's list of [entry, score].
  function posts(x, term) {
    let list = x.lists.get(term);
    if (list) return list;
    list = [];
    x.lists.set(term, list);
    const n = x.slots.has(term) ? numbers(x, x.posts[x.slots.get(term)] || '') : [];
    for (let i = 0, entry = 0; i < n.length; i += 2) list.push([entry += n[i], n[i + 1]]);
    return list;
  }

  const members = (x, key) => x.members.get(key) || [];
  const percent = (n, p) => Math.floor(n * p / 100);
  const wordRun = (x, list) => list.filter((t) => t.kind === 'word').map((t) => stem(t.text));

  // nameHash is what a whole title or name is filed under (FNV-1a).
  function nameHash(x, list, little) {
    let h = 2166136261;
    for (const t of list) {
      if (t.kind !== 'word' || (x.stop.has(t.text) && !little)) continue;
      for (const ch of stem(t.text) + ' ') h = Math.imul(h ^ ch.codePointAt(0), 16777619) >>> 0;
    }
    return h;
  }

  // ---- Answers --------------------------------------------------------------

  const mostBoxes = 4;

  // find answers a query: {pins, boxes, hits: [entry numbers], all, read,
  // missing, closest, marks}.
  function find(x, query, most) {
    const a = { pins: [], boxes: [], hits: [], all: false, read: [], missing: [], closest: [], marks: new Set() };
    let items = itemsOf(x, query, a);
    const words = reread(x, query, a.read);
    if (a.read.length > 0) { // ask again with what was read, as if it had been typed
      items = [...itemsOf(x, words.join(' ') + ' ', { read: [], marks: a.marks }), ...items.filter((it) => it.amount)];
    }
    rank(x, items, named(x, words), most, a);
    a.missing = items.filter((it) => it.scores.size === 0).map((it) => it.typed);
    if (a.hits.length === 0) for (const w of a.missing) a.closest.push(...suggest(x, w));
    a.pins = pinned(x, plainWords(x, query), words);
    const [code, sure] = stampIn(x, query);
    a.boxes = stampBoxes(x, code, sure, a.hits.length);
    if (sure === 2) Object.assign(a, { hits: [], all: false, read: [], missing: [], closest: [] }); // its letters are no words
    if (a.boxes.length === 0) {
      const sizes = tokens(x, query).filter((t) => t.kind === 'amount').map((t) => t.text);
      a.boxes = answers(x, plainWords(x, query), sizes);
      if (a.boxes.length === 0) a.boxes = answers(x, words, sizes);
      a.boxes.push(...roller(x, query), ...conversions(x, query));
    }
    a.boxes = a.boxes.slice(0, mostBoxes);
    return a;
  }

  // named lists the entries whose whole title or name the words are, once
  // without the little words and once more with them.
  function named(x, words) {
    const list = tokens(x, words.join(' ')), plain = nameHash(x, list, false), all = nameHash(x, list, true);
    return [...(x.names.get(plain) || []), ...(plain !== all && x.names.get(all) || [])];
  }

  function suggest(x, w) {
    const near = nearest(x, w, Math.min(3, Math.floor([...w].length / 2)), true);
    return offers(x, near.length > 0 ? near : alike(x, w), '');
  }

  const plainWords = (x, text) => tokens(x, text).filter((t) => t.kind === 'word' && !t.inside).map((t) => t.text);

  // reread puts what was read in the place of what was typed.
  function reread(x, query, read) {
    const set = (words) => ' ' + words.join(' ') + ' ';
    return read.reduce((text, r) => text.replace(set(plainWords(x, r.typed)), () => set(plainWords(x, r.read))), set(plainWords(x, query)))
      .split(' ').filter((w) => w);
  }

  // ---- Where somebody may be hurt --------------------------------------------

  // pinned lists the pins that a query calls for, as typed or as it was read.
  function pinned(x, ...readings) {
    const texts = readings.map((words) => words.map(stem).join(' '));
    return x.pins.flatMap((p, i) => texts.some((text) => p.alone.includes(text) ||
      p.ask.some((key) => (' ' + text + ' ').includes(' ' + key + ' '))) ? [i] : []);
  }

  // ---- Stamps of charts --------------------------------------------------------

  // stampIn reads a query as a stamp: [code, 0 no, 1 perhaps, 2 surely].
  function stampIn(x, query) {
    let text = fold(x, query).c.join('').split(' ').filter((w) => w).join(' '), sure = 1;
    for (const word of ['wall chart ', 'chart ', 'stamp ', 'edition ']) {
      if (text.startsWith(word)) { text = text.slice(word.length); sure = 2; }
    }
    let r = [...text];
    if (r.length === 5 && (r[2] === '-' || r[2] === ' ')) {
      if (r[2] === '-') sure = 2;
      r = [...r.slice(0, 2), ...r.slice(3)];
    }
    if (r.length !== 4 || !x.stamps || r.some((ch) => !x.stamps.toLowerCase().includes(ch))) return ['', 0];
    return [(r[0] + r[1] + '-' + r[2] + r[3]).toUpperCase(), sure];
  }

  function stampBoxes(x, code, sure, hits) {
    if (!code) return [];
    const box = (number, under, url) => ({ what: 'Stamp ' + code, number, unit: '', under, url });
    const here = x.charts.filter(([stamp]) => stamp === code).map(([, title, url]) => box('in date', title, url));
    if (here.length > 0) return here.slice(0, mostBoxes);
    if (code === x.edition) return [box('in date', 'The stamp of this edition of the handbook.', 'index.html')];
    if (sure === 2 || hits === 0) {
      return [box('out of date', 'No chart of this edition has this stamp. Take it down and print the one that is here now.', 'charts/index.html')];
    }
    return [];
  }

  // ---- Conversions ---------------------------------------------------------------

  function conversions(x, query) {
    const boxes = [], { c } = fold(x, query);
    for (let i = 0; i < c.length; i++) {
      if (!isDigit(c[i]) || (i > 0 && (isWord(c[i - 1]) || c[i - 1] === '.'))) continue;
      const v = valueAt(x, c, i);
      if (!v) continue;
      boxes.push(...convert(x, v.value, v.measure, target(x, c, v.end, v.measure.kind)));
      i = v.end - 1;
    }
    return boxes.slice(0, mostBoxes);
  }

  // namesTarget says whether a query names a unit to convert to.
  function namesTarget(x, query) {
    const { c } = fold(x, query);
    for (let i = 0; i < c.length; i++) {
      if (!isDigit(c[i]) || (i > 0 && isWord(c[i - 1]))) continue;
      const v = valueAt(x, c, i);
      if (v && target(x, c, v.end, v.measure.kind)) return true;
    }
    return false;
  }

  // target is the unit of a kind that stands after "to", "in", "into" or "as".
  function target(x, c, i, kind) {
    while (c[i] === ' ' || c[i] === '=') i++;
    for (const word of ['into ', 'to ', 'in ', 'as ', '= ']) {
      if ([...word].some((ch, k) => c[i + k] !== ch)) continue;
      const u = unitAt(x, c, i + word.length);
      if (u && u.measure.kind === kind) return u.measure.shown;
    }
    return '';
  }

  // roller answers the distance between marks with the roller that makes them.
  function roller(x, query) {
    const words = plainWords(x, query), { c } = fold(x, query);
    if (!x.repeating.split(' ').some((w) => words.includes(w))) return [];
    for (let i = 0; i < c.length; i++) {
      if (!isDigit(c[i]) || (i > 0 && (isWord(c[i - 1]) || c[i - 1] === '.'))) continue;
      const v = valueAt(x, c, i);
      if (!v || v.measure.kind !== 'L' || Math.abs(v.value) >= 1e9) continue;
      return [{ what: 'A mark every ' + shownNumber(v.value, '') + ' ' + v.measure.shown + ' comes from a roller of',
        number: shownNumber(Math.floor(si(v.measure, v.value) / measureAs(x, 'mm').factor / Math.PI + 0.5), ''), unit: 'mm',
        under: 'diameter: the distance divided by 3.1416; measure over four marks and divide by three', url: '' }];
    }
    return [];
  }

  const measureAs = (x, shown) => x.measures.find((m) => m.shown === shown);

  function convert(x, value, m, to) {
    if (Math.abs(value) >= 1e9) return [];
    const numbers = [];
    let unit = '';
    for (const name of to ? [to] : m.to) {
      const t = measureAs(x, name), v = (si(m, value) - t.offset) / t.factor;
      if (t.shown === m.shown) continue;
      numbers.push(shownNumber(v, t.kind) + (unit ? ' ' + t.shown : ''));
      unit = unit || t.shown;
    }
    if (numbers.length === 0) return [];
    const box = { what: shownNumber(value, '') + ' ' + m.shown + ' is', number: numbers[0], unit, under: numbers.slice(1).join(', '), url: '' };
    if (box.under) box.under = 'or ' + box.under;
    if (m.kind === 'T' && Math.abs(value) <= 50 && value !== 0) {
      box.under = 'as a difference, ' + shownNumber(value * m.factor / measureAs(x, unit).factor, m.kind) + ' ' + unit;
    }
    if (m.shown !== x.pounds || to) return [box];
    const papers = x.bases.map((basis) => ({ what: shownNumber(value, '') + ' ' + basis + ' is',
      number: shownNumber(value * measureAs(x, basis).factor * 1000, 'W'), unit: 'g/m²', under: '', url: '' }));
    return [...papers.slice(0, 3), box];
  }

  // shownNumber writes four figures, a temperature one decimal; halves go up.
  function shownNumber(v, kind) {
    const size = Math.abs(v);
    let places = 0;
    for (let p = 1; places < 6 && size * p < 1000; p *= 10) places++;
    if (kind === 'T') places = 1;
    if (size === 0) places = 0;
    let pow = 1;
    for (let i = 0; i < places; i++) pow *= 10;
    const digits = String(Math.floor(size * pow + 0.5)).padStart(places + 1, '0');
    const rest = digits.slice(digits.length - places).replace(/0+$/, '');
    const text = digits.slice(0, digits.length - places) + (places > 0 && rest ? '.' + rest : '');
    return v < 0 && text !== '0' ? '−' + text : text;
  }

  // ---- Computed answers ------------------------------------------------------------

  // answers are the facts whose things, and the words such a question is put
  // in, account for all of the query's words.
  function answers(x, words, sizes) {
    const run = words.filter((w) => !x.stop.has(w)).map(stem);
    let best = [], most = 0;
    for (const f of x.facts) {
      let score = answerScore(f, run);
      if (score === 0) continue;
      for (const t of f.about) score += 3 * sizesIn(x, t, sizes);
      if (score < most) continue;
      if (score > most) { best = []; most = score; }
      best.push({ ...f.box, what: f.box.what || f.about.map((t) => t.name).join(' on ') });
    }
    return best.slice(0, mostBoxes);
  }

  function answerScore(f, run) {
    const by = f.about.map((t) => run.map((w) => t.stems.has(w)));
    if (by.some((mine) => !mine.includes(true))) return 0;
    const apart = (one, other) => one.some((has, k) => has && !other[k]);
    if (by.length === 2 && (!apart(by[0], by[1]) || !apart(by[1], by[0]))) return 0;
    let named = 0, asked = false;
    for (let k = 0; k < run.length; k++) {
      if (f.ask.asking.has(run[k])) asked = true;
      else if (by.some((mine) => mine[k])) named++;
      else if (!f.ask.filling.has(run[k])) return 0;
    }
    if (by.length === 1 && !asked) return 0;
    if (by.length === 2) named = Math.max(inTurn(by[0], by[1]), inTurn(by[1], by[0]));
    const exact = f.about.reduce((sum, t) => sum + longestName(t, run), 0);
    return 4 * named + 2 * exact + (asked ? 1 : 0);
  }

  // inTurn is how many words name two things, the first ones one, the rest the other.
  function inTurn(first, second) {
    let sum = second.filter(Boolean).length, best = sum;
    first.forEach((has, k) => {
      sum += (has ? 1 : 0) - (second[k] ? 1 : 0);
      best = Math.max(best, sum);
    });
    return best;
  }

  const sizesIn = (x, t, sizes) => sizes.filter((size) => t.sizes.some((own) =>
    own[1] === size[1] && Math.abs(own.slice(2) - size.slice(2)) <= reach(x, size[1]))).length;

  function longestName(t, run) {
    for (let n = run.length; n > 0; n--) {
      for (let i = 0; i + n <= run.length; i++) if (t.names.has(run.slice(i, i + n).join(' '))) return n;
    }
    return 0;
  }

  // ---- Hits ------------------------------------------------------------------------

  function itemsOf(x, query, a) {
    const q = tokens(x, query).filter((t) => t.kind !== 'joined' && !t.inside), items = [];
    const word = (i) => q[i] && q[i].kind === 'word';
    for (let i = 0; i < q.length; i++) {
      const t = q[i];
      if (t.kind === 'amount') {
        const it = amount(x, query.slice(t.start, t.end), t.text, a);
        if (it.scores.size === 0) it.scores = oneWord(x, 'units', [], false, { read: [], marks: a.marks }).scores; // nothing lies near it
        items.push(it);
        continue;
      }
      const n = phraseAt(x, q.slice(i));
      if (n > 1) {
        items.push(phrase(x, query.slice(t.start, q[i + n - 1].end), q.slice(i, i + n), a));
        i += n - 1;
        continue;
      }
      if (x.stop.has(t.text)) continue;
      const joined = [];
      if (word(i - 1)) joined.push(q[i - 1].text + t.text);
      if (word(i + 1)) joined.push(t.text + q[i + 1].text);
      items.push(oneWord(x, t.text, joined, i === q.length - 1 && t.end === query.length, a));
    }
    if (namesTarget(x, query)) { // asks for the table of units too
      items.push(oneWord(x, 'units', [], false, { read: [], marks: a.marks }));
    }
    return items;
  }

  function add(x, it, term, share, a) {
    a.marks.add(term);
    for (const [e, s] of posts(x, term)) it.scores.set(e, Math.max(it.scores.get(e) || 0, percent(s, share)));
  }

  function amount(x, typed, term, a) {
    const it = { typed, scores: new Map(), amount: true }, step = Number(term.slice(2));
    around(x, it, term[1], step, a);
    if (valueAt(x, fold(x, typed).c, 0)?.measure.shown === x.pounds) { // perhaps a basis weight
      const shift = (m) => Math.floor(Math.log(m.factor) * x.steps.ratio + 0.5), mass = measureAs(x, x.pounds);
      for (const basis of x.bases) {
        const b = measureAs(x, basis);
        around(x, it, b.kind, step + shift(b) - shift(mass), a);
      }
    }
    return it;
  }

  function around(x, it, kind, step, a) {
    const had = it.scores.size;
    for (let far = reach(x, kind); far <= 8 * reach(x, kind) && it.scores.size === had; far *= 2) {
      for (let d = -far; d <= far; d++) add(x, it, '#' + kind + (step + d), 100 - Math.floor(40 * Math.abs(d) / far), a);
    }
  }

  function phraseAt(x, q) {
    let n = 0;
    while (n < q.length && n < x.longest && q[n].kind === 'word') n++;
    const run = wordRun(x, q.slice(0, n));
    for (; n > 1; n--) if (x.members.has(run.slice(0, n).join(' '))) return n;
    return 0;
  }

  function phrase(x, typed, q, a) {
    const it = { typed, scores: new Map() }, sums = new Map(), have = new Map();
    for (const [group, how] of members(x, wordRun(x, q).join(' '))) {
      add(x, it, '=' + group, 100, a);
      if (how === 'm') a.read.push({ typed, read: x.heads[group] });
    }
    const words = q.filter((t) => !x.stop.has(t.text)).map((t) => stem(t.text));
    for (const w of words) {
      a.marks.add(w);
      for (const [e, s] of posts(x, w)) {
        sums.set(e, (sums.get(e) || 0) + percent(s, 50));
        have.set(e, (have.get(e) || 0) + 1);
      }
    }
    for (const [e, sum] of sums) {
      if (it.scores.has(e) || have.get(e) === words.length) it.scores.set(e, (it.scores.get(e) || 0) + sum);
    }
    return it;
  }

  function oneWord(x, w, joined, open, a) {
    const it = { typed: w, scores: new Map() };
    exact(x, it, w, w, a);
    for (const j of joined) add(x, it, stem(j), 80, a);
    if (open || it.scores.size === 0) prefix(x, it, w, a);
    if (it.scores.size > 0 || isDigit(w[0]) || split(x, it, w, a)) return it;
    let near = nearest(x, w, slack(w), false);
    if (near.length === 0 && open && w.length > 4) near = nearest(x, w, slack(w), true);
    if (near.length > 0) {
      exact(x, it, near[0], w, a);
      if (a.read.length === 0 || a.read.at(-1).typed !== w) a.read.push({ typed: w, read: near[0] });
      const or = offers(x, near, a.read.at(-1).read);
      if (or.length > 0) a.read.at(-1).or = or;
    }
    return it;
  }

  function prefix(x, it, w, a) {
    if (w.length < 2) return;
    let low = 0, high = x.words.length;
    while (low < high) {
      const mid = (low + high) >> 1;
      if (x.words[mid] < w) low = mid + 1; else high = mid;
    }
    for (; low < x.words.length && x.words[low].startsWith(w); low++) {
      const s = stem(x.words[low]);
      add(x, it, s, 70, a);
      for (const [group] of members(x, s)) add(x, it, '=' + group, 40, a);
    }
  }

  function exact(x, it, w, typed, a) {
    const s = stem(w);
    add(x, it, s, 100, a);
    for (const [group, how] of members(x, s)) {
      if (how === 'm') a.read.push({ typed, read: x.heads[group] });
      add(x, it, '=' + group, how === 'm' || posts(x, s).length === 0 ? 100 : 60, a);
    }
  }

  function split(x, it, w, a) {
    for (let k = 3; k <= w.length - 3; k++) {
      const left = w.slice(0, k), right = w.slice(k), also = new Map(posts(x, stem(right)));
      for (const [e, s] of posts(x, stem(left))) if (also.has(e)) it.scores.set(e, Math.min(s, also.get(e)));
      if (it.scores.size > 0) {
        a.marks.add(stem(left)).add(stem(right));
        a.read.push({ typed: w, read: left + ' ' + right });
        return true;
      }
    }
    return false;
  }

  function nearest(x, w, most, prefix) {
    let best = [], least = most;
    for (const known of most > 0 ? x.words : []) {
      if (isDigit(known[0])) continue;
      const d = distance(w, known, least, prefix);
      if (d > least) continue;
      const s = stem(known);
      let uses = posts(x, s).length;
      for (const [group] of members(x, s)) uses += posts(x, '=' + group).length;
      if (uses === 0) continue;
      if (d < least) { best = []; least = d; }
      best.push({ known, uses });
    }
    return best.sort((a, b) => b.uses - a.uses).map((c) => c.known);
  }

  // alike lists the words that share the most pairs of letters with a typed one.
  function alike(x, w) {
    const pairs = (w) => {
      const r = [...w];
      return new Set(r.slice(1).map((ch, i) => r[i] + ch));
    };
    const mine = pairs(w), best = [];
    for (const known of mine.size > 0 ? x.words : []) {
      if (isDigit(known[0])) continue;
      const theirs = pairs(known);
      let both = 0;
      for (const p of theirs) if (mine.has(p)) both++;
      const share = Math.floor(200 * both / (mine.size + theirs.size));
      if (share >= 33) best.push({ known, share });
    }
    return best.sort((a, b) => b.share - a.share).map((c) => c.known);
  }

  function offers(x, near, read) {
    const out = [], seen = new Set([stem(read)]);
    for (let w of near) {
      for (const [group, how] of members(x, stem(w))) if (how === 'm') w = x.heads[group];
      if (!seen.has(stem(w)) && out.length < 3) { out.push(w); seen.add(stem(w)); }
    }
    return out;
  }

  function rank(x, items, named, most, a) {
    const count = new Map(), score = new Map();
    let best = 0;
    for (const it of items) {
      for (const [e, s] of it.scores) {
        count.set(e, (count.get(e) || 0) + 1);
        score.set(e, (score.get(e) || 0) + s);
        best = Math.max(best, count.get(e));
      }
    }
    if (best === 0) return;
    for (const e of named) score.set(e, (score.get(e) || 0) + x.steps.name);
    a.all = best === items.length;
    const long = items.length >= x.steps.sentence;
    const worth = (e) => {
      if (!long) return score.get(e);
      const points = score.get(e) * count.get(e) ** 2;
      return count.get(e) === items.length ? points + Math.floor(points / 2) : points;
    };
    a.hits = [...count.keys()].filter((e) => count.get(e) === best || ((long || !a.all) && 2 * count.get(e) >= best))
      .sort((l, r) => (long ? 0 : count.get(r) - count.get(l)) || worth(r) - worth(l) || l - r).slice(0, most);
  }

  // ---- Where the words stand ------------------------------------------------

  // spans lists the [start, end] of what the marks name in a text, merged.
  function spans(x, text, marks) {
    const list = tokens(x, text), words = list.filter((t) => t.kind === 'word'), run = wordRun(x, list), out = [];
    for (const t of list) {
      if (marks.has(t.kind === 'amount' ? t.text : stem(t.text)) && !x.stop.has(t.text)) out.push([t.start, t.end]);
    }
    for (let i = 0; i < run.length; i++) {
      for (let n = 1; n <= x.longest && i + n <= run.length; n++) {
        const here = members(x, run.slice(i, i + n).join(' '));
        if (here.some(([group, how]) => how === 's' && marks.has('=' + group))) out.push([words[i].start, words[i + n - 1].end]);
      }
    }
    out.sort((a, b) => a[0] - b[0] || b[1] - a[1]);
    return out.reduce((merged, s) => {
      const last = merged.at(-1);
      if (last && s[0] <= last[1]) last[1] = Math.max(last[1], s[1]); else merged.push([...s]);
      return merged;
    }, []);
  }

  // cutting chooses the stretch of a text with most marks: [from, to].
  function cutting(text, marked) {
    const width = 180;
    let best = 0, from = 0;
    for (const [start] of marked) {
      const n = marked.filter(([s, e]) => s >= start && e <= start + width - 40).length;
      if (n > best) { best = n; from = start; }
    }
    from = from < 60 ? 0 : text.indexOf(' ', from - 41) + 1; // begin at a word, a little ahead
    if (text.length - from <= width) return [from, text.length];
    const to = text.lastIndexOf(' ', from + width);
    return [from, to > from + 60 ? to : from + width];
  }

  // marked fills an element with a text, what was found in mark elements.
  function marked(el, x, text, marks, short) {
    const list = spans(x, text, marks), [from, to] = short ? cutting(text, list) : [0, text.length];
    let at = from;
    if (from > 0) el.append('… ');
    for (const [start, end] of list) {
      if (start < from || end > to) continue;
      const mark = document.createElement('mark');
      mark.textContent = text.slice(start, end);
      el.append(text.slice(at, start), mark);
      at = end;
    }
    el.append(text.slice(at, to), to < text.length ? ' …' : '');
  }

  window.laydownSearch = { load, tokens, find, spans, cutting };

  // ---- The page -------------------------------------------------------------

  const make = (tag, cls, text) => {
    const el = document.createElement(tag);
    if (cls) el.className = cls;
    if (text) el.textContent = text;
    return el;
  };
  const anchor = (href, text, cls) => {
    const a = make('a', cls, text);
    a.href = href;
    return a;
  };

  // shelved parts hits by what they are; the shelf of the best hit stands first.
  function shelved(x, hits) {
    const last = x.shelves.length - 1, by = new Map();
    for (const e of hits) {
      const at = x.shelves.findIndex(([, kinds]) => kinds.split('|').includes(x.entries[e][3]));
      const [name] = x.shelves[at < 0 ? last : at];
      by.set(name, [...(by.get(name) || []), e]);
    }
    return by;
  }

  function page(app) {
    const [box, found, first, direct, hits, places] = ['q', 'found', 'first', 'direct', 'hits', 'places'].map((id) => document.getElementById(id));
    const root = app.dataset.root || '', most = 60, shown = 4;
    let x = null, later = 0;

    const link = (typed, read) => { // looks for the same query with one word read otherwise
      const q = typed ? box.value.replace(typed, () => read) : read;
      return anchor('?q=' + encodeURIComponent(q === box.value ? read : q), read, 'read');
    };
    const offer = (el, words, typed) => words.forEach((w, i) => el.append(i ? ', ' : '', link(typed, w)));

    // caution is what to do where somebody may be hurt.
    function caution({ title, say, url }) {
      const el = make('div', 'caution'), text = make('div'), more = make('p'), p = make('p', '', say), head = make('h2', '', title);
      more.append(anchor(root + url, 'More on this'));
      more.firstChild.setAttribute('aria-label', 'More on this: ' + title);
      text.append(head, p, more);
      const stripes = make('div', 'stripes');
      stripes.setAttribute('aria-hidden', 'true');
      el.append(stripes, text);
      return el;
    }

    // directly is one answer that needs no page.
    function directly({ what, number, unit, under, url }) {
      const el = make('div', 'cellbox'), p = make('p', 'big' + (/^[−\d½]/.test(number) ? '' : ' wordy'));
      if (url) p.append(anchor(root + url, number, 'num')); else p.append(number);
      if (unit) p.append(make('span', 'unit', ' ' + unit));
      el.append(make('p', 'what', what), p, make('p', 'under', under));
      return el;
    }

    function hit(e, marks, name) {
      const [url, title, section, , text] = x.entries[e], li = make('li'), a = anchor(root + url);
      marked(a, x, title, marks, false);
      li.append(a);
      if (section && section !== name) li.append(' ', make('small', 'section', section));
      const p = make('p', 'snippet');
      marked(p, x, text, marks, true);
      li.append(p);
      return li;
    }

    // shelf is the hits of one kind: the best, and a button that shows the rest.
    function shelf(name, list, marks) {
      const el = make('section'), head = make('h2', '', name + ' '), ol = make('ol');
      el.setAttribute('aria-label', name);
      head.append(make('small', '', String(list.length)));
      ol.append(...list.slice(0, shown).map((e) => hit(e, marks, name)));
      el.append(head, ol);
      if (list.length > shown) {
        const more = make('button', 'rest', 'Show ' + (list.length - shown) + ' more in ' + name);
        more.type = 'button';
        more.addEventListener('click', () => {
          const rest = list.slice(shown).map((e) => hit(e, marks, name));
          ol.append(...rest);
          more.remove();
          rest[0].querySelector('a').focus();
        });
        el.append(more);
      }
      return el;
    }

    // say tells what was found and how the query was read.
    function say(a, shelves) {
      const el = document.createDocumentFragment(), n = a.hits.length;
      for (const i of a.pins) el.append(make('b', 'unseen', x.pins[i].title + ': ' + x.pins[i].say + ' '));
      for (const b of a.boxes) el.append(make('span', 'unseen', b.what + ' ' + b.number + ' ' + b.unit + ' ' + b.under + ' '));
      if (n > 0) {
        el.append((n === most ? 'The best ' + n : n + ' found') + (shelves.size > 1 ? ', first in ' + [...shelves.keys()][0] + '.' : '.'));
        if (!a.all) el.append(' Nothing has all of these words; the nearest come first.');
      } else if (a.boxes.length === 0) {
        el.append('Nothing found' + (a.closest.length > 0 ? '.' : '. Try one word of it, or begin below.'));
      }
      for (const r of a.read) {
        el.append(' Read “' + r.typed + '” as “' + r.read + '”.');
        if (r.or) { el.append(' Or did you mean '); offer(el, r.or, r.typed); el.append('?'); }
      }
      if (a.missing.length > 0 && n > 0) el.append(' Not in the book: ' + a.missing.join(', ') + '.');
      if (a.closest.length > 0) { el.append(' The nearest words in the book: '); offer(el, [...new Set(a.closest)]); el.append('.'); }
      found.replaceChildren(el);
    }

    function answer() {
      const q = box.value;
      try {
        history.replaceState(null, '', q.trim() ? '?q=' + encodeURIComponent(q) : location.pathname);
      } catch { /* an address that cannot be written is no reason not to answer */ }
      if (!x) return;
      const a = find(x, q, most), shelves = shelved(x, a.hits);
      first.replaceChildren(...a.pins.map((i) => caution(x.pins[i])));
      direct.replaceChildren(...a.boxes.map(directly));
      direct.className = a.boxes.length > 0 ? 'answer' : '';
      hits.replaceChildren(...[...shelves].map(([name, list]) => shelf(name, list, a.marks)));
      places.hidden = a.hits.length > 0;
      clearTimeout(later); // spoken when the typing pauses
      later = setTimeout(() => (q.trim() ? say(a, shelves) : found.replaceChildren()), 200);
    }

    app.addEventListener('keydown', (ev) => {
      if (ev.altKey || ev.ctrlKey || ev.metaKey || ev.isComposing) return;
      const stops = [...app.querySelectorAll('#first a, #direct a, #hits a, #hits button')], at = stops.indexOf(document.activeElement);
      if (ev.key === 'Escape') {
        box.value = '';
        box.focus();
        answer();
      } else if (ev.key === 'ArrowDown' && stops[at + 1]) {
        stops[at + 1].focus();
      } else if (ev.key === 'ArrowUp' && at >= 0) {
        (stops[at - 1] || box).focus();
      } else {
        return;
      }
      ev.preventDefault();
    });
    box.form.addEventListener('submit', (ev) => {
      ev.preventDefault();
      app.querySelector('#first a, #direct a, #hits a')?.focus(); // Enter goes to the first answer, once more opens it
    });
    box.addEventListener('input', answer);

    box.value = new URLSearchParams(location.search).get('q') || box.value;
    const script = document.createElement('script');
    script.src = root + app.dataset.index;
    script.onload = () => { x = load(window.laydownIndex); answer(); };
    script.onerror = () => { found.textContent = 'The index could not be read: ' + app.dataset.index + ' is missing beside this page.'; };
    document.head.append(script);
    box.focus();
  }

  function start() {
    const app = document.getElementById('search-app');
    for (const form of document.querySelectorAll('form.ask')) {
      form.hidden = false;
      if (app && app.contains(form)) continue;
      // By script, since a strict policy may forbid forms to be sent.
      form.addEventListener('submit', (ev) => {
        ev.preventDefault();
        location.assign(form.getAttribute('action') + '?q=' + encodeURIComponent(form.elements.q.value));
      });
    }
    if (app) page(app);
  }

  if (typeof document === 'undefined') return;
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', start);
  else start();
})();
