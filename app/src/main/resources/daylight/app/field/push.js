// The push: what the camera meets is touched, and stands in the book with the distance of the moment.

import { book, uuid } from './enter.js';
import { openPush } from './push-book.js';
import { card, item, RUNS, told } from './push-card.js';
import { h } from './push-parts.js';
import { clock } from './push-later.js';
import { legs } from './push-legs.js';
import { ending, listen, sha256 } from './push-media.js';
import { minutes, openFilms, secondsOf } from './push-film.js';

const board = document.querySelector('#push');
const about = JSON.parse(board.dataset.board);
const { words, kinds, unit } = about;
const distance = document.querySelector('#distance');
const line = document.querySelector('#told');
const find = (what) => board.querySelector(what);
const pressed = (button) => button.getAttribute('aria-pressed') === 'true';
const press = (button, on) => button.setAttribute('aria-pressed', String(on));
let push = null;
let chosen = null;
let said = '';
let sight = null;
let shown;
let films = null;

/** What a moment of a recording says: its distance where that is known, and where it is shown. */
about.moment = (moment) => {
  const at = words['film.at'].replace('{0}', moment.media).replace('{1}', minutes(secondsOf(moment.at)));
  const far = films?.far(moment) ?? null;
  return far === null ? at : `${far} (${at})`;
};
about.far = (keys) => keys.cable ?? (keys.moment === undefined ? undefined : films?.far(keys.moment) ?? undefined);

document.querySelector('#unit').textContent = `(${unit})`;

// Distances -----------------------------------------------------------------------------------

/** What was typed as the book has it: with its unit; null where nothing was. */
function typed(text = distance.value) {
  const plain = text.trim().replace(',', '.');
  if (plain === '') {
    return null;
  }
  return /^-?\d+(\.\d+)?$/.test(plain) ? `${plain} ${unit}` : text.trim();
}

/** A reading in the unit of the page; NaN for what is written in another way. */
function number(text) {
  const found = /^(-?\d+(?:\.\d+)?)(?: (ft|m))?$/.exec((text ?? '').trim().replace(',', '.'));
  if (found === null) {
    return Number.NaN;
  }
  const of = found[2] ?? unit;
  return of === unit ? Number(found[1]) : Number(found[1]) * (of === 'ft' ? 0.3048 : 1 / 0.3048);
}

function nudge(by) {
  const now = distance.value.trim() === '' ? 0 : number(distance.value);
  if (!Number.isNaN(now)) {
    distance.value = String(Math.max(0, Math.round((now + by) * 10) / 10));
    find('[data-act=later]').setAttribute('aria-pressed', 'false');
    keepDistance();
  }
}

const keepDistance = () => push?.queue.setState(`distance:${about.pass}`, distance.value);

/** Where the camera is; null where only the time is to be kept. */
const here = () => (pressed(find('[data-act=later]')) ? null : typed());

// Saying and showing --------------------------------------------------------------------------

