// The walk over the pipe: one press marks a spot with its time; the rest is written while one stands
// there. Everything is on the disk of this phone before the page says so, and goes to the archive
// when that can be reached.

import { uuid } from './enter.js';
import { Queue } from './walk-queue.js';
import { Lengths, moment, free, letter } from './walk-fields.js';
import { base, checks, placed, METRES } from './walk-ground.js';
import { landmarkForms } from './walk-landmarks.js';
import { drawn, lineForm, lines } from './walk-lines.js';
import { renamed } from './walk-names.js';
import { draw } from './walk-sketch.js';
import { answer, list, make, sayer, troubles } from './walk-told.js';
import { under } from './walk-under.js';
import { otherWays } from './walk-ways.js';

const page = document.querySelector('#walk');
const told = JSON.parse(page.dataset.told);
const say = sayer(told.words);
const { book, visit, site, units } = told;
const at = (id) => document.getElementById(id);
const form = at('locate');
const lengths = new Lengths(page);
const AGAIN = 5000;
const NEWS = 20000;
const PLAIN = ['cable', 'along', 'out', 'depth', 'receiver-height', 'cover'];

let queue;
/** The spot that is being written: {entry, base, keys, parent, section}. */
let current = null;
let touched = null;
let stopDropping = () => {};
let showLines = () => {};
let beneath = { show: () => {}, drawn: () => null };

const landmarks = () => queue.all('landmarks');
const ties = () => queue.all('ties');
const grid = () => new Map((queue.answer?.points ?? []).map((one) => [one.label, [one.x, one.y]]));
const ground = () =>
  placed({ landmarks: landmarks(), locates: queue.all('locates'), ties: ties() }, units.distance, grid());

/* What everybody sees. */

function show() {
  const state = reached();
  at('reach').className = `sending ${state[0] === 'kept' ? 'kept' : queue.reach === false ? 'unsent' : ''}`;
  const words = say(`reach.${state[0]}`, state[1] ?? '');
  if (at('reach').textContent !== words) at('reach').textContent = words;
  list(at('spots'), queue, visit, say, open);
  answer(at('answer-told'), at('answer-state'), queue, say);
  troubles(at('troubles'), queue, say, act);
  points();
  sketch();
}

/** Kept is said only where nothing is left on this phone alone. */
function reached() {
  const waiting = queue.items.filter((one) => one.state === 'waiting');
  if (queue.refused !== '') return ['refused', queue.refused];
  if (queue.reach === false) return ['away', queue.items.length];
  if (queue.items.some((one) => one.state !== 'waiting' && !one.open)) return ['undecided', queue.items.length];
  if (waiting.some((one) => !one.open)) return ['waiting', waiting.length];
  if (queue.items.length > 0) return ['writing'];
  return [queue.reach === null ? 'looking' : 'kept'];
}

function points() {
  const rows = landmarks();
  at('points').replaceChildren(...rows.map((one) => make('li', {},
    `${one.keys.label}: ${one.keys.what ?? say(`kind.${one.keys.kind ?? 'other'}`)}`)));
  const labels = rows.map((one) => one.keys.label);
  for (const id of ['from', 'to', 'placed-point']) options(at(`w-${id}`), labels.map((one) => [one, one]));
  for (const id of ['wall', 'placed-wall']) options(at(`w-${id}`), walls().map((wall) => [wall.join('|'), wall.join('–')]));
  at('wall-line').hidden = walls().length < 2;
  at('house').hidden = rows.length > 0;
  const named = queue.all('locates').map((one) => one.keys.label).filter((one) => one !== undefined);
  for (const one of ['1', '2', '3', '4']) options(at(`w-line-${one}`), [['', '–'], ...[...labels, ...named].map((label) => [label, label])]);
  options(at('w-pin'), [['', '–'], ...[...labels, ...named].map((label) => [label, label])]);
  showLines(lines(queue, say));
  beneath.show();
  options(at('w-side'), [['', say('side.unknown')], ...sides(labels)]);
}

/** The wall that carries the grid first; then corners in the order in which they were named. */
function walls() {
  const rows = landmarks();
  const along = ({ keys }) => ['yes', 'true'].includes(keys.base) || [undefined, 'corner'].includes(keys.kind);
  const pair = base(rows);
  const carrying = pair.every((label) => along(rows.find((one) => one.keys.label === label))) ? pair : [];
  const corners = landmarks().filter((one) => one.keys.kind === 'corner').map((one) => one.keys.label);
  const pairs = corners.flatMap((one, i) => corners.filter((other, j) => j === i + 1 || (i === corners.length - 1 && j === 0 && i > 1)).map((other) => [one, other]));
  const all = carrying.length === 2 ? [carrying, ...pairs] : pairs;
  return all.filter((wall, i) => all.findIndex((one) => one.join() === wall.join()) === i);
}

