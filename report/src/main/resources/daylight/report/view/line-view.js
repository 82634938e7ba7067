// One drawing: shows the cursor on it, says which place lies under a pointer, and can be made
// larger, by its buttons, two fingers, or the wheel with the control key, and then dragged.

const SVG = 'http://www.w3.org/2000/svg';
const REACH = 60; // as far from the line a pointer still means a place of it, points of the sheet
const LARGEST = 8;
const STEP = 1.5;
const STEPS = { ArrowLeft: -1, ArrowRight: 1, Home: -Infinity, End: Infinity };
const STILL = 4; // a pointer that moved less was pressed, not dragged

const make = (name, style) => {
  const one = document.createElementNS(SVG, name);
  one.setAttribute('class', style);
  return one;
};

const set = (element, values) => {
  for (const [name, value] of Object.entries(values)) element.setAttribute(name, value);
};

export class View {
  /** What a hand does is told: moved(row), pressed(row, on a mark), stepped(rows). */
  constructor(box, kind, table, told) {
    this.box = box;
    this.kind = kind;
    this.table = table;
    this.told = told;
    this.svg = box.querySelector('svg');
    this.sheet = this.svg.viewBox.baseVal;
    this.scale = 1;
    this.size = { width: 0, height: 0 };
    this.rect = null;
    this.inside = false;
    this.mark = make('g', 'cursor');
    this.under = make('line', 'under');
    this.stroke = make('line', 'stroke');
    this.region = make('ellipse', 'region');
    this.knob = make('circle', 'knob');
    this.knob.setAttribute('r', 5);
    this.mark.append(this.under, this.stroke, this.region, this.knob);
    this.svg.append(this.mark);
    this.listen();
    this.buttons();
  }

  /** Moves the cursor. Only writes: what has to be known of the page was read beforehand. */
  show(row, follow) {
    const spot = this.table.spot(this.kind, row);
    if (spot === null) {
      this.mark.setAttribute('visibility', 'hidden');
      return;
    }
    // Before anything is changed, so that the browser need not lay out the page for it.
    if (follow) this.follow(spot);
    this.mark.setAttribute('visibility', 'visible');
    for (const line of [this.under, this.stroke]) set(line, { x1: spot.x, x2: spot.x, y1: spot.from, y2: spot.to });
    set(this.knob, { cx: spot.x, cy: spot.y });
    const wide = Math.max(spot.wide, spot.high > 0 ? 3 : 0);
    set(this.region, { rx: wide, ry: spot.high, transform: `translate(${spot.x} ${spot.y}) rotate(${spot.turn})` });
  }

  /** Scrolls a drawing that is larger than its window to where the cursor is. */
  follow(spot) {
    const { width, height } = this.size;
    if (this.drawn === undefined) return;
    const x = (spot.x * this.drawn.width) / this.sheet.width;
    const y = (spot.y * this.drawn.height) / this.sheet.height;
    const to = {};
    if (this.drawn.width > width + 1) to.left = x - width / 2;
    if (this.drawn.height > height + 1) to.top = y - height / 2;
    if (Object.keys(to).length > 0) this.box.scrollTo({ ...to, behavior: 'instant' });
  }

  /** The place under a pointer; −1 where there is none near. */
  pointed(event) {
    if (this.rect === null) this.measure();
    const x = ((event.clientX - this.rect.left) * this.sheet.width) / this.rect.width;
    const y = ((event.clientY - this.rect.top) * this.sheet.height) / this.rect.height;
    let best = -1;
    let least = REACH * REACH;
    for (let row = 0; row < this.table.rows; row++) {
      const spot = this.table.spot(this.kind, row);
      if (spot === null) continue;
      const above = Math.max(0, Math.min(spot.from, spot.y) - y, y - Math.max(spot.to, spot.y));
      const off = (spot.x - x) ** 2 + above ** 2;
      if (off < least) [best, least] = [row, off];
    }
    return best;
  }

  measure() {
    this.rect = this.svg.getBoundingClientRect();
  }

