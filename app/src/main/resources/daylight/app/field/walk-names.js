// Which landmarks the keys of an entry name; and the same keys where a landmark got another name.

const SINGLE = ['from', 'to', 'point', 'at', 'of'];

/** The labels that keys name beside their own. */
export function named(keys) {
  if (!keys) return [];
  const wall = typeof keys.wall === 'string' ? keys.wall.split(/[-–]/).map((end) => end.trim()) : keys.wall ?? [];
  const single = SINGLE.filter((key) => typeof keys[key] === 'string').map((key) => keys[key]);
  const points = Array.isArray(keys.points) ? keys.points : [];
  const pins = Array.isArray(keys.pins) ? keys.pins.map((one) => one.of) : [];
  return [...single, ...points, ...pins, ...wall, ...(keys.side?.of ?? []), ...Object.keys(keys.ties ?? {})];
}

/** The keys with one label put for another wherever it is named. */
export function renamed(keys, was, label) {
  const swap = (name) => (name === was ? label : name);
  const out = { ...keys };
  for (const key of SINGLE) if (key in out) out[key] = swap(out[key]);
  if (Array.isArray(out.wall)) out.wall = out.wall.map(swap);
  if (Array.isArray(out.pins)) out.pins = out.pins.map((one) => ({ ...one, of: swap(one.of) }));
  if (Array.isArray(out.points)) out.points = out.points.map(swap);
  if (out.side?.of) out.side = { ...out.side, of: out.side.of.map(swap) };
  if (out.ties) out.ties = Object.fromEntries(Object.entries(out.ties).map(([end, text]) => [swap(end), text]));
  return out;
}