const sides = (labels) =>
  base(landmarks()).length < 2 || labels.length < 2 ? []
    : ['left', 'right'].map((on) => [on, say(`side.${on}`, ...base(landmarks()))]);

function options(select, pairs) {
  const [chosen, now] = [select.value, JSON.stringify(pairs)];
  if (select.dataset.pairs === now) return;
  select.dataset.pairs = now;
  select.replaceChildren(...pairs.map(([value, words]) => make('option', { value }, words)));
  if (pairs.some(([value]) => value === chosen)) select.value = chosen;
}

function sketch() {
  const kinds = new Map((queue.answer?.points ?? []).map((one) => [one.label, one]));
  const waiting = new Set(queue.items.filter((one) => one.section === 'locates').map((one) => one.keys?.label));
  const marks = new Set(landmarks().map((one) => one.keys.label));
  const all = [...ground()].map(([label, [x, y]]) => ({
    label, x, y,
    within: kinds.get(label)?.within ?? 0,
    kind: waiting.has(label) ? 'waits' : kinds.get(label)?.kind ?? (marks.has(label) ? 'landmark' : 'waits'),
  }));
  touched = draw(at('drawing'), {
    points: all, lines: queue.answer?.lines ?? [], marked: drawn(lines(queue, say), ground()),
    under: beneath.drawn(), base: base(landmarks()), feet: told.shown !== 'metres' });
}

/* The spot that is being written. */

async function over() {
  await finish();
  const passes = queue.all('passes').filter((one) => one.parent === visit);
  const last = queue.all('locates').filter((one) => one.parent === visit).at(-1);
  const keys = { label: free(queue, 'L') };
  if (passes.length > 0) keys.pass = passes.at(-1).keys.label;
  if (last?.keys.surface) keys.surface = last.keys.surface;
  keys.time = moment();
  const entry = uuid();
  await queue.put({ entry, parent: visit, section: 'locates', base: 0, keys, open: true });
  queue.send();
  open(entry);
  lengths.fields.get('cable').querySelector('input').focus();
}

function open(entry) {
  const found = queue.find(entry);
  current = { entry, parent: visit, section: 'locates', base: found.base ?? found.number, keys: { ...found.keys } };
  const { keys } = current;
  at('locate-heading').textContent = say('spot', keys.label ?? '');
  const passes = queue.all('passes').filter((one) => one.parent === visit).map((one) => one.keys.label);
  options(at('w-pass'), passes.map((one) => [one, one]));
  at('w-pass').value = keys.pass ?? '';
  at('pass-line').hidden = passes.length < 2;
  unshown.clear();
  tapes();
  for (const key of PLAIN) shown(key, keys[key]);
  shown('lift-by', keys.lifts?.[0]?.by);
  shown('lift-depth', keys.lifts?.[0]?.depth);
  at('w-wall').selectedIndex = 0;
  const ends = typeof keys.wall === 'string' ? keys.wall.split(/[-–]/).map((end) => end.trim()) : keys.wall;
  if (ends) at('w-wall').value = ends.join('|');
  choose('signal', keys.signal);
  choose('off-on', keys['off-on']);
  const known = ['yard', 'slab', 'drive'].includes(keys.surface);
  choose('surface', keys.surface && !known ? 'other' : keys.surface);
  at('w-surface-other').value = known ? '' : keys.surface ?? '';
  at('surface-other-line').hidden = known || !keys.surface;
  at('w-remark').value = keys.remark ?? '';
  at('w-side').value = keys.side?.on ?? '';
  at('drop-told').textContent = keys.sketch ? say('drop.kept') : '';
  at('gnss-told').textContent = keys.gnss ? say('gnss.kept', keys.gnss.sd ?? '') : secure() ? '' : say('gnss.none');
  at('gnss').disabled = !secure();
  form.hidden = false;
  tell();
  form.scrollIntoView({ block: 'start' });
}

/** Lengths that a book writes in a way these fields cannot show; they stay as they are. */
const unshown = new Set();

function shown(key, text) {
  if (!lengths.show(key, text)) unshown.add(key);
}

const secure = () => window.isSecureContext && 'geolocation' in navigator;

function choose(name, value) {
  for (const one of form.querySelectorAll(`input[name="${name}"]`)) one.checked = one.value === value;
}

const chosen = (name) => form.querySelector(`input[name="${name}"]:checked`)?.value;

