// Search: a classic script, from file:// too, under a strict content security policy.
//
// What the pages give it:
//   every page    <form class="ask" action="ROOTsearch.html" method="get" role="search">
//                   <input name="q" type="search" aria-label="…"></form>
//                 (may be hidden: the script shows it)
//   search page   <div id="search-app" data-index="search-index.js" data-root="">
//                   <form class="ask"> <input id="q" name="q" type="search"> </form>
//                   <p id="found" role="status" aria-live="polite"></p>
//                   <ol id="hits"></ol>
//                   <nav id="places"> links to the thumb index's places </nav>
//                 </div>      #places shows while there is nothing else to show
// What it makes:
//   #hits li > a[href] (title), span.kind, span.section, p.snippet; words found in <mark>
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

  function amountAt(x, c, i) {
    const figures = figuresAt(c, i);
    for (const [value, stop] of figures) {
      const u = unitAt(x, c, stop), term = u && quantity(x, u, value);
      if (term) return { term, end: u.end };
    }
    for (const [value, stop] of figures) { // the first number of a range
      const second = separatorAt(c, stop);
      for (const [, after] of second ? figuresAt(c, second) : []) {
        const u = unitAt(x, c, after), term = u && quantity(x, u, value);
        if (term) return { term, end: stop };
      }
    }
    return null;
  }

  function unitAt(x, c, i) {
    for (let j = 0; j < 2 && c[i] === ' '; j++) i++;
    if (c[i] === '-') i++;
    next: for (const [name, kind, factor, offset] of x.units) { // the longest first
      let j = i;
      for (const r of name) {
        if (r === ' ') { while (c[j] === ' ') j++; } else if (c[j++] !== r) continue next;
      }
      if (j < c.length && (isWord(c[j]) || '/·^'.includes(c[j]))) continue;
      return { kind, factor, offset, end: j };
    }
    return null;
  }

  function quantity(x, u, number) {
    let v = number * u.factor + u.offset;
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
    for (let i = 1; i <= a.length; i++) {
      next = [i];
      for (let j = 1; j <= b.length; j++) {
        const cost = a[i - 1] === b[j - 1] ? 0 : 1;
        next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + cost);
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) next[j] = Math.min(next[j], before[j - 2] + 1);
      }
      before = row; row = next;
    }
    return Math.min(prefix ? Math.min(...row) : row[b.length], most + 1);
  }

  const slack = (w) => (w.length < 4 ? 0 : w.length > 7 ? 2 : 1);

  // ---- The index ------------------------------------------------------------

  // load unpacks what the index script set.
  function load(raw) {
    const x = { ...raw, fold: new Map(), stop: new Set(raw.stop.split(' ')), slots: new Map(), lists: new Map() };
    for (const line of raw.fold) {
      const cut = line.indexOf('=');
      for (const ch of line.slice(cut + 1)) x.fold.set(ch, line.slice(0, cut));
    }
    x.words = raw.words ? raw.words.split(' ') : [];
    (raw.terms ? raw.terms.split(' ') : []).forEach((t, i) => x.slots.set(t, i));
    x.members = new Map(Object.entries(raw.members));
    return x;
  }

  // posts decodes a term's list of [entry, score].
  function posts(x, term) {
    let list = x.lists.get(term);
    if (list) return list;
    list = [];
    x.lists.set(term, list);
    const s = x.posts[x.slots.get(term)] || '', half = x.digits.length / 2;
    let entry = 0, n = 0, step = -1;
    for (const ch of s) {
      const d = x.digits.indexOf(ch);
      if (d >= half) { n = n * half + d - half; continue; }
      n = n * half + d;
      if (step < 0) step = n;
      else { entry += step; list.push([entry, n]); step = -1; }
      n = 0;
    }
    return list;
  }

  const members = (x, key) => x.members.get(key) || [];
  const percent = (n, p) => Math.floor(n * p / 100);
  const wordRun = (x, list) => list.filter((t) => t.kind === 'word').map((t) => stem(t.text));

  // nameTerm is the list for a query that is the whole of a title or name.
  const nameTerm = (x, list) =>
    '~' + list.filter((t) => t.kind === 'word' && !x.stop.has(t.text)).map((t) => stem(t.text)).join('_');

  // ---- Answers --------------------------------------------------------------

  // find answers a query: {hits: [entry numbers], all, read, missing, closest, marks}.
  function find(x, query, most) {
    const a = { hits: [], all: false, read: [], missing: [], closest: [], marks: new Set() };
    const items = itemsOf(x, query, a);
    const read = a.read.reduce((q, r) => q.replace(r.typed, r.read), query); // what was read for what was typed
    rank(x, items, posts(x, nameTerm(x, tokens(x, read))), most, a);
    a.missing = items.filter((it) => it.scores.size === 0).map((it) => it.typed);
    if (a.hits.length === 0) {
      for (const w of a.missing) {
        a.closest.push(...offers(x, nearest(x, w, Math.min(3, Math.floor(w.length / 2)), true), ''));
      }
    }
    return a;
  }

  function itemsOf(x, query, a) {
    const q = tokens(x, query).filter((t) => t.kind !== 'joined' && !t.inside), items = [];
    const word = (i) => q[i] && q[i].kind === 'word';
    for (let i = 0; i < q.length; i++) {
      const t = q[i];
      if (t.kind === 'amount') { items.push(amount(x, query.slice(t.start, t.end), t.text, a)); continue; }
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
    return items;
  }

  function add(x, it, term, share, a) {
    a.marks.add(term);
    for (const [e, s] of posts(x, term)) it.scores.set(e, Math.max(it.scores.get(e) || 0, percent(s, share)));
  }

  function amount(x, typed, term, a) {
    const it = { typed, scores: new Map() }, kind = term[1], step = Number(term.slice(2));
    const far = kind === 'T' ? x.steps.degreeReach : x.steps.ratioReach;
    for (let d = -far; d <= far; d++) add(x, it, '#' + kind + (step + d), 100 - Math.floor(40 * Math.abs(d) / far), a);
    return it;
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
    for (const [e, s] of named) score.set(e, (score.get(e) || 0) + s);
    a.all = best === items.length;
    a.hits = [...count.keys()].filter((e) => count.get(e) === best || (!a.all && 2 * count.get(e) >= best))
      .sort((l, r) => count.get(r) - count.get(l) || score.get(r) - score.get(l) || l - r).slice(0, most);
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

  function page(app) {
    const [box, found, hits, places] = ['q', 'found', 'hits', 'places'].map((id) => document.getElementById(id));
    const root = app.dataset.root || '', most = 40;
    let x = null, later = 0;

    const make = (tag, cls, text) => {
      const el = document.createElement(tag);
      if (cls) el.className = cls;
      if (text) el.textContent = text;
      return el;
    };
    const link = (typed, read) => { // looks for the same query with one word read otherwise
      const q = typed ? box.value.replace(typed, read) : read, a = make('a', 'read', read);
      a.href = '?q=' + encodeURIComponent(q === box.value ? read : q);
      return a;
    };
    const offer = (el, words, typed) => words.forEach((w, i) => el.append(i ? ', ' : '', link(typed, w)));

    function hit(e, marks) {
      const [url, title, section, kind, text] = x.entries[e], li = make('li'), a = make('a');
      a.href = root + url;
      marked(a, x, title, marks, false);
      li.append(a, ' ', make('span', 'kind', kind), ' ', make('span', 'section', section));
      const p = make('p', 'snippet');
      marked(p, x, text, marks, true);
      li.append(p);
      return li;
    }

    function say(a) {
      const el = document.createDocumentFragment(), n = a.hits.length;
      el.append(n === 0 ? 'Nothing found. Try one word of it' + (places ? ', or go by the places below.' : '.') : n === most ? 'The best ' + n + '.' : n + ' found.');
      if (n > 0 && !a.all) el.append(' Nothing has all of these words; the nearest come first.');
      for (const r of a.read) {
        el.append(' Read “' + r.typed + '” as “' + r.read + '”.');
        if (r.or) { el.append(' Did you mean '); offer(el, r.or, r.typed); el.append('?'); }
      }
      if (a.missing.length > 0 && n > 0) el.append(' Not in the book: ' + a.missing.join(', ') + '.');
      if (a.closest.length > 0) { el.append(' Did you mean '); offer(el, [...new Set(a.closest)]); el.append('?'); }
      found.replaceChildren(el);
    }

    function answer() {
      const q = box.value;
      try {
        history.replaceState(null, '', q.trim() ? '?q=' + encodeURIComponent(q) : location.pathname);
      } catch { /* an address that cannot be written is no reason not to answer */ }
      if (!x) return;
      const a = find(x, q, most);
      hits.replaceChildren(...a.hits.map((e) => hit(e, a.marks)));
      if (places) places.hidden = a.hits.length > 0;
      clearTimeout(later); // spoken when the typing pauses
      later = setTimeout(() => (q.trim() ? say(a) : found.replaceChildren()), 200);
    }

    app.addEventListener('keydown', (ev) => {
      if (ev.altKey || ev.ctrlKey || ev.metaKey || ev.isComposing) return;
      const links = [...hits.querySelectorAll('a')], at = links.indexOf(document.activeElement);
      if (ev.key === 'Escape') {
        box.value = '';
        box.focus();
        answer();
      } else if (ev.key === 'ArrowDown' && links[at + 1]) {
        links[at + 1].focus();
      } else if (ev.key === 'ArrowUp' && at >= 0) {
        (links[at - 1] || box).focus();
      } else {
        return;
      }
      ev.preventDefault();
    });
    box.form.addEventListener('submit', (ev) => {
      ev.preventDefault();
      hits.querySelector('a')?.focus(); // Enter goes to the first hit, once more opens it
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
