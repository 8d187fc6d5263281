// Runs templates/search.js outside a browser and holds it to the same cases as
// the Go finder: node --test testdata/search_test.mjs
import test from 'node:test';
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';

const read = (path) => readFileSync(new URL(path, import.meta.url), 'utf8');
const window = {};
runInNewContext(read('search-index.js'), { window });
runInNewContext(read('../templates/search.js'), { window });
const { load, tokens, find, spans, cutting } = window.laydownSearch;
const x = load(window.laydownIndex);
const cases = JSON.parse(read('search-cases.json'));
const answers = JSON.parse(read('search-answers.json'));
const plain = (v) => JSON.parse(JSON.stringify(v)); // out of the other context

test('tokens', () => {
  assert.ok(cases.tokens.length > 20);
  for (const c of cases.tokens) {
    const got = tokens(x, c.text).map((t) => [t.text, c.text.slice(t.start, t.end), t.inside ? 'i' : t.kind[0]].join('|'));
    assert.deepEqual(plain(got), c.tokens, c.text);
  }
});

test('stems', () => {
  const stem = (w) => [...find(x, w + ' ', 1).marks][0]; // the first mark of a word is its stem
  for (const words of cases.stems) for (const w of words) assert.equal(stem(w), stem(words[0]), w);
});

test('what is wanted comes first', () => {
  for (const c of cases.queries) {
    const got = find(x, c.q, 8).hits.map((e) => x.entries[e][0]);
    assert.deepEqual(plain(got.slice(0, c.first.length)), c.first, c.q);
  }
});

test('the whole answers are those of the Go finder', () => {
  assert.equal(answers.length, cases.queries.length + cases.answers.length);
  for (const want of answers) {
    const a = find(x, want.q, 8);
    const got = { q: want.q, urls: a.hits.map((e) => x.entries[e][0]), all: a.all, read: a.read, missing: a.missing, closest: a.closest, boxes: a.boxes, pins: a.pins };
    assert.deepEqual(plain(got), want, want.q);
  }
});

test('direct answers, and what stands before everything', () => {
  assert.ok(cases.answers.length > 30);
  for (const c of cases.answers) {
    const a = plain(find(x, c.q, 8));
    assert.deepEqual(a.boxes, c.boxes.map((b) => ({ what: '', number: '', unit: '', under: '', url: '', ...b })), c.q);
    assert.deepEqual(a.pins, c.pins, c.q);
  }
});

test('marks stand on the words that were meant', () => {
  const shown = (q, url) => {
    const a = find(x, q, 40), entry = x.entries.find((e) => e[0] === url);
    return plain(spans(x, entry[4], a.marks)).map(([s, e]) => entry[4].slice(s, e));
  };
  assert.deepEqual(shown('3mil', 'tables/roll-length.html'), ['3 mil', '75 µm']);
  assert.deepEqual(shown('240F', 'films/standard-thermal.html'), ['116 °C', '240 °F']);
  assert.deepEqual(shown('thumbnails', 'faults/silvering.html'), ['thumbnail']);
  assert.deepEqual(shown('silverring', 'faults/silvering.html'), ['Silver specks']);
  assert.deepEqual(shown('ecosolvent', 'tables/waits.html'), ['Eco-solvent']);
});

test('a snippet lies round the words', () => {
  const text = 'lead '.repeat(100) + 'needle in the hay ' + 'tail '.repeat(100);
  const at = text.indexOf('needle'), [from, to] = cutting(text, [[at, at + 6]]);
  assert.ok(from <= at && at + 6 <= to && to - from <= 240, `${from} ${at} ${to}`);
  assert.equal(text[from - 1], ' ');
  assert.deepEqual(plain(cutting('short', [])), [0, 5]);
});

test('no query throws', () => {
  const odd = ['"', '\\', '(', '[a-', '*', '+', '^$', '…', '\u0000', '\ud800', '💧 film', '1/', '1/0 in', '3 ×', '5-', "'", "it's'", '9'.repeat(400) + ' mm', 'a'.repeat(5000), 'İstanbul', 'toString', '__proto__'];
  for (const q of odd) assert.doesNotThrow(() => find(x, q, 8), q.slice(0, 20));
});
