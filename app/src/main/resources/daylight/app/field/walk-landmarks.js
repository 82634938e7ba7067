// Landmarks of the walk: named by a touch, the house by two of its sides, tapes between them, and
// places along and out from a wall.

import { uuid } from './enter.js';
import { letter } from './walk-fields.js';

/**
 * Wires the forms of landmarks.
 *
 * @param walk the page, its queue, lengths and words, and what names a landmark and sends what waits
 */
export function landmarkForms({ page, visit, queue, lengths, say, landmark, again }) {
  const at = (id) => document.getElementById(id);
  for (const button of page.querySelectorAll('.kinds button')) {
    button.addEventListener('click', async () => {
      await landmark(letter(queue), button.dataset.kind, '', false);
      again();
    });
  }
  const submitted = (id, how) => at(`${id}-form`).addEventListener('submit', async (event) => {
    event.preventDefault();
    const line = event.target.querySelector('.why');
    line.textContent = '';
    const read = Object.fromEntries([...event.target.querySelectorAll('.length')].map((box) => [box.dataset.key, lengths.read(box.dataset.key)]));
    const bad = Object.entries(read).find(([, one]) => one.wrong || one.text === null);
    if (bad) {
      line.textContent = say('check.number', document.querySelector(`label[for="w-${bad[0]}"]`).textContent);
      return;
    }
    const wrong = await how(Object.fromEntries(Object.entries(read).map(([key, one]) => [key, one.text])));
    if (wrong) {
      line.textContent = wrong;
    } else {
      event.target.reset();
      again();
    }
  });
  const tie = (keys) => queue.put({ entry: uuid(), parent: visit, section: 'ties', base: 0, keys });
  submitted('house', async ({ 'house-front': front, 'house-side': side }) => {
    const names = [];
    for (const [i, what] of ['front.zero', 'front.end', 'back.end', 'back.zero'].entries()) {
      names.push(letter(queue));
      await landmark(names[i], 'corner', say(`house.${what}`), i < 2);
    }
    const [a, b, c, d] = names;
    await tie({ from: a, to: b, tape: front });
    await tie({ point: c, wall: [a, b], along: front, out: `-${side}` });
    await tie({ point: d, wall: [a, b], along: '0 m', out: `-${side}` });
  });
  submitted('between', async ({ tape }) => {
    const [from, to] = [at('w-from').value, at('w-to').value];
    if (from === to) return say('check.twice');
    await tie({ from, to, tape });
    return '';
  });
  submitted('placed', async ({ 'placed-along': along, 'placed-out': out }) => {
    const [point, ends] = [at('w-placed-point').value, at('w-placed-wall').value.split('|')];
    if (ends.length !== 2 || ends.includes(point)) return say('check.twice');
    await tie({ point, wall: ends, along, out });
    return '';
  });
}
