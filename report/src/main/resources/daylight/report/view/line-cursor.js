// One cursor through all drawings of a line. Whatever moves it, all of them follow in the same
// frame; nothing is asked for, and nothing is read from the layout of the page.

import { Table } from './line-table.js';
import { View } from './line-view.js';

const FIELDS = ['where', 'depth', 'within', 'sight', 'way'];

/** What a page without footage has to say: nothing. */
const ALONE = { leads: () => false, meant: () => null, painted: () => {} };

export class Cursor {
  /**
   * A recording has a say: leads() while it plays; meant(link) takes it to where a link leads and
   * returns who moves the cursor; painted(row, by) after the cursor moved.
   */
  constructor(section, text, film = ALONE) {
    this.section = section;
    this.parts = new Map([...section.querySelectorAll('[data-cursor]')].map((one) => [one.dataset.cursor, one]));
    this.said = section.dataset;
    this.table = new Table(text);
    this.film = film;
    this.row = 0;
    this.held = false;
    this.by = null;
    this.frame = 0;
    this.listed = '';
    this.pictured = '';
    this.slider = this.at('slider');
    this.fields = Object.fromEntries(FIELDS.map((name) => [name, this.at(name)]));
    this.views = this.table.faces.map((name) => this.view(name));
    this.listen();
  }

  at(name) {
    return this.parts.get(name) ?? null;
  }

  begin() {
    for (const [name, part] of this.parts) if (name !== 'picture') part.hidden = false;
    this.go(this.table.things[0]?.from ?? 0, this.slider);
  }

  go(to, by) {
    if (to < 0 || to >= this.table.rows) return;
    this.row = to;
    this.by = by;
    if (this.frame === 0) this.frame = requestAnimationFrame(() => this.paint());
  }

  /** Goes there and stays, whatever a pointer does meanwhile. */
  hold(to, by) {
    this.held = true;
    this.told = by !== this.slider;
    this.go(to, by);
  }

  view(name) {
    const box = this.section.querySelector(`[data-drawing="${name}"]`);
    const one = new View(box, name, this.table, {
      moved: (to) => {
        if (!this.held && !this.film.leads() && to !== this.row) this.go(to, one);
      },
      pressed: (to, mark) => {
        this.held = mark || !this.held || to !== this.row;
        this.told = true;
        this.go(to, one);
      },
      stepped: (by) => {
        // Its drawing scrolls to it, too.
        this.hold(Math.min(this.table.rows - 1, Math.max(0, this.row + by)), box);
      },
    });
    return one;
  }

  paint() {
    this.frame = 0;
    for (const one of this.views) one.show(this.row, one !== this.by);
    this.tell();
    this.film.painted(this.row, this.by);
  }

  tell() {
    const { table, row, said, fields } = this;
    const depth = table.word('depth', row);
    const within = table.word('within', row);
    const sight = table.word('seen', row);
    const things = table.here(row);
    this.write(fields.where, table.where[row]);
    this.write(fields.depth, depth ?? said.unknown);
    this.write(fields.within, within ?? said.unknown);
    this.write(fields.sight, sight);
    this.write(fields.way, table.route(row).says);
    this.write(this.at('held'), this.held ? said.held : '');
    this.write(this.at('short'), [table.where[row], depth].filter(Boolean).join(' · '));
    if (Number(this.slider.value) !== row) this.slider.value = row;
    const names = things.map((one) => one.says);
    const all = [table.where[row], depth, sight, ...names].filter(Boolean).join(', ');
    this.slider.setAttribute('aria-valuetext', all);
    // The slider says its own value; of what else moved the cursor somebody must be told.
    if (this.told) this.write(this.at('told'), all);
    this.told = false;
    if (names.join('|') !== this.listed) {
      this.listed = names.join('|');
      this.at('there').replaceChildren(...things.map((thing) => this.item(thing)));
    }
    this.show(table.pictured(row));
  }

  item(thing) {
    const one = document.createElement('li');
    const here = thing.id !== '' && document.getElementById(thing.id) !== null;
    const readings = this.said.readings;
    if (here || (readings && thing.id.startsWith('entry-'))) {
      const link = document.createElement('a');
      link.href = here ? `#${thing.id}` : `${readings}#${thing.id}`;
      link.textContent = thing.says;
      one.append(link);
    } else {
      one.textContent = thing.says;
    }
    return one;
  }

  /** The nearest picture, which stands elsewhere on the page and is only shown again. */
  show(picture) {
    const place = this.at('picture');
    if (place === null || picture === this.pictured) return;
    this.pictured = picture;
    const figure = picture === '' ? null : document.getElementById(picture);
    place.hidden = figure === null;
    if (figure === null) return;
    const link = place.querySelector('a');
    const image = figure.querySelector('img, svg').cloneNode(true);
    // Its words stand beside it.
    if (image.matches('img')) {
      image.alt = '';
    } else {
      image.setAttribute('aria-hidden', 'true');
      image.querySelectorAll('title, desc').forEach((told) => told.remove());
    }
    const words = document.createElement('span');
    words.textContent = figure.querySelector('figcaption').textContent;
    link.href = `#${picture}`;
    link.replaceChildren(image, words);
  }

  write(element, text) {
    if (element.textContent !== text) element.textContent = text;
  }

  listen() {
    const { slider, table } = this;
    slider.max = table.rows - 1;
    slider.addEventListener('input', () => this.hold(Number(slider.value), slider));
    const step = (to) => () => this.hold(table.next(this.row, to), this);
    this.at('before').addEventListener('click', step(-1));
    this.at('next').addEventListener('click', step(1));
    this.section.addEventListener('keydown', (event) => {
      if (event.key !== 'Escape' || !this.held) return;
      this.held = false;
      this.go(this.row, slider);
    });
    // A link to a place, a row of what was seen, or its picture takes the cursor to its place; the
    // picture takes the recording to its moment.
    document.addEventListener('click', (event) => {
      const link = event.target.closest('a');
      const seen = event.target.closest('tr[data-place]');
      if (link?.matches('.to-place')) {
        if (event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
        this.lead(link, link);
      } else if (seen && (!link || link.dataset.media)) {
        this.lead(seen, seen.querySelector('a[data-media]'));
      }
    });
  }

  lead(from, link) {
    const to = this.table.place(from.dataset.place, Number(from.dataset.distance));
    if (to >= 0) this.hold(to, (link && this.film.meant(link)) ?? from);
  }
}
