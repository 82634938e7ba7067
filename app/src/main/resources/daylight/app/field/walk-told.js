// What the page says: the spots marked so far, what has to be decided, what the whole book answers.

export function make(name, attributes = {}, ...contents) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith('on')) made.addEventListener(key.slice(2), value);
    else made.setAttribute(key, value);
  }
  made.append(...contents);
  return made;
}

/** Words of the page; {0} and so on stand for what is told with them. */
export const sayer = (words) => (key, ...told) =>
  (words[key] ?? key).replace(/\{(\d)\}/g, (_, at) => String(told[Number(at)] ?? ''));

const written = (value) =>
  typeof value !== 'object' ? String(value)
    : Array.isArray(value) ? value.map(written).join('; ')
      : Object.entries(value).map(([key, inner]) => `${key} ${written(inner)}`).join(', ');

const clock = (keys) => (keys.time ?? '').match(/T(\d\d:\d\d)/)?.[1] ?? '';

/** What was measured of a spot, in the words it was written in. */
export function measured(keys, say) {
  const parts = [];
  if (keys.cable) parts.push(say('cable', written(keys.cable)));
  if (keys.along || keys.out) parts.push(say('along_out', written(keys.along ?? '?'), written(keys.out ?? '?')));
  if (keys.ties) parts.push(say('tapes', written(keys.ties)));
  if (keys.sketch) parts.push(say('sketched'));
  if (keys.gnss) parts.push(say('fixed'));
  if (keys.depth) parts.push(say('depth', written(keys.depth)));
  return parts.join(' · ');
}

/** The list of spots, the last one first; each opens for more. */
export function list(box, queue, visit, say, open) {
  const fits = new Map((queue.answer?.spots ?? []).map((one) => [one.entry, one]));
  const all = queue.all('locates').filter((one) => one.parent === visit).reverse();
  box.replaceChildren(...all.map((one) => {
    const waits = one.version !== undefined;
    const fit = waits || queue.answerIsOld ? undefined : fits.get(one.entry);
    const doubts = waits || queue.answerIsOld ? [] : about(queue.answer, one.keys.label);
    const button = make('button', { type: 'button', 'data-entry': one.entry, onclick: () => open(one.entry) },
      make('strong', {}, `${one.keys.label ?? say('unnamed')} ${clock(one.keys)}`.trim()),
      make('span', {}, measured(one.keys, say) || say('nothing')));
    if (one.note) button.append(make('span', { class: 'off' }, one.note));
    for (const text of fit?.says ?? []) button.append(make('span', {}, text));
    for (const doubt of doubts) button.append(make('span', { class: 'off' }, doubt.says));
    if (waits) button.append(make('span', { class: 'waits' }, say(`state.${one.state}`)));
    return make('li', {}, button);
  }));
}

/** Doubts that name a point, by itself or by a tape to it. */
const about = (answer, label) =>
  (answer?.doubts ?? []).filter((one) =>
    one.about.some((name) => name === label || name.endsWith(`–${label}`)));

/** What the whole book says; and that it is yet to come, where it is. */
export function answer(box, line, queue, say) {
  const told = queue.answer;
  const waits = queue.items.length > 0;
  const now = queue.answerIsOld ? say('answer.coming') : say('answer.now');
  line.textContent = queue.reach === false || waits ? say('answer.later') : told ? now : say('answer.none');
  const parts = [];
  if (told?.state === 'refused') {
    parts.push(make('p', { class: 'why' }, (told.complaints ?? []).join(' ')));
  } else if (told) {
    if (told.doubts.length > 0) {
      parts.push(make('h3', {}, say('answer.doubts')),
        make('ul', { class: 'plain', id: 'doubts' }, ...told.doubts.map((one) => make('li', {}, one.says))));
    }
    if (told.unchecked) parts.push(make('p', {}, told.unchecked));
    if (told.next.length > 0) {
      parts.push(make('h3', {}, say('answer.next')),
        make('ol', { id: 'next' }, ...told.next.map((one) => make('li', {}, `${one.says} ${say('answer.takes', one.takes)}`))));
    }
  }
  box.replaceChildren(...parts);
}

const listed = (keys) =>
  keys === null ? [make('dd', {}, '—')]
    : Object.entries(keys).flatMap(([key, value]) => [make('dt', {}, key), make('dd', {}, written(value))]);

/** What a person has to choose: two that wrote the same entry, or what the archive will not take. */
export function troubles(box, queue, say, act) {
  const open = queue.items.filter((one) => !one.open && ['clash', 'wrong'].includes(one.state));
  const button = (word, how, style = 'button second') =>
    make('button', { type: 'button', class: style, 'data-act': word, onclick: how }, say(word));
  const shown = open.map((one) => {
    const name = one.keys?.label ?? one.section;
    if (one.state === 'clash') {
      return make('div', { class: 'trouble', 'data-clash': one.entry },
        make('h2', {}, say('clash', name)), make('p', {}, say('clash.why')),
        make('div', { class: 'two' },
          make('dl', { 'aria-label': say('clash.mine') }, make('dt', {}, say('clash.mine')), ...listed(one.keys)),
          make('dl', { 'aria-label': say('clash.theirs') }, make('dt', {}, say('clash.theirs')), ...listed(one.now))),
        make('div', { class: 'choices' },
          button('clash.keep_mine', () => act.mine(one)), button('clash.keep_theirs', () => act.drop(one))));
    }
    const taken = one.section === 'landmarks' && one.base === 0 && (one.at ?? []).includes('label');
    return make('div', { class: 'trouble', 'data-wrong': one.entry },
      make('h2', {}, say(taken ? 'taken' : 'wrong', name)),
      taken ? make('p', {}, say('taken.why')) : make('p', {}, (one.complaints ?? []).join(' ')),
      make('div', { class: 'choices' },
        ...(taken ? [button('taken.same', () => act.drop(one)), button('taken.other', () => act.rename(one))]
          : [...(one.section === 'locates' ? [button('wrong.mend', () => act.mend(one))] : []),
            button('wrong.drop', () => act.drop(one))])));
  });
  const before = box.dataset.said;
  const now = open.map((one) => one.entry + one.state + one.version + one.number).join();
  if (before !== now) {
    box.dataset.said = now;
    box.replaceChildren(...shown);
  }
}
