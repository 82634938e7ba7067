// Ground levels: rods read from an instrument, and what they come to at once. What is written waits on
// the disk of this browser until the archive has it, in the queue of the walk.

import { uuid } from './enter.js';
import { Queue } from './walk-queue.js';
import { Lengths, free, moment } from './walk-fields.js';
import { METRES, metres } from './walk-ground.js';
import { markOf, reduced } from './level-sums.js';
import { make, sayer, troubles } from './walk-told.js';

const page = document.querySelector('#levels');
const told = JSON.parse(page.dataset.told);
const say = sayer(told.words);
const { book, visit, site, unit, shown } = told;
const at = (id) => document.getElementById(id);
const lengths = new Lengths(page);
const AGAIN = 5000;
const UNITS = shown === 'metres' ? ['m', 1, 3] : ['ft', METRES.ft, 2];

let queue;
/** The reading that is being mended; null for a new one. */
let mended = null;
/** The set-up that is begun and from which nothing was read yet. */
let begun = held();

/** That the instrument was moved is remembered, or the next rod would be read from the wrong place. */
function held() {
  try {
    return localStorage.getItem(`daylight-levels-${visit}`);
  } catch (none) {
    return null;
  }
}

function hold(name) {
  begun = name;
  try {
    if (name === null) localStorage.removeItem(`daylight-levels-${visit}`);
    else localStorage.setItem(`daylight-levels-${visit}`, name);
  } catch (none) {
    // Then it holds until the page is closed.
  }
}

const mine = () => queue.all('levels').filter((one) => one.parent === visit);
const rods = () => mine().filter((one) => one.keys.rod !== undefined && one.keys['set-up'] !== undefined);
const heights = () => queue.all('levels').filter((one) => one.keys.height !== undefined);
const setUp = () => begun ?? rods().at(-1)?.keys['set-up'] ?? fresh();

/**
 * The name of another set-up. Over the whole book a name is one place of the instrument, on whatever
 * visit and by whatever phone, so it carries its number and the time.
 */
function fresh() {
  const numbers = queue.all('levels').map((one) => Number(/^S(\d{1,4})\b/.exec(one.keys['set-up'] ?? '')?.[1] ?? 0));
  hold(`S${Math.max(0, ...numbers) + 1} ${moment().slice(0, 16).replace('T', ' ')}`);
  return begun;
}

/** A figure in the unit of whoever looks. */
function figure(height) {
  const [name, size, digits] = UNITS;
  const text = (height / size).toFixed(digits).replace(/^-(0\.?0*)$/, '$1').replace('-', '−');
  return `${told.point === ',' ? text.replace('.', ',') : text} ${name}`;
}

/** A mark in words: its label, and which part of it. */
function named(mark) {
  const [label, part] = [mark.slice(0, mark.lastIndexOf('/')), mark.slice(mark.lastIndexOf('/') + 1)];
  return part === 'ground' ? label : `${label}, ${say(`part.${part}`)}`;
}

function sums() {
  const readings = rods()
    .map((one) => ({ entry: one.entry, mark: markOf(one.keys), setUp: one.keys['set-up'], rod: metres(one.keys.rod, unit) }))
    .filter((one) => one.rod !== null);
  const known = new Map(heights().map((one) => [markOf(one.keys), metres(one.keys.height, unit)]).filter(([, one]) => one !== null));
  return { readings, ...reduced(readings, known) };
}

function show() {
  const waiting = queue.items.filter((one) => one.state === 'waiting').length;
  const state = queue.refused !== '' ? ['refused', queue.refused]
    : queue.reach === false ? ['away', queue.items.length]
      : queue.items.length > waiting ? ['undecided', queue.items.length]
        : waiting > 0 ? ['waiting', waiting] : [queue.reach === null ? 'looking' : 'kept'];
  at('reach').className = `sending ${state[0] === 'kept' ? 'kept' : queue.reach === false ? 'unsent' : ''}`;
  const words = say(`reach.${state[0]}`, state[1] ?? '');
  if (at('reach').textContent !== words) at('reach').textContent = words;
  troubles(at('troubles'), queue, say, {
    mine: (one) => queue.mine(one.entry).then(again),
    drop: (one) => queue.drop(one.entry).then(again),
    mend: () => {},
    rename: (one) => queue.put({ ...one, keys: { ...one.keys, label: free(queue, one.keys.label) } }).then(again),
  });
  points();
  at('set-up').textContent = say('levels.from', setUp());
  at('turn').disabled = begun !== null;
  table(sums());
}

function points() {
  const labels = ['landmarks', 'nodes', 'locates', 'exposures'].flatMap((section) =>
    queue.all(section).map((one) => [one.keys.label, one.keys.what ?? '']));
  const pairs = labels.map(([label, what]) => [label, what ? `${label}, ${what}` : label]);
  for (const id of ['w-of', 'w-known']) {
    const select = at(id);
    const now = JSON.stringify(pairs);
    if (select.dataset.pairs === now) continue;
    select.dataset.pairs = now;
    const chosen = select.value;
    select.replaceChildren(...pairs.map(([value, words]) => make('option', { value }, words)));
    if (labels.some(([label]) => label === chosen)) select.value = chosen;
  }
  const none = labels.length === 0;
  at('no-points').hidden = !none;
  at('read').disabled = none;
}

const state = (one) => (one.version === undefined ? '' : say(`state.${one.state}`));

