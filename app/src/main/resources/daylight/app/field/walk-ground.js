// What a phone can tell by arithmetic alone: plain spots along and out from a wall, and whether
// lengths can be at all. No line is estimated here.

export const METRES = { ft: 0.3048, in: 0.0254, m: 1, cm: 0.01, mm: 0.001 };

// Limits of our own, to catch a slip of the finger; common practice, no source.
const DEEPEST = 10;
const LONGEST_TAPE = 100;
const LONGEST_CABLE = 1500;
const TAPE_SLACK = 0.15;
const LIFT_OFF = 0.2;

/** A length as this page or a book writes it, in metres; null for anything else. */
export function metres(text, unit) {
  if (text === null || text === undefined || text === '') return null;
  const said = String(typeof text === 'object' ? text.is ?? '' : text).trim().replace('−', '-');
  const feet = said.match(/^(-?)(\d+(?:\.\d+)?)\s*(?:'|ft)(?:\s*(\d+(?:\.\d+)?)?(?:\s*(\d+)\/(\d+))?\s*(?:"|in))?$/);
  if (feet) {
    const inches = Number(feet[3] ?? 0) + (feet[4] ? Number(feet[4]) / Number(feet[5]) : 0);
    return (feet[1] ? -1 : 1) * (Number(feet[2]) * METRES.ft + inches * METRES.in);
  }
  const one = said.match(/^(-?\d+(?:\.\d+)?)\s*([a-z]*)$/);
  const scale = one && METRES[one[2] || unit];
  return scale ? Number(one[1]) * scale : null;
}

/** The two landmarks that carry the grid: those marked, else the first two. */
export function base(landmarks) {
  const marked = landmarks.filter((one) => ['yes', 'true'].includes(one.keys.base));
  return [...new Set([...marked, ...landmarks].map((one) => one.keys.label))].slice(0, 2);
}

const wallOf = (keys, carrying) => {
  if (Array.isArray(keys.wall)) return keys.wall;
  return typeof keys.wall === 'string' ? keys.wall.split(/[-–]/).map((end) => end.trim()) : carrying;
};

/** Spots by label in metres of the site grid, x east and y north, as far as arithmetic places them. */
export function placed({ landmarks, locates, ties }, unit, known = new Map()) {
  const at = new Map(known);
  const carrying = base(landmarks);
  if (carrying.length < 2) return at;
  const tape = ties.find(
    ({ keys }) => keys.tape && [keys.from, keys.to].every((end) => carrying.includes(end)));
  if (!at.has(carrying[0])) at.set(carrying[0], [0, 0]);
  if (!at.has(carrying[1])) at.set(carrying[1], [0, metres(tape?.keys.tape, unit) ?? 10]);
  const rows = [
    ...ties.filter(({ keys }) => keys.point).map(({ keys }) => [keys.point, keys]),
    ...locates.map(({ keys }) => [keys.label, keys]),
  ];
  for (const [label, keys] of rows) {
    if (at.has(label)) continue;
    if (keys.sketch) {
      const [x, y] = [metres(keys.sketch.east, unit), metres(keys.sketch.north, unit)];
      if (x !== null && y !== null) at.set(label, [x, y]);
      continue;
    }
    const [along, out] = [metres(keys.along, unit), metres(keys.out, unit)];
    const ends = wallOf(keys, carrying).map((end) => at.get(end));
    if (along === null || out === null || !ends[0] || !ends[1]) continue;
    const [[x, y], [x2, y2]] = ends;
    const length = Math.hypot(x2 - x, y2 - y);
    const [e, n] = [(x2 - x) / length, (y2 - y) / length];
    at.set(label, [x + along * e - out * n, y + along * n + out * e]);
  }
  return at;
}

/** How far two landmarks are apart, by a tape between them or where both are placed. */
function apart(one, other, ties, at, unit) {
  const tape = ties.find(
    ({ keys }) => keys.tape && [keys.from, keys.to].includes(one) && [keys.from, keys.to].includes(other));
  if (tape) return metres(tape.keys.tape, unit);
  return null;
}

/** What cannot be in the keys of a locate: keys of words with what goes into them. */
export function checks(keys, { ties }, at, units) {
  const wrong = [];
  const depth = metres(keys.depth, units.depth);
  const height = metres(keys['receiver-height'], units.depth) ?? 0;
  const cover = metres(keys.cover, units.depth) ?? 0;
  if (depth !== null && !(depth > 0 && depth <= DEEPEST)) wrong.push(['check.depth', DEEPEST]);
  if (depth !== null && height + cover > 0 && depth <= height + cover) wrong.push(['check.height']);
  const cable = metres(keys.cable, units.distance);
  if (cable !== null && !(cable >= 0 && cable <= LONGEST_CABLE)) wrong.push(['check.cable', LONGEST_CABLE]);
  for (const key of ['along', 'out']) {
    const length = metres(keys[key], units.distance);
    if (length !== null && Math.abs(length) > LONGEST_TAPE) wrong.push([`check.${key}`, LONGEST_TAPE]);
  }
  for (const lift of keys.lifts ?? []) {
    const [by, shows] = [metres(lift.by, units.depth), metres(lift.depth, units.depth)];
    if (depth !== null && by > 0 && shows !== null && Math.abs(shows - depth - by) > LIFT_OFF * by) {
      wrong.push(['check.lift']);
    }
  }
  const tapes = Object.entries(keys.ties ?? {}).map(([end, text]) => [end, metres(text, units.distance)]);
  for (const [end, length] of tapes) {
    if (length !== null && !(length > 0 && length <= LONGEST_TAPE)) wrong.push(['check.tape', end, LONGEST_TAPE]);
  }
  for (let i = 0; i < tapes.length; i++) {
    for (let j = i + 1; j < tapes.length; j++) {
      const [[one, a], [other, b]] = [tapes[i], tapes[j]];
      const between = apart(one, other, ties, at, units.distance);
      if (a === null || b === null || between === null) continue;
      const slack = TAPE_SLACK + (a + b) / 100;
      if (a + b + slack < between) wrong.push(['check.short', one, other]);
      if (Math.abs(a - b) > between + slack) wrong.push(['check.long', one, other]);
    }
  }
  return wrong;
}
