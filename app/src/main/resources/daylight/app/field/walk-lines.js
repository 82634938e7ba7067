// Lines on the ground: marks of other services, walls and boundaries, through points that were named.

import { uuid } from './enter.js';
import { make } from './walk-told.js';

const SERVICES = ['electric', 'gas', 'communication', 'water', 'reclaimed-water', 'sewer', 'unknown'];
const THROUGH = ['1', '2', '3', '4'];

/** The lines of the book: {entry, service or boundary, points as labels, says}. */
export function lines(queue, say) {
  const services = queue.all('services').map((one) => [one, `service.${one.keys.service ?? 'unknown'}`, one.keys.service ?? 'unknown']);
  const boundaries = queue.all('boundaries').map((one) => [one, `boundary.${one.keys.kind ?? 'other'}`, 'boundary']);
  return [...services, ...boundaries]
    .filter(([one]) => Array.isArray(one.keys.points))
    .map(([one, word, style]) => ({ ...one, style, says: say(word), points: one.keys.points }));
}

/** The lines as far as their points are placed, for the sketch. */
export const drawn = (all, ground) =>
  all.map(({ style, says, points }) => ({ style, says, path: points.map((label) => ground.get(label)).filter((at) => at !== undefined) }))
    .filter(({ path }) => path.length > 1);

/** Wires the form of lines; returns what shows the list and the choices anew. */
export function lineForm({ visit, site, queue, say, again }) {
  const at = (id) => document.getElementById(id);
  const kind = at('w-line-kind');
  const sides = () => {
    const boundary = kind.value.startsWith('boundary.');
    for (const id of ['line-left-line', 'line-right-line']) at(id).hidden = !boundary;
  };
  kind.addEventListener('change', sides);
  sides();
  at('lines-form').addEventListener('submit', async (event) => {
    event.preventDefault();
    const line = event.target.querySelector('.why');
    const points = THROUGH.map((one) => at(`w-line-${one}`).value).filter((label) => label !== '');
    if (points.length < 2 || points.some((label, i) => label === points[i - 1])) {
      line.textContent = say('check.twice');
      return;
    }
    line.textContent = '';
    const [sort, of] = [kind.value.slice(0, kind.value.indexOf('.')), kind.value.slice(kind.value.indexOf('.') + 1)];
    const keys = sort === 'service' ? { service: of, points } : { kind: of, points };
    for (const side of sort === 'boundary' ? ['left', 'right'] : []) {
      const whose = at(`w-line-${side}`).value.trim();
      if (whose !== '') keys[side] = whose;
    }
    await queue.put({
      entry: uuid(),
      parent: sort === 'service' ? visit : site,
      section: sort === 'service' ? 'services' : 'boundaries',
      base: 0,
      keys,
    });
    event.target.reset();
    sides();
    again();
  });
  async function withdraw(one) {
    const waits = queue.items.find((item) => item.entry === one.entry);
    if (waits && waits.base === 0 && waits.sent.length === 0) await queue.drop(one.entry);
    else await queue.put({ ...one, base: one.base ?? one.number, keys: null });
    again();
  }
  return (all) => {
    const now = JSON.stringify(all.map(({ entry, says, points, version }) => [entry, says, points, version]));
    if (at('lines-list').dataset.now === now) return;
    at('lines-list').dataset.now = now;
    at('lines-list').replaceChildren(...all.map((one) => {
      const mark = make('span', { class: `ink ${one.style}`, 'aria-hidden': 'true' });
      const text = `${one.says}: ${one.points.join(' – ')}`;
      const mine = SERVICES.includes(one.style) ? one.parent === visit : true;
      return make('li', {}, mark, ` ${text} `, ...(mine
        ? [make('button', { type: 'button', class: 'button second', 'aria-label': say('line.withdraw', text), onclick: () => withdraw(one) }, say('line.withdraw.short'))]
        : []));
    }));
  };
}