/** A tape to every landmark, each with a field of its own. */
function tapes() {
  const pattern = lengths.fields.get('tape').parentElement;
  const rows = landmarks().map((one) => {
    const row = pattern.cloneNode(true);
    const key = `tie-${one.keys.label}`;
    row.querySelector('label').textContent = say('tape_to', one.keys.label, one.keys.what ?? '');
    row.querySelector('label').htmlFor = `w-${key}`;
    row.querySelectorAll('input').forEach((input, i) => {
      input.id = `w-${key}${i > 0 ? '-inches' : ''}`;
      input.value = '';
    });
    row.querySelector('.length').dataset.key = key;
    lengths.fields.set(key, row.querySelector('.length'));
    shown(key, current.keys.ties?.[one.keys.label]);
    return row;
  });
  at('tapes-rows').replaceChildren(...(rows.length > 0 ? rows : [make('p', { class: 'hint' }, say('no_landmarks'))]));
}

function set(keys, key, value) {
  if (value === null || value === undefined || value === '') delete keys[key];
  else keys[key] = value;
}

/** The keys as the form has them now; what it cannot show stays as it is. */
function gathered() {
  const keys = { ...current.keys };
  const wrong = [];
  const length = (key) => {
    const read = lengths.read(key);
    if (read.wrong) wrong.push(key);
    return read.wrong ? undefined : read.text;
  };
  // What cannot be shown, and what is no number yet, leaves what was written before.
  const take = (into, key, field = key) => {
    const text = length(field);
    if (text !== undefined && !(text === null && unshown.has(field))) set(into, key, text);
  };
  for (const key of PLAIN) take(keys, key);
  const by = length('lift-by');
  const shows = length('lift-depth');
  const more = (keys.lifts ?? []).slice(1);
  if (by && shows) keys.lifts = [{ by, depth: shows }, ...more];
  else if (more.length === 0 && !unshown.has('lift-by') && !unshown.has('lift-depth')) delete keys.lifts;
  const taped = { ...keys.ties };
  for (const { keys: { label } } of landmarks()) {
    if (lengths.fields.has(`tie-${label}`)) take(taped, label, `tie-${label}`);
  }
  set(keys, 'ties', Object.keys(taped).length > 0 ? taped : null);
  if (keys.along !== undefined || keys.out !== undefined) {
    const wall = at('w-wall').value.split('|');
    if (wall.length === 2) keys.wall = wall;
  } else {
    delete keys.wall;
  }
  const side = at('w-side').value;
  if (side === '') delete keys.side;
  else keys.side = { of: base(landmarks()), on: side };
  set(keys, 'pass', at('w-pass').value || keys.pass);
  set(keys, 'signal', chosen('signal'));
  set(keys, 'off-on', chosen('off-on'));
  const surface = chosen('surface');
  set(keys, 'surface', surface === 'other' ? at('w-surface-other').value.trim() : surface);
  set(keys, 'remark', at('w-remark').value.trim());
  return { keys, wrong };
}

/** Arithmetic only; what the whole book says comes from the archive. */
function tell() {
  const { keys, wrong } = gathered();
  const said = wrong.map((key) => say('check.number', document.querySelector(`label[for="w-${key}"]`)?.textContent ?? key));
  for (const [key, ...more] of checks(keys, { ties: ties() }, ground(), units)) said.push(say(key, ...more.map(limit)));
  if ((keys.along === undefined) !== (keys.out === undefined)) said.push(say('check.both'));
  at('checks').textContent = said.join(' ');
  return { keys, wrong };
}

const limit = (value) =>
  typeof value !== 'number' ? value
    : told.shown === 'metres' ? `${value} m` : `${Math.round(value / METRES.ft)} ft`;

/** Puts on the disk of the phone what the form says, one after the other; an unfinished number stays in its field. */
let storing = Promise.resolve();
function store(open) {
  storing = storing.then(() => stored(open), () => stored(open));
  return storing;
}

async function stored(open) {
  if (current === null) return;
  const { keys } = tell();
  if (open && JSON.stringify(keys) === JSON.stringify(current.keys)) return;
  if ((keys.along ?? keys.out) !== undefined && keys.wall === undefined) keys.wall = await wall();
  current.keys = keys;
  await queue.put({ ...current, open });
}

/** Without landmarks the wall at one's back gets its two ends, so that it stays that wall. */
async function wall() {
  const ends = walls()[0] ?? [];
  while (ends.length < 2) {
    const label = letter(queue);
    await landmark(label, 'corner', say(ends.length === 0 ? 'wall.zero' : 'wall.end'), true);
    ends.push(label);
  }
  return ends;
}

async function landmark(label, kind, what, carrying) {
  const keys = { label, kind };
  if (what) keys.what = what;
  if (carrying) keys.base = 'yes';
  await queue.put({ entry: uuid(), parent: site, section: 'landmarks', base: 0, keys });
}

