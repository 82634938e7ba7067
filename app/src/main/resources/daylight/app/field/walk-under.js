// A plan or a picture from above beneath the sketch: two named points of it are touched, a third shows
// how well it fits. It is drawn and nothing else; no spot is ever computed from it.

import { book as ofPage, uuid } from './enter.js';
import { ending, sha256, upload } from './push-media.js';
import { make } from './walk-told.js';

const LEAST = 2;

/**
 * The turn, size and place that lay pins upon the ground with the least squares of what is left over.
 *
 * @param pins {of, across, down}, pixels; at: metres east and north by label
 * @return null for fewer than two different ones; else metres a pixel, degrees that the picture is
 *     turned clockwise, what is left over for each pin in metres, and the numbers of the similarity
 */
export function similar(pins, at) {
  const known = pins.filter((one) => at.has(one.of))
    .map((one) => ({ of: one.of, p: Number(one.across), q: -Number(one.down), e: at.get(one.of)[0], n: at.get(one.of)[1] }));
  if (known.length < LEAST) return null;
  const mean = (key) => known.reduce((sum, one) => sum + one[key], 0) / known.length;
  const [p, q, e, n] = ['p', 'q', 'e', 'n'].map(mean);
  let [re, im, square] = [0, 0, 0];
  for (const one of known) {
    const [dp, dq, de, dn] = [one.p - p, one.q - q, one.e - e, one.n - n];
    re += dp * de + dq * dn;
    im += dp * dn - dq * de;
    square += dp * dp + dq * dq;
  }
  const [ar, ai] = [re / square, im / square];
  const scale = Math.hypot(ar, ai);
  if (!(square > 0) || !(scale > 0)) return null;
  const [br, bi] = [e - ar * p + ai * q, n - ar * q - ai * p];
  const left = known.map((one) => ({
    of: one.of,
    by: Math.hypot(ar * one.p - ai * one.q + br - one.e, ai * one.p + ar * one.q + bi - one.n),
  }));
  return { scale, turned: (-Math.atan2(ai, ar) * 180) / Math.PI, left, ar, ai, br, bi };
}

/** Wires the picture; returns {show, drawn}: what shows it anew, and what the sketch draws beneath. */
export function under({ visit, queue, say, metric, ground, changed, again }) {
  const at = (id) => document.getElementById(id);
  const picture = make('img', { id: 'under-picture', alt: say('under.alt') });
  const pictures = () => queue.all('media').filter((one) => one.keys.kind === 'photo' && /^photo-/.test(one.keys.file ?? ''));
  const chosen = () => pictures().find((one) => one.entry === at('w-under').value);
  const address = (one) => `/site/${ofPage()}/media/${one.keys.file}`;
  const size = (metres) => (metric ? `${metres.toFixed(2)} m` : `${(metres / 0.3048).toFixed(1)} ft`);

  function show() {
    const pairs = pictures().map((one) => [one.entry, one.keys.label]);
    const now = JSON.stringify(pairs);
    const select = at('w-under');
    if (select.dataset.now !== now) {
      const before = select.value;
      select.dataset.now = now;
      select.replaceChildren(make('option', { value: '' }, say('under.none')), ...pairs.map(([value, words]) => make('option', { value }, words)));
      const pinned = pictures().find((one) => (one.keys.pins ?? []).length >= LEAST);
      if (pairs.some(([value]) => value === before) && before !== '') select.value = before;
      else if (pinned && select.dataset.chose === undefined) select.value = pinned.entry;
    }
    const one = chosen();
    at('under-chosen').hidden = one === undefined;
    if (one === undefined) return;
    if (!picture.isConnected) at('under-place').append(picture);
    if (picture.getAttribute('src') !== address(one)) picture.src = address(one);
    const pins = one.keys.pins ?? [];
    at('under-pins').replaceChildren(...pins.map((pin) => make('li', {}, say('under.pin', pin.of, pin.across, pin.down), ' ',
      make('button', { type: 'button', class: 'button second', 'aria-label': say('under.unpin', pin.of), onclick: () => keep(one, pins.filter((other) => other !== pin)) }, say('line.withdraw.short')))));
    at('under-told').textContent = told(pins);
  }

  function told(pins) {
    const fit = similar(pins, ground());
    if (fit === null) return say('under.wanted');
    const wide = picture.naturalWidth * fit.scale;
    const said = say('under.fits', size(wide), fit.turned.toFixed(1).replace('-', '−'));
    const worst = fit.left.reduce((one, other) => (other.by > one.by ? other : one));
    return fit.left.length > LEAST ? `${said} ${say('under.misfit', size(worst.by), worst.of)}` : `${said} ${say('under.unchecked')}`;
  }

  async function keep(one, pins) {
    const keys = { ...one.keys, pins };
    if (pins.length === 0) delete keys.pins;
    await queue.put({ entry: one.entry, parent: one.parent, section: 'media', base: one.base ?? one.number, keys });
    again();
  }

  at('w-under').addEventListener('change', () => {
    at('w-under').dataset.chose = 'yes';
    changed();
  });
  picture.addEventListener('load', changed);
  picture.addEventListener('click', (event) => {
    const box = picture.getBoundingClientRect();
    at('w-across').value = Math.round(((event.clientX - box.left) / box.width) * picture.naturalWidth);
    at('w-down').value = Math.round(((event.clientY - box.top) / box.height) * picture.naturalHeight);
    at('w-pin').focus();
  });
  at('under-form').addEventListener('submit', async (event) => {
    event.preventDefault();
    const one = chosen();
    const [across, down] = [at('w-across').value, at('w-down').value].map((text) => text.trim().replace(',', '.'));
    const good = one !== undefined && at('w-pin').value !== '' && [across, down].every((text) => /^\d{1,5}(\.\d+)?$/.test(text));
    event.target.querySelector('.why').textContent = good ? '' : say('under.touch');
    if (!good) return;
    const pins = (one.keys.pins ?? []).filter((pin) => pin.of !== at('w-pin').value);
    await keep(one, [...pins, { of: at('w-pin').value, across, down }]);
    at('w-across').value = '';
    at('w-down').value = '';
  });
  at('w-under-file').addEventListener('change', async ({ target }) => {
    const [blob] = target.files;
    const suffix = blob && ending(blob.type);
    if (suffix !== 'jpg' && suffix !== 'png') {
      at('under-state').textContent = say('under.other');
      return;
    }
    const entry = uuid();
    const name = `photo-${entry}.${suffix}`;
    at('under-state').textContent = say('under.sending');
    try {
      const sha = sha256(new Uint8Array(await blob.arrayBuffer()));
      const state = await upload(ofPage(), { name, blob, sha });
      if (state !== 'whole') throw new Error(state);
      const label = `plan-${1 + Math.max(0, ...queue.all('media').map((one) => Number(/^plan-(\d{1,4})$/.exec(one.keys.label ?? '')?.[1] ?? 0)))}`;
      await queue.put({ entry, parent: visit, section: 'media', base: 0, keys: { label, kind: 'photo', file: name, sha256: sha } });
      at('under-state').textContent = say('under.sent', label);
      target.value = '';
      show();
      at('w-under').value = entry;
      at('w-under').dataset.chose = 'yes';
      again();
    } catch (failed) {
      at('under-state').textContent = say('under.unsent', failed.message);
    }
  });

  return {
    show,
    drawn() {
      const one = chosen();
      const fit = one && similar(one.keys.pins ?? [], ground());
      return fit && picture.naturalWidth > 0
        ? { href: address(one), width: picture.naturalWidth, height: picture.naturalHeight, ...fit } : null;
    },
  };
}
