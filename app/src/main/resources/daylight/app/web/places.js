// A row of what was seen, and its place on the drawings: pointing at either shows the other.
// The drawings carry data-place (the reach) and data-distance (metres along it), as do the rows.

const SVG = 'http://www.w3.org/2000/svg';
const MARGIN = 4;
const ROUND = 9;
const NEAR = 0.011; // distances are written with two decimals

const rows = [...document.querySelectorAll('tr[data-place]')];
const drawings = [...document.querySelectorAll('.drawing')];
let pinned = null;

const same = (one, other) =>
  one.dataset.place === other.dataset.place &&
  Math.abs(Number(one.dataset.distance) - Number(other.dataset.distance)) < NEAR;

/** Whether there is anything of it to ring: a thread from a sign to its words is not. */
const hasArea = (mark) => {
  const box = mark.getBoundingClientRect();
  return box.width > 0 && box.height > 0;
};

const marksOf = (row, drawing) =>
  [...drawing.querySelectorAll('[data-place][data-distance]')].filter(
    (mark) => same(mark, row) && hasArea(mark),
  );

const rowOf = (mark) => rows.find((row) => same(mark, row));

/** Rings a mark, in the coordinates of its drawing, and tells how far along the drawing it is. */
function ring(svg, mark) {
  const box = mark.getBoundingClientRect();
  const toDrawing = svg.getScreenCTM().inverse();
  const corner = new DOMPoint(box.x, box.y).matrixTransform(toDrawing);
  const place = {
    x: corner.x - MARGIN,
    y: corner.y - MARGIN,
    width: box.width * toDrawing.a + 2 * MARGIN,
    height: box.height * toDrawing.d + 2 * MARGIN,
    rx: ROUND,
  };
  const shape = document.createElementNS(SVG, 'rect');
  shape.setAttribute('class', 'ring');
  for (const [name, value] of Object.entries(place)) shape.setAttribute(name, value);
  const under = shape.cloneNode();
  under.classList.add('under');
  // All that is under comes before the first ring, so that no ring is cut by its neighbour's.
  svg.insertBefore(under, svg.querySelector('.ring:not(.under)'));
  svg.append(shape);
  return box.x + box.width / 2 - svg.getBoundingClientRect().x;
}

function show(row) {
  document.querySelectorAll('.ring').forEach((old) => old.remove());
  rows.forEach((one) => one.classList.toggle('lit', one === row));
  if (!row) return;
  for (const drawing of drawings) {
    const svg = drawing.querySelector('svg');
    const along = marksOf(row, drawing).map((mark) => ring(svg, mark));
    if (along.length > 0 && row === pinned) {
      drawing.scrollLeft = along[0] - drawing.clientWidth / 2;
    }
  }
}

function pin(row) {
  pinned = row === pinned ? null : row;
  rows.forEach((one) =>
    one.querySelector('button.label').setAttribute('aria-pressed', String(one === pinned)));
  show(pinned);
}

for (const row of rows) {
  const label = row.querySelector('.label');
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'label';
  button.textContent = label.textContent;
  button.setAttribute('aria-label', row.dataset.show);
  button.setAttribute('aria-pressed', 'false');
  button.addEventListener('click', () => pin(row));
  label.replaceWith(button);

  row.addEventListener('pointerenter', () => show(row));
  row.addEventListener('pointerleave', () => show(pinned));
  row.addEventListener('focusin', () => show(row));
  row.addEventListener('focusout', () => show(pinned));
  row.addEventListener('click', (event) => {
    if (!event.target.closest('a, button')) {
      if (row !== pinned) pin(row);
      row.querySelector('a[data-media]')?.click();
    }
  });
}

for (const drawing of drawings) {
  for (const mark of drawing.querySelectorAll('[data-place][data-distance]')) {
    const row = rowOf(mark);
    if (!row) continue;
    mark.classList.add('known');
    mark.addEventListener('pointerenter', () => show(row));
    mark.addEventListener('pointerleave', () => show(pinned));
    mark.addEventListener('click', () => pin(row));
  }
}