async function finish() {
  if (current === null) return;
  await store(false);
  current = null;
  form.hidden = true;
  stopDropping();
  queue.send().then(ask);
}

/* What a person chose. */

const act = {
  mine: (one) => queue.mine(one.entry).then(again),
  drop: (one) => queue.drop(one.entry).then(again),
  mend: (one) => open(one.entry),
  /** Another point of the same name: its new name goes to what this phone measured from it. */
  rename: async (one) => {
    const was = one.keys.label;
    const label = free(queue, was.replace(/\d*$/, ''));
    const named = JSON.parse(JSON.stringify(one.keys));
    named.label = label;
    const swap = (name) => (name === was ? label : name);
    await queue.put({ ...one, keys: named });
    for (const item of queue.items.filter((other) => other.entry !== one.entry && other.keys)) {
      const keys = renamed(item.keys, was, label);
      if (JSON.stringify(keys) !== JSON.stringify(item.keys)) await queue.put({ ...item, keys });
    }
    again();
  },
};

/** Two phones took one label for two spots: the later one takes the next, and says so. */
async function relabel() {
  const taken = queue.items.filter((one) =>
    one.state === 'wrong' && one.section === 'locates' && one.base === 0 && (one.at ?? []).includes('label') && !one.open);
  for (const one of taken) {
    const label = free(queue, 'L');
    await queue.put({ ...one, keys: { ...one.keys, label }, note: say('relabelled', one.keys.label, label) });
    noted.push(say('relabelled', one.keys.label, label));
  }
  return taken.length > 0;
}
const noted = [];

async function again() {
  await queue.send();
  if (await relabel()) await queue.send();
  if (noted.length > 0) at('reach').after(...noted.splice(0).map((text) => make('p', { class: 'care', role: 'alert' }, text)));
  return ask();
}

/** Asks for what the whole book says; once more where it was asked again meanwhile. */
let asking = false;
let askedAgain = false;
async function ask() {
  askedAgain = asking;
  if (asking || queue.reach !== true) return;
  asking = true;
  try {
    const { writes } = queue;
    const reply = await fetch(`/site/${book}/visit/${visit}/walk/fit`);
    if (reply.ok) await queue.answered(await reply.json(), writes);
  } catch (away) {
    queue.reach = false;
    show();
  } finally {
    asking = false;
  }
  if (askedAgain) await ask();
}

async function withdraw() {
  const { entry, base: upon } = current;
  const item = queue.items.find((one) => one.entry === entry);
  current = null;
  form.hidden = true;
  if (item && item.base === 0 && item.sent.length === 0) await queue.drop(entry);
  else await queue.put({ entry, parent: visit, section: 'locates', base: item?.base ?? upon, keys: null });
  again();
}

async function begin() {
  queue = await Queue.open(book);
  await queue.closeAll();
  queue.onchange = show;
  at('insecure').hidden = window.isSecureContext;
  page.hidden = false;
  at('over').addEventListener('click', over);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    finish();
  });
  form.addEventListener('change', async () => {
    at('surface-other-line').hidden = chosen('surface') !== 'other';
    await store(true);
  });
  form.addEventListener('keydown', (event) => {
    // The key "next" of a phone goes on to the next field; only the button keeps.
    if (event.key !== 'Enter' || event.target.tagName !== 'INPUT') return;
    event.preventDefault();
    const fields = [...form.querySelectorAll('input:not([type=radio]), #keep')].filter((one) => one.offsetParent !== null);
    fields[fields.indexOf(event.target) + 1]?.focus();
  });
  at('withdraw').addEventListener('click', withdraw);
  landmarkForms({ page, visit, queue, lengths, say, landmark, again });
  beneath = under({ visit, queue, say, metric: told.shown === 'metres', ground, changed: show, again });
  showLines = lineForm({ visit, site, queue, say, again });
  stopDropping = otherWays({
    form,
    queue,
    say,
    current: () => current,
    gathered,
    place: (event) => touched(event),
  });
  show();
  window.addEventListener('online', again);
  document.addEventListener('visibilitychange', () => document.hidden || again());
  setInterval(() => (queue.items.some((one) => one.state === 'waiting') || queue.reach === false) && again(), AGAIN);
  setInterval(() => document.hidden || again(), NEWS);
  if (window.isSecureContext && 'serviceWorker' in navigator) {
    await navigator.serviceWorker.register(`/site/${book}/walk-worker.js`, { scope: `/site/${book}/`, updateViaCache: 'none' });
    const kept = () => fetch(location.pathname).catch(() => {});
    if (navigator.serviceWorker.controller) kept();
    else navigator.serviceWorker.addEventListener('controllerchange', kept, { once: true });
  }
  again();
}

begin();
