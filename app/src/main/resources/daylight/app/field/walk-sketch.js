// The sketch: the wall that carries the grid lies at the bottom, out is up.

const NS = 'http://www.w3.org/2000/svg';
const LEAST = 8;
const WIDTH = 340;

function element(name, attributes, text) {
  const made = document.createElementNS(NS, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text !== undefined) made.textContent = text;
  return made;
}

/**
 * Draws points {label, kind, x, y, within}, lines of [x, y], and what is marked on the ground {style,
 * says, path} over a picture {href, width, height, ar, ai, br, bi}; returns how a touch is understood.
 */
export function draw(box, { points, lines, marked = [], under = null, base, feet }) {
  // Along is to the right and out is up, whatever north is.
  const flat = (x, y) => [y, -x];
  const all = [...points.map((one) => flat(one.x, one.y)), ...lines.flat().map(([x, y]) => flat(x, y))];
  const span = (index) => {
    const values = all.length > 0 ? all.map((one) => one[index]) : [0];
    const [low, high] = [Math.min(...values), Math.max(...values)];
    const more = Math.max(LEAST - (high - low), 0.24 * (high - low), 2) / 2;
    return [low - more, high + more];
  };
  const [[left, right], [low, high]] = [span(0), span(1)];
  const scale = WIDTH / Math.max(right - left, (high - low) * 0.75);
  const height = (high - low) * scale;
  const spare = (WIDTH / scale - (right - left)) / 2;
  const at = (x, y) => {
    const [u, v] = flat(x, y);
    return [(u - left + spare) * scale, (high - v) * scale];
  };
  const svg = element('svg', { viewBox: `0 0 ${WIDTH} ${height.toFixed(1)}`, 'aria-hidden': 'true' });
  const path = (line) => line.map(([x, y]) => at(x, y).map((n) => n.toFixed(1)).join(',')).join(' ');
  if (under !== null) {
    const { ar, ai, br, bi } = under;
    const laid = [ai, ar, -ar, ai, bi - left + spare, br + high].map((n) => (n * scale).toFixed(6));
    svg.append(element('image', {
      href: under.href, width: under.width, height: under.height, transform: `matrix(${laid.join(' ')})`, opacity: 0.6 }));
  }
  const wall = base.map((label) => points.find((one) => one.label === label));
  if (wall[0] && wall[1]) {
    const [[x1, y1], [x2, y2]] = wall.map((one) => at(one.x, one.y));
    svg.append(element('line', { class: 'wall', x1, y1, x2, y2, 'stroke-width': 4 }));
  }
  for (const { style, path: through } of marked) {
    // Edged, so that yellow shows in any light.
    svg.append(element('polyline', { class: 'edge', points: path(through), 'stroke-width': 5 }),
      element('polyline', { class: `ink ${style}`, points: path(through), 'stroke-width': 3 }));
  }
  for (const line of lines) {
    svg.append(element('polyline', { class: 'pipe', points: path(line), 'stroke-width': 3 }));
  }
  const named = [];
  for (const one of points) {
    const [cx, cy] = at(one.x, one.y);
    if (one.within > 0 && one.kind === 'locate') {
      svg.append(element('circle', { class: 'within', cx, cy, r: Math.max(6, one.within * scale) }));
    }
    svg.append(one.kind === 'landmark'
      ? element('rect', { class: 'landmark', x: cx - 4, y: cy - 4, width: 8, height: 8 })
      : element('circle', { class: one.kind, cx, cy, r: 6, 'stroke-width': 3 }));
    named.push([one.label, cx, cy, base.includes(one.label)]);
  }
  // A name goes to the side on which no other stands yet; where none is free it is left to the list.
  const boxes = [];
  for (const [label, cx, cy, onWall] of named) {
    const width = 9 * label.length + 4;
    const beside = [[9, 5], [-9 - width, 5]];
    const above = [[-width / 2, -10], [-width / 2, 22], [9, -9], [9, 19]];
    // The wall runs through what stands beside its ends.
    const places = onWall ? [...above, ...beside] : [...beside, ...above];
    const spot = places
      .map(([dx, dy]) => ({ x: cx + dx, y: cy + dy - 12, width, height: 15 }))
      .find((b) => b.x >= 0 && b.x + b.width <= WIDTH && b.y >= 0 && b.y + b.height <= height - 14 &&
        boxes.every((o) => b.x + b.width < o.x || o.x + o.width < b.x || b.y + b.height < o.y || o.y + o.height < b.y));
    if (spot) {
      boxes.push(spot);
      svg.append(element('text', { x: spot.x, y: spot.y + 12, 'font-size': 14 }, label));
    }
  }
  for (const { says, path: through } of marked) {
    const [[x1, y1], [x2, y2]] = through.slice(0, 2).map(([x, y]) => at(x, y));
    const width = 7 * says.length;
    const x = Math.min(Math.max((x1 + x2 - width) / 2, 2), WIDTH - width - 2);
    svg.append(element('text', { x, y: Math.max((y1 + y2) / 2 - 5, 12), 'font-size': 12 }, says));
  }
  const unit = feet ? 0.3048 : 1;
  const bar = [1, 2, 5, 10, 20, 50, 100, 200].filter((n) => n * unit * scale < WIDTH / 2).at(-1) ?? 1;
  const y = height - 5;
  svg.append(element('line', { class: 'scale', x1: 8, y1: y, x2: 8 + bar * unit * scale, y2: y, 'stroke-width': 2 }));
  svg.append(element('text', { x: 12 + bar * unit * scale, y: y + 3, 'font-size': 12 }, `${bar} ${feet ? 'ft' : 'm'}`));
  box.replaceChildren(svg);
  /** East and north, metres of the grid, of a touch. */
  return (event) => {
    const frame = svg.getBoundingClientRect();
    const u = ((event.clientX - frame.left) / frame.width) * WIDTH / scale + left - spare;
    const v = high - ((event.clientY - frame.top) / frame.height) * (height / scale);
    return { east: -v, north: u };
  };
}
