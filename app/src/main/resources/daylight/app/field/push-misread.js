// What was misread in a recording, put right: between two moments its counter showed something
// else, or nothing that can be read. The reading itself stays; what is written is an entry of its own.

import { h } from './push-parts.js';

const LOOK = 500;
const at = (id) => document.getElementById(id);

/**
 * Wires the part of the page.
 *
 * @param film what is shown: `now()` seconds, `media()` its label or null, `minutes` and `secondsOf`
 *   as players and books write moments, `again()` has the counters looked up anew
 * @param typed a distance with its unit; null for a blank
 */
export function openMisread({ about, push, film, typed, tell }) {
  const { words } = about;
  const ends = { from: null, to: null };

  const rows = () =>
    push.all().filter((one) => one.parent === about.pass && one.section === 'corrections' && one.keys.media === film.media());

  function show() {
    const media = film.media();
    at('misread').hidden = media === null;
    if (media === null) return;
    for (const end of ['from', 'to']) {
      const text = ends[end] === null ? words[`misread.${end}`] : `${words[`misread.${end}`]}: ${film.minutes(ends[end])}`;
      if (at(`misread-${end}`).textContent !== text) at(`misread-${end}`).textContent = text;
    }
    at('misread-put').disabled = !(ends.from !== null && ends.to > ends.from);
    const all = rows();
    const signs = JSON.stringify(all.map(({ entry, keys, state, complaints }) => [entry, keys, state, complaints]));
    const list = at('misread-list');
    if (list.dataset.signs === signs) return;
    list.dataset.signs = signs;
    list.replaceChildren(...all.map(item));
  }

  function item(row) {
    const { keys } = row;
    const [from, to] = [keys.from, keys.to].map((moment) => film.minutes(film.secondsOf(moment)));
    const what = keys.counter === undefined ? words['misread.dark'] : words['misread.showed'].replace('{0}', keys.counter);
    return h(
      'li',
      { class: row.state },
      h('span', {}, `${from} – ${to}: ${what} `),
      row.state === 'wrong' ? h('p', { class: 'why', lang: 'en' }, (row.complaints ?? []).join(' ')) : null,
      h('button', { type: 'button', class: 'small', click: () => written(`${words['misread.back']}.`, { ...row, keys: null }) }, words['misread.back']),
    );
  }

  /** What is written counts when the archive has it; then the counters are looked up anew. */
  async function written(says, { entry, parent, section, keys }) {
    await tell(says, [{ entry, parent, section, keys }]);
    const wait = () => {
      const row = push.row(entry);
      const waits = push.queue.items().some((one) => one.entry === entry && one.state === 'waiting');
      if (waits) setTimeout(wait, LOOK);
      else if (row === undefined || row.state === 'kept') film.again();
    };
    wait();
  }

  async function put() {
    const counter = typed(at('misread-counter').value);
    const keys = {
      label: push.label('misread-', ['corrections']),
      media: film.media(),
      from: `${ends.from} s`,
      to: `${ends.to} s`,
      ...(counter === null ? {} : { counter }),
    };
    const one = push.found(keys, 'corrections');
    [ends.from, ends.to] = [null, null];
    at('misread-counter').value = '';
    await written(`${words['misread.put']}.`, one);
  }

  for (const end of ['from', 'to']) {
    at(`misread-${end}`).addEventListener('click', () => {
      ends[end] = Math.round(film.now() * 100) / 100;
      show();
    });
  }
  at('misread-put').addEventListener('click', put);
  return { show };
}
