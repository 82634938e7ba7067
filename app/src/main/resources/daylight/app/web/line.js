// One cursor through plan, profile, strip and footage. Whatever moves it, all of them follow in the
// same frame; nothing is asked of the server, and nothing is read from the layout of the page.

import { Film } from './line-film.js';
import { Table } from './line-table.js';
import { View } from './line-view.js';

const section = document.querySelector('#line[data-table]');

function begin() {
  const table = new Table(section.dataset.table);
  const at = (name) => section.querySelector(`[data-cursor="${name}"]`);
  const slider = at('slider');
  const fields = Object.fromEntries(['where', 'depth', 'within', 'sight', 'way'].map((name) => [name, at(name)]));
  const list = at('there');
  const filmed = at('film');
  const hold = at('held');
  const short = at('short');
  const said = section.dataset;

  let row = 0;
  let held = false;
  let by = null;
  let bridged = false;
  let frame = 0;
  let listed = '';

  const go = (to, from) => {
    if (to < 0 || to >= table.rows) return;
    row = to;
    by = from;
    if (frame === 0) frame = requestAnimationFrame(paint);
  };

  const view = (kind) => {
    const box = section.querySelector(`#${kind} .drawing`);
    const one = new View(box, kind, table, {
      moved: (to) => {
        if (!held && !film.playing && to !== row) go(to, one);
      },
      pressed: (to, mark) => {
        held = mark || !held || to !== row;
        go(to, one);
      },
    });
    return one;
  };

  const film = new Film(table, (to, guessed) => {
    bridged = guessed;
    if (to < 0) write(filmed, said.unread);
    else go(to, film);
  });
  const views = ['plan', 'profile', 'strip'].map(view);

  function paint() {
    frame = 0;
    for (const one of views) one.show(row, one !== by);
    tell();
    if (by !== film) {
      const moment = film.reels.length === 0 ? null : film.follow(row);
      bridged = moment?.bridged ?? false;
      write(filmed, film.reels.length > 0 && moment === null ? said.none : '');
    }
    if (by === film || bridged) write(filmed, bridged ? said.bridged : '');
  }

  function tell() {
    const depth = table.word('depth', row);
    const within = table.word('within', row);
    const sight = table.word('seen', row);
    const things = table.here(row);
    write(fields.where, table.where[row]);
    write(fields.depth, depth ?? said.unknown);
    write(fields.within, within ?? said.unknown);
    write(fields.sight, sight);
    write(fields.way, table.route(row).says);
    write(hold, held ? said.held : '');
    write(short, [table.where[row], depth].filter(Boolean).join(' · '));
    if (Number(slider.value) !== row) slider.value = row;
    const names = things.map((one) => one.says);
    slider.setAttribute('aria-valuetext', [table.where[row], depth, sight, ...names].filter(Boolean).join(', '));
    if (names.join('|') === listed) return;
    listed = names.join('|');
    list.replaceChildren(...things.map(item));
  }

  function item(thing) {
    const one = document.createElement('li');
    const here = thing.id !== '' && document.getElementById(thing.id) !== null;
    if (here || thing.id.startsWith('entry-')) {
      const link = document.createElement('a');
      // What was read stands on the page of readings.
      link.href = here ? `#${thing.id}` : `why#${thing.id}`;
      link.textContent = thing.says;
      one.append(link);
    } else {
      one.textContent = thing.says;
    }
    return one;
  }

  function write(element, text) {
    if (element.textContent !== text) element.textContent = text;
  }

  slider.max = table.rows - 1;
  slider.addEventListener('input', () => {
    held = true;
    go(Number(slider.value), slider);
  });
  const step = (to) => () => {
    held = true;
    go(table.next(row, to), slider);
  };
  at('before').addEventListener('click', step(-1));
  at('next').addEventListener('click', step(1));
  section.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || !held) return;
    held = false;
    go(row, slider);
  });
  document.addEventListener('click', (event) => {
    const link = event.target.closest('a.to-place');
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
    const to = table.place(link.dataset.place, Number(link.dataset.distance));
    if (to < 0) return;
    held = true;
    go(to, link);
  });
  // A row of what was seen, or its picture, takes the cursor to its place; the picture takes the
  // recording to its moment.
  document.addEventListener('click', (event) => {
    const seen = event.target.closest('tr[data-place]');
    const link = event.target.closest('a');
    if (!seen || (link && !link.dataset.media)) return;
    const to = table.place(seen.dataset.place, Number(seen.dataset.distance));
    if (to < 0) return;
    const picture = seen.querySelector('a[data-media]');
    if (picture) film.expect(picture.dataset.media, Number(picture.dataset.seconds));
    held = true;
    go(to, picture ? film : seen);
  });

  at('bar').hidden = false;
  at('mover').hidden = false;
  go(table.things[0]?.from ?? 0, slider);
}

if (section) begin();