function show() {
  const waiting = push.queue.items().filter((one) => one.state === 'waiting').length + push.busy();
  const refused = push.queue.items().filter((one) => one.state !== 'waiting');
  const state = refused.length > 0 ? 'wrong' : waiting > 0 ? 'unsent' : 'kept';
  const why = push.queue.why();
  const tail = {
    wrong: words.refused.replace('{0}', refused.length),
    unsent: words.unsent.replace('{0}', waiting) + (why === '' ? '' : ` ${why}`),
    kept: words.kept,
  }[state];
  line.className = `sending ${state}`;
  line.textContent = `${said} ${tail}`.trim();
  const focused = document.activeElement?.dataset?.focus;
  const open = find('#card details')?.open ?? false;
  list();
  const row = chosen === null ? undefined : push.row(chosen);
  find('#card').hidden = row === undefined;
  const signs = row && JSON.stringify([row.entry, row.section, row.keys, row.state === 'kept' ? 'waiting' : row.state, row.complaints, row.now, row.keys.moment && about.moment(row.keys.moment)]);
  // What is the same is left alone, so that nothing goes away under a finger.
  if (row !== undefined && signs !== shown) {
    find('#card').replaceChildren(...card(row, about, acts(row)).filter((one) => one !== null && one !== undefined));
    find('#card details').open = open || row.state === 'wrong' || row.section === 'later';
  }
  shown = signs;
  if (focused !== undefined && document.activeElement?.dataset?.focus !== focused) {
    board.querySelector(`[data-focus="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
  }
  films?.show();
  const end = push.pass().keys.end;
  find('[data-act=ended]').classList.toggle('done', end !== undefined);
  for (const button of board.querySelectorAll('[data-sight]')) {
    press(button, button.dataset.sight === sight?.clarity);
  }
  for (const button of board.querySelectorAll('[data-why]')) {
    press(button, button.dataset.why === end?.why);
  }
}

function list() {
  const rows = push.rows();
  const refused = push.queue
    .items()
    .filter((one) => one.blob !== undefined && one.state === 'wrong')
    .map((one) => h('li', { class: 'wrong' }, h('p', { class: 'why' }, one.complaints.join(' '))));
  const pass = push.pass();
  const own = ['wrong', 'clash'].includes(pass.state)
    ? [h('li', { class: pass.state }, h('p', { class: 'why' }, `${words.passwrong} ${(pass.complaints ?? []).join(' ')}`), ...passWays(pass))]
    : [];
  find('#rows').replaceChildren(
    ...refused,
    ...own,
    ...rows.map((row) =>
      item(row, about, row.entry === chosen, () => {
        chosen = row.entry;
        show();
        find('#card').scrollIntoView({ block: 'nearest' });
      }),
    ),
  );
}

function passWays(pass) {
  const way = (says, what) => h('button', { type: 'button', class: 'small', click: what }, says);
  return pass.state === 'clash'
    ? [way(words.theirs, () => push.theirs(about.pass)), way(words.ours, () => push.queue.settle(about.pass, true))]
    : [way(words.giveup, () => push.queue.drop(about.pass).then(() => location.reload()))];
}

async function tell(what, changes, remember = true) {
  said = what;
  await push.change(changes, remember);
}

// What is touched -----------------------------------------------------------------------------

async function touch(kind) {
  const moment = films?.moment() ?? null;
  const cable = here();
  const keys = { label: push.label('F', ['findings']), kind };
  panels();
  if (pressed(find('[data-act=pulling]'))) {
    keys.moving = 'pulling';
  }
  const one = push.found(keys);
  chosen = one.entry;
  const name = kinds[kind].says;
  if (moment !== null) {
    keys.moment = moment;
    await tell(`${name}, ${about.moment(moment)}.`, [one]);
  } else if (cable === null) {
    await tell(`${name}: ${words.nodistance}.`, [push.noteLater(one.entry, clock(), keys)]);
  } else {
    keys.cable = cable;
    await tell(`${name}, ${cable}.`, [one]);
  }
}

const change = (row, keys) => ({ entry: row.entry, parent: row.parent, section: row.section, keys });

/** Sets a key of a row, or takes it away. */
async function set(touched, key, value) {
  const row = push.row(touched.entry) ?? push.row(chosen) ?? touched;
  const keys = { ...row.keys, [key]: value ?? undefined };
  if (value === null) {
    delete keys[key];
  }
  if (row.section === 'later') {
    await push.change([push.noteLater(row.entry, row.time, keys)]);
  } else if (keys.kind === 'bend' && keys.angle !== undefined && about.far(keys) !== undefined) {
    await turn(row, keys);
  } else {
    await push.change([change(row, keys)]);
  }
}

/** A bend with an angle is a bend of the pass: by that the course of the pipe is drawn. */
async function turn(row, keys) {
  const bend = push.found({ label: push.label('bend-', ['bends']), cable: about.far(keys), angle: keys.angle }, 'bends');
  if (['left', 'right', 'up', 'down'].includes(keys.sense)) {
    bend.keys.sense = keys.sense;
  }
  chosen = bend.entry;
  await push.change([change(row, null), bend]);
}

async function placed(row, key, text) {
  const value = typed(text ?? '');
  if (value === null) {
    return;
  }
  if (row.section === 'later') {
    const found = push.fromLater(row, { ...row.keys, [key]: value });
    await tell(`${told(row, about).name}, ${value}.`, [push.noteLater(row.entry, null, {}), found]);
  } else {
    const { moment, ...keys } = row.keys;
    await push.change([change(row, { ...keys, [key]: value })]);
  }
}

/** What was left for later is at that moment of a recording; a person looked, and said so. */
async function filmed(row, moment) {
  const found = push.fromLater(row, { ...row.keys, moment });
  chosen = row.entry;
  await tell(`${told(row, about).name}, ${about.moment(moment)}.`, [push.noteLater(row.entry, null, {}), found]);
}

/** The finding at one place that is looked at, with its name; null where there is none. */
function finding() {
  const row = chosen === null ? undefined : push.row(chosen);
  return row?.section === 'findings' && row.keys.from === undefined ? { row, name: told(row, about).name } : null;
}

/** A finding is where a recording shows it: the moment takes the place of a distance. */
async function moved(row, moment) {
  const { cable, ...keys } = row.keys;
  await tell(`${told(row, about).name}, ${about.moment(moment)}.`, [change(row, { ...keys, moment })]);
}

/** From here on: the book knows no open stretch, so it stands at its beginning and says so. */
const run = (row) => {
  const { moment, ...keys } = row.keys;
  return push.change([change(row, { ...keys, cable: about.far(row.keys), remark: `${RUNS} ${keys.remark ?? ''}`.trim() })]);
};

async function stop(row) {
  const { cable, remark, ...keys } = row.keys;
  const to = typed();
  if (to === null || !(Math.abs(number(to) - number(cable)) > 0)) {
    said = words.further;
    show();
    return;
  }
  const [first, second] = number(to) < number(cable) ? [to, cable] : [cable, to];
  const more = remark.slice(RUNS.length).trim();
  await tell(`${told(row, about).name}, ${first} – ${second}.`, [
    change(row, { ...keys, from: first, to: second, ...(more === '' ? {} : { remark: more }) }),
  ]);
}

function acts(row) {
  return {
    set: (key, value) => set(row, key, value),
    place: (key, value) => placed(row, key, value),
    run: () => run(row),
    stop: () => stop(row),
    leg: () => find('#card').append(legs(row, { push, about, tell, change })),
    photo: (event) => photo(row, event.target.files[0]),
    theirs: () => push.theirs(row.entry),
    ours: () => push.queue.settle(row.entry, true),
    withdraw: () => {
      chosen = null;
      const name = `${told(row, about).name}: ${words.withdrawn}.`;
      return row.section === 'later' ? tell(name, [push.noteLater(row.entry, null, {})]) : tell(name, [change(row, null)]);
    },
  };
}

/** Keeps a file in the queue, and names it in the book; returns its label. */
async function keep(kind, blob, labelled) {
  const suffix = ending(blob.type);
  if (suffix === undefined) {
    said = words.othertype;
    show();
    return null;
  }
  const entry = uuid();
  const file = `${kind}-${entry}.${suffix}`;
  const sha = sha256(new Uint8Array(await blob.arrayBuffer()));
  await push.queue.putMedia(file, blob, sha);
  const keys = { label: labelled, kind, file, sha256: sha, pass: push.pass().keys.label };
  return { entry, parent: about.visit, section: 'media', keys };
}

async function photo(row, blob) {
  const media = blob && (await keep('photo', blob, push.label('photo-', ['media'])));
  if (media) {
    const now = push.row(row.entry);
    const stills = [...(now.keys.stills ?? []), media.keys.label];
    await tell(`${words.photo}: ${media.keys.label}.`, [media, change(now, { ...now.keys, stills })]);
  }
}

let hush = null;
async function voice(button) {
  if (hush !== null) {
    const end = hush;
    hush = null;
    press(button, false);
    button.textContent = words.voice;
    const { label } = button.dataset;
    const media = await keep('voice', await end(), label);
    if (media) {
      await tell(`${label}.`, [media]);
    }
    return;
  }
  try {
    hush = await listen();
    button.dataset.label = `voice ${clock()}${here() === null ? '' : ` at ${here()}`}`;
    button.textContent = words.voicestop;
    press(button, true);
  } catch (refused) {
    said = words.novoice;
    show();
  }
}

// The pass itself -----------------------------------------------------------------------------

/** The stretch of sight that runs, closed at a distance; nothing where it has no length. */
function closed(at) {
  const a = number(sight?.from);
  const b = number(at);
  if (sight === null || !(Math.abs(a - b) > 0)) {
    return {};
  }
  const stretch = { from: `${Math.min(a, b)} ${unit}`, to: `${Math.max(a, b)} ${unit}`, clarity: sight.clarity };
  return { sight: [...(push.pass().keys.sight ?? []), stretch] };
}

async function see(clarity) {
  const at = typed();
  if (Number.isNaN(number(at))) {
    said = words.wantdistance;
    show();
    return;
  }
  const more = closed(at);
  sight = sight?.clarity === clarity && Object.keys(more).length === 0 ? null : { from: at, clarity };
  if (more.sight) {
    await push.change([push.passChange(more)]);
  }
  await push.queue.setState(`sight:${about.pass}`, sight);
  show();
}

async function ended(why) {
  const cable = typed();
  if (cable === null) {
    said = words.wantdistance;
    show();
    return;
  }
  panels();
  const more = closed(cable);
  sight = null;
  // What is written comes first: the page must not say for a moment that all is kept.
  await tell(`${find(`[data-why=${why}]`).textContent}, ${cable}.`, [push.passChange({ end: { cable, why }, ...more })]);
  await push.queue.setState(`sight:${about.pass}`, null);
}

function panels(open = null) {
  for (const name of ['stop', 'more', 'ended']) {
    const now = name === open && find(`#${name}-panel`).hidden;
    find(`#${name}-panel`).hidden = !now;
    find(`[data-act=${name}]`).setAttribute('aria-expanded', String(now));
  }
}

const orders = {
  stop: () => panels('stop'),
  more: () => panels('more'),
  ended: () => panels('ended'),
  later: (button) => press(button, !pressed(button)),
  pulling: (button) => press(button, !pressed(button)),
  undo: async () => {
    said = (await push.undo()) ? words.undone : words.nothing;
    show();
  },
  voice,
  start: () => tell(`${words.started} ${clock()}.`, [push.passChange({ start: new Date().toISOString().slice(0, 19) + 'Z' })]),
};

export const page = { nudge, find, board, distance };

// Wiring --------------------------------------------------------------------------------------

board.addEventListener('click', (event) => {
  const button = event.target.closest('button');
  if (button === null || push === null) {
    return;
  }
  const { kind, act, why, nudge: by } = button.dataset;
  if (kind) {
    touch(kind);
  } else if (by) {
    nudge(Number(by));
  } else if (why) {
    ended(why);
  } else if (button.dataset.sight) {
    see(button.dataset.sight);
  } else if (orders[act]) {
    orders[act](button);
  }
});
distance.addEventListener('change', keepDistance);
distance.addEventListener('input', () => press(find('[data-act=later]'), false));

async function stayAwake() {
  try {
    await navigator.wakeLock?.request('screen');
  } catch (refused) {
    // A screen that goes dark loses nothing; every touch is kept before.
  }
}
document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && stayAwake());
stayAwake();

try {
  push = await openPush(about, () => push && show());
  distance.value = (await push.queue.state(`distance:${about.pass}`)) ?? '';
  sight = (await push.queue.state(`sight:${about.pass}`)) ?? null;
  films = openFilms({
    book: book(),
    about,
    push,
    arrived: (far) => {
      distance.value = far;
      press(find('[data-act=later]'), false);
    },
    take: filmed,
    chosen: finding,
    put: moved,
    typed,
    tell,
    changed: () => push && show(),
  });
  show();
  push.queue.send();
  import('./push-letters.js');
} catch (failed) {
  line.className = 'sending unsent';
  line.textContent = `${words.broken} ${failed.message ?? failed}`;
}
