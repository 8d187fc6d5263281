// Sets the handbook's search beside two general-purpose search libraries, over
// the same entries and the same queries: size, time to load, time for a key
// stroke, and how often the wanted place comes first.
//
//   node testdata/search_compare.mjs FOLDER [every]
//
// FOLDER is a published handbook. With a number, only each so manieth query is
// asked. Nothing here is published, and no figure is asserted. Times are of the
// processor, so that other work on the machine counts less; they still differ
// from machine to machine.
//
// The libraries get the title, section and text of each entry and, for the
// glossary's terms, all their other names, wrong spellings and neighbours. They
// are set up as their documentation advises for answers while typing: the title
// counts more, the last word may be half typed, words may have slips, all words
// are wanted before some will do. They know no units, no phrases that name
// another word, and nothing that must stand before everything.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { runInThisContext } from 'node:vm';
import { gzipSync } from 'node:zlib';

const [folder, every = '1'] = process.argv.slice(2);
if (!folder) {
  console.error('usage: node search_compare.mjs FOLDER [every]');
  process.exit(2);
}
const read = (path) => readFileSync(path, 'utf8');
const beside = (path) => new URL(path, import.meta.url);
const require = createRequire(beside('npm/package.json'));
const MiniSearch = require('minisearch');
const lunr = require('lunr');

globalThis.window = globalThis;
const indexScript = read(folder + '/script/search-index.js'), searchScript = read(beside('../templates/search.js'));
runInThisContext(indexScript);
runInThisContext(searchScript);
const raw = window.laydownIndex, ours = window.laydownSearch;
const entries = ours.load(raw).entries;

const file = JSON.parse(read(beside('handbook-queries.json')));
const queries = [...file.queries, ...file.missed].filter((_, i) => i % Number(every) === 0);

const names = new Map(raw.groups.map((text) => {
  const [term, ...rest] = text.split('|');
  return [term, rest.join(' ').replaceAll(',', ' ')];
}));
const documents = entries.map(([url, title, section, kind, text], id) => ({
  id, url, title, section, text, names: kind === 'word' ? names.get(title) || '' : '' }));
const texts = JSON.stringify(documents.map(({ url, title, section, text }) => [url, title, section, text]));

const mini = {
  build() {
    const index = new MiniSearch({ fields: ['title', 'names', 'section', 'text'] });
    index.addAll(documents);
    return JSON.stringify(index);
  },
  load: (json) => MiniSearch.loadJSON(json, { fields: ['title', 'names', 'section', 'text'] }),
  find(index, q) {
    const how = { prefix: true, fuzzy: 0.2, boost: { title: 4, names: 2 } };
    const all = index.search(q, { ...how, combineWith: 'AND' });
    return all.length > 0 ? all[0].id : index.search(q, how)[0]?.id;
  },
};

const lunrs = {
  build() {
    return JSON.stringify(lunr(function () {
      this.field('title', { boost: 4 });
      this.field('names', { boost: 2 });
      this.field('section');
      this.field('text');
      documents.forEach((d) => this.add(d));
    }));
  },
  load: (json) => lunr.Index.load(JSON.parse(json)),
  find(index, q) {
    const hits = index.query((query) => {
      for (const token of lunr.tokenizer(q)) {
        const word = token.toString();
        query.term(word, { boost: 10 });
        query.term(word, { boost: 3, wildcard: lunr.Query.wildcard.TRAILING, usePipeline: false });
        if (word.length > 3) query.term(word, { boost: 1, editDistance: word.length > 7 ? 2 : 1 });
      }
    });
    return hits.length > 0 ? Number(hits[0].ref) : undefined;
  },
};

const own = {
  build: () => indexScript,
  load(text) {
    runInThisContext(text);
    return ours.load(window.laydownIndex);
  },
  find(index, q) {
    const a = ours.find(index, q, 60);
    return a.pins.length > 0 ? index.pins[a.pins[0]].url : a.hits[0];
  },
};

// spent is the milliseconds that the processor has worked for this program.
const spent = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
const sorted = (list) => list.sort((a, b) => a - b);
const at = (list, share) => list[Math.min(list.length - 1, Math.floor(list.length * share))];
const kilo = (text) => (Buffer.byteLength(text) / 1000).toFixed(0);
const packed = (text) => (gzipSync(text, { level: 9 }).length / 1000).toFixed(0);

function measure(name, engine, withTexts) {
  const index = engine.build(), whole = withTexts ? index : index + texts;
  const loads = [];
  let loaded;
  for (let i = 0; i < 9; i++) {
    const from = spent();
    loaded = engine.load(index);
    loads.push(spent() - from);
  }
  let first = 0;
  const strokes = [];
  for (const { q, first: wanted } of queries) {
    for (let n = 1; n <= q.length; n++) {
      const from = spent();
      engine.find(loaded, q.slice(0, n));
      strokes.push(spent() - from);
    }
    const got = engine.find(loaded, q);
    const place = String(typeof got === 'number' ? entries[got][0] : got).replace(/^glossary(-[a-z0-9]+)?\.html/, 'glossary.html');
    if (wanted.split(' ').includes(place)) first++;
  }
  sorted(strokes);
  return [name, kilo(whole), packed(whole), at(sorted(loads), 0.5).toFixed(1), at(strokes, 0.5).toFixed(2), at(strokes, 0.95).toFixed(2), `${first} of ${queries.length}`];
}

const rows = [
  ['', 'KB', 'KB gzip', 'load ms', 'key ms', 'key p95 ms', 'first place'],
  measure('this handbook', own, true),
  measure('minisearch', mini, false),
  measure('lunr', lunrs, false),
];
const widths = rows[0].map((_, i) => Math.max(...rows.map((r) => r[i].length)));
console.log(`${entries.length} entries, ${queries.length} queries; sizes with the texts that are shown`);
for (const r of rows) console.log(r.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('   '));