  listen() {
    const { box } = this;
    new ResizeObserver((all) => {
      for (const one of all) {
        const { width, height } = one.contentRect;
        if (one.target === box) this.size = { width, height };
        else this.drawn = { width, height };
      }
      this.rect = null;
    }).observe(box);
    const own = new ResizeObserver(([one]) => (this.drawn = { width: one.contentRect.width, height: one.contentRect.height }));
    own.observe(this.svg);
    addEventListener('scroll', () => {
      this.rect = null;
      if (this.inside) requestAnimationFrame(() => this.measure());
    }, { capture: true, passive: true });
    box.addEventListener('pointerenter', () => {
      this.inside = true;
      this.measure();
    });
    box.addEventListener('pointerleave', () => (this.inside = false));
    box.addEventListener('pointermove', (event) => {
      if (event.pointerType === 'mouse' && this.grip === undefined) this.told.moved(this.pointed(event));
    });
    box.addEventListener('click', (event) => {
      if (this.dragged) return;
      const mark = event.target.closest('[data-place][data-distance]');
      const row = mark ? this.table.place(mark.dataset.place, Number(mark.dataset.distance)) : -1;
      const meant = row >= 0 ? row : this.pointed(event);
      if (meant >= 0) this.told.pressed(meant, row >= 0);
    });
    box.addEventListener('keydown', (event) => {
      if (event.key === '+') this.zoom(this.scale * STEP);
      else if (event.key === '-') this.zoom(this.scale / STEP);
      else if (event.key === '0') this.zoom(1);
      else if (event.altKey || event.ctrlKey || event.metaKey || STEPS[event.key] === undefined) return;
      else this.told.stepped(STEPS[event.key]);
      event.preventDefault();
    });
    box.addEventListener('wheel', (event) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      this.zoom(this.scale * Math.exp(-event.deltaY / 200), event);
    }, { passive: false });
    this.drag();
    this.pinch();
  }

  /** A mouse drags what is larger than its window; a finger does so by itself. */
  drag() {
    const { box } = this;
    box.addEventListener('pointerdown', (event) => {
      this.dragged = false;
      if (event.pointerType !== 'mouse' || event.button !== 0 || this.scale === 1) return;
      this.grip = { x: event.clientX, y: event.clientY, left: box.scrollLeft, top: box.scrollTop };
    });
    addEventListener('pointermove', (event) => {
      if (this.grip === undefined) return;
      const [x, y] = [event.clientX - this.grip.x, event.clientY - this.grip.y];
      if (Math.hypot(x, y) > STILL) this.dragged = true;
      if (this.dragged) box.scrollTo({ left: this.grip.left - x, top: this.grip.top - y, behavior: 'instant' });
    });
    addEventListener('pointerup', () => delete this.grip);
    addEventListener('pointercancel', () => delete this.grip);
  }

  pinch() {
    const apart = ([one, other]) => Math.hypot(one.clientX - other.clientX, one.clientY - other.clientY);
    let begun = null;
    this.box.addEventListener('touchstart', (event) => {
      begun = event.touches.length === 2 ? { apart: apart(event.touches), scale: this.scale } : null;
    }, { passive: true });
    this.box.addEventListener('touchmove', (event) => {
      if (begun === null || event.touches.length !== 2) return;
      event.preventDefault();
      const [one, other] = event.touches;
      const middle = { clientX: (one.clientX + other.clientX) / 2, clientY: (one.clientY + other.clientY) / 2 };
      this.zoom((begun.scale * apart(event.touches)) / begun.apart, middle);
    }, { passive: false });
    this.box.addEventListener('touchend', () => (begun = null), { passive: true });
  }

  /** Makes the drawing so many times as large as its window; what is at a point stays there. */
  zoom(scale, at) {
    const { box } = this;
    const to = Math.min(LARGEST, Math.max(1, scale));
    if (to === this.scale) return;
    const frame = box.getBoundingClientRect();
    const [x, y] = at ? [at.clientX - frame.left, at.clientY - frame.top] : [frame.width / 2, frame.height / 2];
    const drawing = this.svg.getBoundingClientRect();
    const [part, down] = [(x + frame.left - drawing.left) / drawing.width, (y + frame.top - drawing.top) / drawing.height];
    if (this.scale === 1) this.base = drawing.width;
    this.scale = to;
    box.classList.toggle('larger', to > 1);
    this.svg.style.width = to > 1 ? `${to * this.base}px` : '';
    const now = this.svg.getBoundingClientRect();
    box.scrollTo({ left: part * now.width - x, top: down * now.height - y, behavior: 'instant' });
    this.rect = null;
  }

  buttons() {
    const act = { in: () => this.zoom(this.scale * STEP), out: () => this.zoom(this.scale / STEP), fit: () => this.zoom(1) };
    const row = this.box.parentElement.querySelector('.zoom');
    row.hidden = false;
    for (const button of row.querySelectorAll('button')) button.addEventListener('click', act[button.dataset.zoom]);
  }
}
