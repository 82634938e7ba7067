// The line on the page of a property: the cursor of its drawings, which leads the footage and is led
// by it.

import { Cursor } from './line-cursor.js';
import { Film } from './line-film.js';

const section = document.querySelector('#line[data-table]');

function begin() {
  const said = section.dataset;
  let bridged = false;
  const cursor = new Cursor(section, said.table, {
    leads: () => film.playing,
    meant: (link) => {
      if (!link.dataset.media) return null;
      film.expect(link.dataset.media, Number(link.dataset.seconds));
      return film;
    },
    painted: (row, by) => {
      if (by !== film) {
        const moment = film.reels.length === 0 ? null : film.follow(row);
        bridged = moment?.bridged ?? false;
        cursor.write(filmed, film.reels.length > 0 && moment === null ? said.none : '');
      }
      if (by === film || bridged) cursor.write(filmed, bridged ? said.bridged : '');
    },
  });
  const filmed = cursor.at('film');
  const film = new Film(cursor.table, (to, guessed) => {
    bridged = guessed;
    if (to < 0) cursor.write(filmed, said.unread);
    else cursor.go(to, film);
  });
  cursor.begin();
}

if (section) begin();
