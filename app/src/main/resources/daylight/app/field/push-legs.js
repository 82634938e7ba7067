// Which way the camera went where pipes join.

import { uuid } from './enter.js';
import { h } from './push-parts.js';

/** The end of the reach so far, as the pass walks it. */
function farEnd(push) {
  const reaches = push.all().filter((one) => one.section === 'reaches');
  let at = push.pass().keys.entry;
  for (const leg of push.pass().keys.walk ?? []) {
    const keys = reaches.find((one) => one.keys.label === (leg.reach ?? leg))?.keys;
    at = keys?.from === at ? keys.to : keys?.from;
  }
  return push.all().find((one) => one.section === 'nodes' && one.keys.label === at);
}

/** The legs that may be taken at a junction, each a key. */
export function legs(row, { push, about, tell, change }) {
  const { words } = about;
  const node = farEnd(push);
  const walk = push.pass().keys.walk ?? [];
  const walked = walk.map((leg) => leg.reach ?? leg);
  const known = push
    .all()
    .filter((one) => one.section === 'reaches' && [one.keys.from, one.keys.to].includes(node?.keys.label))
    .filter((one) => !walked.includes(one.keys.label));
  const take = (says, changes, reach) =>
    h('button', { type: 'button', class: 'key', click: () => take.on(changes, reach) }, says);
  take.on = (changes, reach) =>
    tell(`${words.leg}: ${reach}.`, [
      ...changes,
      push.passChange({ walk: [...walk, reach] }),
      ...(row.keys.cable === undefined ? [] : [change(row, { ...row.keys, node: node.keys.label })]),
    ]);
  const ways = known.map((one) => take(`${one.keys.label}: ${one.keys.from} – ${one.keys.to}`, [], one.keys.label));
  if (node !== undefined && ['end', 'junction'].includes(node.keys.kind)) {
    ways.push(take(words.newleg, newLeg(node, push, about, change), push.label('R', ['reaches'])));
  }
  return h('div', { class: 'keys' }, ...(ways.length === 0 ? [h('p', {}, words.noleg)] : ways));
}

/** A reach that nobody knew: from here, the end of the reach until now, to an end not seen yet. */
function newLeg(node, push, about, change) {
  const end = push.label('E', ['nodes', 'landmarks', 'locates', 'exposures']);
  const within = { parent: about.site };
  const keys = { label: push.label('R', ['reaches']), from: node.keys.label, to: end };
  return [
    change(node, { ...node.keys, kind: 'junction' }),
    { ...within, entry: uuid(), section: 'nodes', keys: { label: end, kind: 'end' } },
    { ...within, entry: uuid(), section: 'reaches', keys },
  ];
}
