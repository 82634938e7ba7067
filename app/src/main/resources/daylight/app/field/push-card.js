// The card of what was touched last: where, how large, at which hour; and the list of all.

import { h, ring, steps, values } from './push-parts.js';

export const RUNS = 'runs on from here';

const far = ({ cable, from, to, moment }, about) => {
  if (moment !== undefined) {
    return about.moment(moment);
  }
  return cable ?? (from === undefined ? null : `${from} – ${to}`);
};

/** What a row says in one line. */
export function told(row, about) {
  const { keys } = row;
  const words = about.words;
  const where = row.section === 'later' ? `${words.nodistance} (${row.time})` : far(keys, about);
  const name = row.section === 'bends' ? about.kinds.bend.says : about.kinds[keys.kind]?.says ?? keys.kind;
  const more = Object.entries(keys)
    .filter(([key, value]) => typeof value === 'string' && !['label', 'kind', 'cable', 'from', 'to', 'remark'].includes(key))
    .map(([key, value]) => `${words[`part.${key}`] ?? key} ${words[`part.${value}`] ?? value}`);
  return { name, where, more: more.join(', '), running: (keys.remark ?? '').startsWith(RUNS) };
}

function stateOf(row, words) {
  return { kept: '✓', waiting: words.waiting, wrong: words.wrong, clash: words.clash }[row.state] ?? '';
}

/** One row of the list. */
export function item(row, about, chosen, choose) {
  const { name, where, more, running } = told(row, about);
  return h(
    'li',
    { class: row.state },
    h(
      'button',
      { type: 'button', 'aria-pressed': String(chosen), 'data-focus': `row-${row.entry}`, 'data-entry': row.entry, click: choose },
      h('strong', {}, `${where ?? ''} `),
      h('span', {}, running ? `${name}, ${about.words.running}` : name),
      more === '' ? null : h('span', { class: 'quiet' }, more),
      h('span', { class: 'state' }, stateOf(row, about.words)),
    ),
    row.state === 'wrong' && row.complaints?.length > 0 ? h('p', { class: 'why' }, row.complaints.join(' ')) : null,
  );
}

function trouble(row, words, act) {
  if (row.state === 'wrong') {
    return h('div', { class: 'trouble' }, h('p', {}, words.mend), h('p', {}, (row.complaints ?? []).join(' ')));
  }
  if (row.state !== 'clash') {
    return null;
  }
  const now = row.now === null ? '–' : Object.entries(row.now).map(([key, value]) => `${key}: ${value}`).join(', ');
  return h(
    'div',
    { class: 'trouble' },
    h('p', {}, `${words.clashed} ${now}`),
    h('button', { type: 'button', class: 'small', click: act.theirs }, words.theirs),
    h('button', { type: 'button', class: 'small', click: act.ours }, words.ours),
  );
}

function quantities(row, about, set) {
  const { words } = about;
  const says = (name) => words[`part.${name}`] ?? name;
  if (row.section === 'bends') {
    return [
      values('angle', says('angle'), row.keys.angle, steps('angle').map((v) => [v, v]), (v) => v !== null && set('angle', v)),
      values('sense', says('sense'), row.keys.sense, ['left', 'right', 'up', 'down'].map((v) => [v, says(v)]), (v) => set('sense', v)),
    ];
  }
  const kind = about.kinds[row.keys.kind] ?? { quantities: {}, words: {} };
  const sizes = Object.entries(kind.quantities).map(([name, of]) =>
    values(name, says(name), row.keys[name], steps(of, about.unit).map((v) => [v, v]), (v) => set(name, v)),
  );
  const ways = { direction: ['up', 'down', 'left', 'right'], sense: ['left', 'right', 'up', 'down'] };
  const particulars = Object.entries(kind.words).map(([name, may]) =>
    values(name, says(name), row.keys[name], (may.length > 0 ? may : ways[name] ?? []).map((v) => [v, says(v)]), (v) => set(name, v)),
  );
  return [...sizes, ...particulars];
}

function place(row, about, act) {
  const { words } = about;
  const field = (key, says) => values(key, says, row.keys[key], [], (v) => act.place(key, v));
  if (row.section === 'later') {
    return [values('cable', words.distance, '', [], (v) => act.place('cable', v))];
  }
  return row.keys.from === undefined ? [field('cable', words.distance)] : [field('from', words.from), field('to', words.to)];
}

/** The whole card; `act` is what may be done. */
export function card(row, about, act) {
  const { words } = about;
  const { name, where, running } = told(row, about);
  const button = (what, says, style = 'small') =>
    says && h('button', { type: 'button', class: style, 'data-act': `card-${what}`, 'data-focus': `card-${what}`, click: act[what] }, says);
  const stretch = row.section === 'findings' && about.far(row.keys) !== undefined && about.kinds[row.keys.kind]?.stretch;
  const body = h('div', { class: 'sizes' }, ...quantities(row, about, act.set));
  const rest = h(
    'details',
    { 'data-focus': 'rest' },
    h('summary', { 'data-focus': 'rest-summary' }, words.rest),
    ...place(row, about, act),
    row.section === 'bends' ? null : values('clock', words.clock, row.keys.clock, [], (v) => act.set('clock', v)),
    row.section === 'bends' ? null : values('remark', words.remark, row.keys.remark, [], (v) => act.set('remark', v)),
  );
  return [
    h('h2', {}, `${name} `, h('span', { class: 'quiet' }, where ?? '')),
    trouble(row, words, act),
    h('div', { class: 'two' }, row.section === 'bends' ? null : ring(row.keys.clock, words.ring, (v) => act.set('clock', v)), body),
    h(
      'div',
      { class: 'row' },
      stretch ? button(running ? 'stop' : 'run', running ? words.stop : words.run) : null,
      row.keys.kind === 'junction' ? button('leg', words.leg) : null,
      row.section === 'findings' ? photo(words, act.photo) : null,
      button('withdraw', words.withdraw),
    ),
    rest,
  ];
}

function photo(words, take) {
  const field = h('input', { type: 'file', accept: 'image/*', capture: 'environment', id: 'photo', 'data-focus': 'photo', change: take });
  return h('label', { class: 'photo', for: 'photo' }, words.photo, field);
}
