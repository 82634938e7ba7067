// The push gone through again with its recording: keys take the moment that is shown, the distance
// is what the counter in the picture says there. What was left for later is offered one by one.

import { post } from './enter.js';
import { openMisread } from './push-misread.js';
import { h } from './push-parts.js';

const FOOT = 0.3048;
const SOON = 1000;
const at = (id) => document.getElementById(id);
const figure = (seconds) => Math.round(seconds * 100) / 100;

/** Minutes and seconds, as players show them. */
export const minutes = (seconds) =>
  `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;

/** Seconds of a moment as a book writes them. */
export const secondsOf = (text) => {
  const clock = /^(?:(\d+):)?(\d+):(\d+(?:\.\d+)?)$/.exec(text ?? '');
  return clock === null
    ? Number.parseFloat(text)
    : Number(clock[1] ?? 0) * 3600 + Number(clock[2]) * 60 + Number(clock[3]);
};

/** What the counter shows at a moment, metres; null where nobody knows. */
export function counterAt(samples, seconds) {
  const next = samples.findIndex(([time]) => time >= seconds);
  if (next < 0 || (next === 0 && samples[0][0] > seconds)) {
    return null;
  }
  const [time, value] = samples[next];
  if (time === seconds || next === 0) {
    return value;
  }
  const [before, was] = samples[next - 1];
  return was === null || value === null ? null : was + ((seconds - before) / (time - before)) * (value - was);
}

/**
 * Wires the recordings of a push.
 *
 * @param about what the page is about: book, pass, unit, words
 * @param push what stands in it; `arrived` is told the distance of the moment shown, `take` makes a
 *   finding of one that was left for later, `chosen` is the finding that is looked at, with its
 *   name, `put` sets one to a moment, `changed` has the page say all anew; `typed` and `tell` as the
 *   page has them
 */
export function openFilms({ book, about, push, arrived, take, chosen, put, changed, typed, tell }) {
  const { words, unit } = about;
  const video = at('film-shown');
  let films = [];
  let state = '';
  let share = 0;
  let reading = '';
  let shown = null;
  let own = '';
  let passed = 0;
  let timer = 0;
  let last = null;

  const film = (label) => films.find((one) => one.label === label);
  const inUnit = (metres) => `${Math.round((metres / (unit === 'ft' ? FOOT : 1)) * 10) / 10} ${unit}`;

  /** The distance of a moment of a recording, with its unit; null where it is not known. */
  function far(moment) {
    const samples = film(moment?.media)?.samples;
    const metres = samples === undefined ? null : counterAt(samples, secondsOf(moment.at));
    return metres === null ? null : inUnit(metres);
  }

  /** The moment that is shown, where keys are to take it. */
  function moment() {
    return shown === null || video.hidden || at('film-keys').getAttribute('aria-pressed') !== 'true'
      ? null
      : { media: shown, at: `${figure(video.currentTime)} s` };
  }

  function show() {
    const which = at('film-which');
    const all = [['', words['film.none']], ...films.map((one) => [one.label, `${one.label}: ${one.file}`])];
    if (which.dataset.said !== JSON.stringify(all)) {
      which.dataset.said = JSON.stringify(all);
      which.replaceChildren(...all.map(([value, says]) => h('option', { value }, says)));
      which.value = shown ?? '';
    }
    const one = film(shown);
    const busy = state === 'reading';
    at('film-read').hidden = busy || one?.track !== 'unread' || state === 'looking';
    at('film-stop').hidden = !busy;
    at('film-share').hidden = !busy;
    at('film-share').value = share;
    at('film-keys').hidden = shown === null;
    const says = told(one, busy);
    if (at('film-told').textContent !== says) {
      at('film-told').textContent = says;
    }
    place();
    misread.show();
    later(one);
  }

  /** The finding that is looked at may be put where the recording shows it. */
  function place() {
    const row = chosen();
    const now = moment();
    const there = row === null || now === null ? null : far(now);
    at('film-place').hidden = there === null;
    if (there === null) return;
    const says = words['film.place'].replace('{0}', row.name).replace('{1}', there);
    if (at('film-place').textContent !== says) at('film-place').textContent = says;
  }

  function told(one, busy) {
    if (busy) {
      return `${words['film.busy'].replace('{0}', reading)} ${Math.round(share * 100)} %`;
    }
    if (one === undefined) {
      return own === '' ? '' : words['film.foreign'].replace('{0}', own);
    }
    const says = words[`film.${state === 'looking' ? 'looking' : one.track}`];
    return one.src === undefined && own === '' ? `${words['film.missing']} ${one.track === 'nothing' ? '' : says}` : says;
  }

  /** Left for later, one by one: where the recording shows it, and what its counter says there. */
  function later(one) {
    const open = push.rows().filter((row) => row.section === 'later').reverse();
    const box = at('film-later');
    const ready = open.length > 0 && one?.track === 'read' && !video.hidden;
    box.hidden = !ready;
    if (!ready) {
      return;
    }
    const row = open[passed % open.length];
    const begins = push.pass().keys.start;
    const when = begins === undefined ? null : since(begins, row.time);
    const name = about.kinds[row.keys.kind]?.says ?? row.keys.kind;
    const now = { media: shown, at: `${figure(video.currentTime)} s` };
    const there = far(now);
    const signs = JSON.stringify([row.entry, row.keys, when, now, there, open.length]);
    if (box.dataset.signs === signs) {
      return;
    }
    box.dataset.signs = signs;
    const focused = document.activeElement?.dataset?.focus;
    const button = (act, says, click, off = false) =>
      h('button', { type: 'button', class: 'small', id: `film-${act}`, 'data-focus': `film-${act}`, disabled: off, click }, says);
    box.replaceChildren(
      h('h2', {}, words['film.left'].replace('{0}', open.length)),
      h('p', {}, `${name}, ${row.time}. ${when === null ? words['film.seek'] : words['film.guess'].replace('{0}', minutes(when))}`),
      h('p', {}, h('strong', {}, `${minutes(video.currentTime)}: ${there ?? words['film.dark']}`)),
      h(
        'div',
        { class: 'row' },
        when === null ? null : button('go', words['film.go'].replace('{0}', minutes(when)), () => {
          video.currentTime = when;
        }),
        button('take', words['film.take'], () => take(row, now), there === null),
        open.length < 2 ? null : button('next', words['film.next'], () => {
          passed += 1;
          show();
        }),
      ),
    );
    if (focused?.startsWith('film-')) {
      box.querySelector(`[data-focus="${focused}"]`)?.focus({ preventScroll: true });
    }
  }

  /** From the beginning of the recording to a time of this device's clock, seconds. */
  function since(begins, clock) {
    const start = new Date(begins);
    if (Number.isNaN(start.getTime())) {
      return null;
    }
    const [hours, mins, secs] = clock.split(':').map(Number);
    const began = start.getHours() * 3600 + start.getMinutes() * 60 + start.getSeconds();
    const when = (hours * 3600 + mins * 60 + secs - began + 86400) % 86400;
    return when <= (video.duration || 0) ? when : null;
  }

  async function ask() {
    clearTimeout(timer);
    try {
      const reply = await fetch(`/site/${book}/pass/${about.pass}/films`);
      if (reply.ok) {
        ({ films, state, share, file: reading } = await reply.json());
      }
    } catch (away) {
      // Out of reach the recording of this device still plays; what is known stays.
    }
    if (state !== 'known') {
      timer = setTimeout(ask, SOON);
    }
    show();
    moved();
    changed();
  }

  const order = (what) => post(`/site/${book}/films/${what}`, '', 'text/plain').then(ask, (refused) => {
    at('film-told').textContent = refused.message;
  });

  function load(src) {
    if (video.src.startsWith('blob:')) {
      URL.revokeObjectURL(video.src);
    }
    video.hidden = src === undefined;
    if (src === undefined) {
      video.removeAttribute('src');
      video.load();
    } else {
      video.src = src;
    }
    show();
  }

  function moved() {
    const now = moment();
    const there = now === null ? null : far(now);
    // What somebody typed over it stays until the picture moves on.
    if (there !== null && there !== last) {
      arrived(there.split(' ')[0]);
    }
    last = there;
    show();
  }

  const misread = openMisread({
    about,
    push,
    typed,
    tell,
    film: {
      now: () => video.currentTime,
      media: () => (film(shown)?.track === 'read' && !video.hidden ? shown : null),
      minutes,
      secondsOf,
      again: ask,
    },
  });

  at('film-place').addEventListener('click', () => put(chosen().row, moment()));
  at('film').addEventListener('toggle', () => at('film').open && ask());
  at('film-which').addEventListener('change', ({ target }) => {
    shown = target.value === '' ? null : target.value;
    own = '';
    load(film(shown)?.src);
  });
  at('film-own').addEventListener('change', ({ target }) => {
    const [chosen] = target.files;
    if (chosen === undefined) {
      return;
    }
    own = chosen.name;
    // The book knows a recording by its name; one that it does not know is only looked at.
    shown = films.find((one) => one.file.split('/').at(-1) === own)?.label ?? null;
    at('film-which').value = shown ?? '';
    load(URL.createObjectURL(chosen));
  });
  at('film-read').addEventListener('click', () => order('read'));
  at('film-stop').addEventListener('click', () => order('stop'));
  at('film-keys').addEventListener('click', ({ currentTarget }) => {
    currentTarget.setAttribute('aria-pressed', String(currentTarget.getAttribute('aria-pressed') !== 'true'));
    moved();
  });
  for (const event of ['timeupdate', 'seeked', 'loadedmetadata']) {
    video.addEventListener(event, moved);
  }
  video.addEventListener('error', () => {
    if (video.hasAttribute('src')) {
      at('film-told').textContent = words['film.unplayable'];
    }
  });

  return { moment, far, show };
}