function row(one, { height, instrument }) {
  const mark = markOf(one.keys);
  const from = instrument.get(one.keys['set-up']);
  const z = height.get(mark);
  const act = (word, how) => make('button', { type: 'button', class: 'button second', 'data-entry': one.entry,
    'aria-label': say(`levels.${word}.of`, named(mark), one.keys.rod ?? one.keys.height), onclick: how }, say(`levels.${word}`));
  return make('tr', {},
    make('th', { scope: 'row' }, named(mark), ...(state(one) ? [make('span', { class: 'waits' }, ` ${state(one)}`)] : [])),
    make('td', { 'data-says': say('levels.column.rod') }, one.keys.rod ?? '–'),
    make('td', { 'data-says': say('levels.column.instrument') }, from === undefined ? '–' : figure(from)),
    make('td', { 'data-says': say('levels.column.height') }, z === undefined ? say('levels.loose') : figure(z)),
    make('td', { class: 'acts' }, act('mend', () => mend(one)), act('withdraw', () => withdraw(one))));
}

function table(all) {
  const rows = [];
  for (const one of heights().filter((other) => other.parent === visit)) {
    rows.push(row(one, all));
  }
  let before = null;
  for (const one of rods()) {
    if (one.keys['set-up'] !== before) {
      before = one.keys['set-up'];
      rows.push(make('tr', { class: 'set' }, make('th', { colspan: '5', scope: 'colgroup' }, say('levels.set', before))));
    }
    rows.push(row(one, all));
  }
  at('reduced').replaceChildren(...rows);
  at('reduced-table').hidden = rows.length === 0;
  at('nothing').hidden = rows.length > 0;
  at('checks').replaceChildren(...checks(all).map((text) => make('li', {}, text)));
}

function checks({ from, closures, way }) {
  const said = [];
  if (from !== null) said.push(say('levels.zero', named(from)));
  for (const one of closures) said.push(say('levels.closes', named(one.mark), one.setUp, figure(one.by)));
  if (way !== null) {
    said.push(say('levels.way', figure(way.backs), figure(way.fores), figure(way.backs - way.fores)));
    // An end that nothing else tells the height of closes by itself, and that says nothing.
    if (closures.some((one) => one.mark === way.ended)) {
      said.push(say('levels.between', named(way.began), named(way.ended), figure(way.between),
        figure(way.backs - way.fores - way.between)));
    }
  }
  if (said.length > 0 && closures.length === 0) said.push(say('levels.open'));
  return said;
}

function mend(one) {
  mended = one;
  const known = one.keys.height !== undefined;
  const form = at(known ? 'known-form' : 'rod-form');
  if (known) at('known').open = true;
  at(known ? 'w-known' : 'w-of').value = one.keys.of;
  at(known ? 'w-known-part' : 'w-part').value = one.keys.part ?? 'ground';
  lengths.show(known ? 'height' : 'rod', one.keys.rod ?? one.keys.height);
  form.scrollIntoView({ block: 'center' });
  form.querySelector('.length input').focus();
}

async function withdraw(one) {
  const waits = queue.items.find((item) => item.entry === one.entry);
  mended = null;
  if (waits && waits.base === 0 && waits.sent.length === 0) await queue.drop(one.entry);
  else await queue.put({ entry: one.entry, parent: visit, section: 'levels', base: one.base ?? one.number, keys: null });
  again();
}

/** Puts what a form says into the book; a mended one keeps its identity. */
async function written(keys, key) {
  const old = mended !== null && mended.keys[key] !== undefined ? mended : null;
  mended = null;
  await queue.put({
    entry: old?.entry ?? uuid(),
    parent: visit,
    section: 'levels',
    base: old?.base ?? old?.number ?? 0,
    keys: old === null ? keys : { ...old.keys, ...keys },
  });
  again();
}

function submitted(id, key, of, part) {
  at(id).addEventListener('submit', async (event) => {
    event.preventDefault();
    const line = event.target.querySelector('.why');
    const read = lengths.read(key);
    line.textContent = read.wrong || read.text === null
      ? say('check.number', document.querySelector(`label[for="w-${key}"]`).textContent) : '';
    if (line.textContent !== '') return;
    const keys = { of: at(of).value, [key]: read.text };
    if (at(part).value !== 'ground') keys.part = at(part).value;
    if (key === 'rod') keys['set-up'] = mended?.keys['set-up'] ?? setUp();
    if (key === 'rod' && mended === null) hold(null);
    lengths.show(key, '');
    await written(keys, key);
    event.target.querySelector('.length input').focus();
  });
}

async function again() {
  show();
  await queue.send();
}

async function begin() {
  queue = await Queue.open(book);
  queue.onchange = show;
  page.hidden = false;
  submitted('rod-form', 'rod', 'w-of', 'w-part');
  submitted('known-form', 'height', 'w-known', 'w-known-part');
  at('turn').addEventListener('click', () => {
    fresh();
    show();
    at('w-rod').focus();
  });
  at('point').addEventListener('click', async () => {
    const label = free(queue, 'TP');
    await queue.put({ entry: uuid(), parent: site, section: 'landmarks', base: 0, keys: { label, kind: 'other', what: say('levels.turning') } });
    at('w-of').value = label;
    at('w-part').value = 'ground';
    at('w-rod').focus();
    again();
  });
  show();
  window.addEventListener('online', again);
  setInterval(() => (queue.items.some((one) => one.state === 'waiting') || queue.reach === false) && again(), AGAIN);
  if (window.isSecureContext && 'serviceWorker' in navigator) {
    await navigator.serviceWorker.register(`/site/${book}/walk-worker.js`, { scope: `/site/${book}/`, updateViaCache: 'none' });
    const kept = () => fetch(location.pathname).catch(() => {});
    if (navigator.serviceWorker.controller) kept();
    else navigator.serviceWorker.addEventListener('controllerchange', kept, { once: true });
  }
  await again();
  page.dataset.ready = 'yes';
}

begin();
