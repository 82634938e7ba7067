// The shapes that the card of a push is made of.

/** An element with attributes; functions are what it does on an event. */
export function h(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (typeof value === 'function') {
      element.addEventListener(key, value);
    } else if (value !== null && value !== false) {
      element.setAttribute(key, value === true ? '' : value);
    }
  }
  element.append(...children.filter((child) => child !== null));
  return element;
}

const SVG = 'http://www.w3.org/2000/svg';

function s(name, attributes, text = '') {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) {
    element.setAttribute(key, value);
  }
  element.textContent = text;
  return element;
}

const point = (r, hour) => {
  const angle = ((hour - 3) * Math.PI) / 6;
  return `${(r * Math.cos(angle)).toFixed(2)} ${(r * Math.sin(angle)).toFixed(2)}`;
};

/** The hours of a text such as 5, 9:30 or 9-3, clockwise; none where it says no hour. */
export function hours(text) {
  const found = /^\s*(\d{1,2})(?::\d\d)?\s*(?:-\s*(\d{1,2})(?::\d\d)?)?\s*$/.exec(text ?? '');
  if (found === null) {
    return [];
  }
  const from = Number(found[1]) % 12 || 12;
  const to = found[2] === undefined ? from : Number(found[2]) % 12 || 12;
  const all = [from];
  while (all.at(-1) !== to && all.length < 12) {
    all.push((all.at(-1) % 12) + 1);
  }
  return all;
}

/** A pipe seen from the camera: twelve is up; touch an hour, or draw from one to another. */
export function ring(value, label, chosen) {
  const lit = hours(value);
  const svg = s('svg', {
    viewBox: '-100 -100 200 200',
    class: 'ring',
    role: 'slider',
    tabindex: '0',
    'aria-label': label,
    'aria-valuemin': '1',
    'aria-valuemax': '12',
    'aria-valuenow': String(lit[0] ?? 12),
    'aria-valuetext': value ?? '–',
    'data-focus': 'ring',
  });
  for (let hour = 1; hour <= 12; hour++) {
    const d = `M${point(52, hour - 0.5)}L${point(97, hour - 0.5)}A97 97 0 0 1 ${point(97, hour + 0.5)}L${point(52, hour + 0.5)}A52 52 0 0 0 ${point(52, hour - 0.5)}Z`;
    svg.append(s('path', { d, 'data-hour': String(hour), class: lit.includes(hour) ? 'lit' : '' }));
    const [x, y] = point(75, hour).split(' ');
    svg.append(s('text', { x, y, class: lit.includes(hour) ? 'lit' : '' }, String(hour)));
  }
  svg.append(s('text', { x: '0', y: '0', class: 'now' }, value ?? '–'));
  const at = (event) => {
    const box = svg.getBoundingClientRect();
    const x = event.clientX - box.left - box.width / 2;
    const y = event.clientY - box.top - box.height / 2;
    return Math.round(Math.atan2(x, -y) / (Math.PI / 6) + 12) % 12 || 12;
  };
  let from = null;
  svg.addEventListener('pointerdown', (event) => {
    svg.setPointerCapture(event.pointerId);
    from = at(event);
  });
  svg.addEventListener('pointerup', (event) => {
    if (from !== null) {
      const to = at(event);
      chosen(from === to ? String(to) : `${from}-${to}`);
      from = null;
    }
  });
  svg.addEventListener('keydown', (event) => {
    const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    if (by !== undefined) {
      event.preventDefault();
      event.stopPropagation();
      const now = lit.length === 0 ? (by > 0 ? 11 : 1) : lit[0];
      chosen(String(((now + by + 11) % 12) + 1));
    }
  });
  return svg;
}

/** What may be touched for a quantity of that kind, beside typing it. */
export function steps(dimension, unit) {
  const some = {
    share: ['5 %', '10 %', '25 %', '50 %', '75 %', '100 %'],
    angle: ['11°', '22°', '30°', '45°', '90°'],
    count: ['1', '2', '3', '5'],
    duration: ['5 min', '15 min', '30 min', '60 min'],
  };
  const lengths = {
    ft: ['1/4 in', '1/2 in', '1 in', '2 in', '3 in', '4 in'],
    m: ['5 mm', '10 mm', '20 mm', '50 mm', '75 mm', '100 mm'],
  };
  return some[dimension] ?? (dimension === 'length' ? lengths[unit] : []);
}

/** A line of values to touch and a field to type another into. */
export function values(name, says, value, offered, chosen) {
  const id = `part-${name}`;
  const field = h('input', {
    id,
    type: 'text',
    value: value ?? '',
    autocomplete: 'off',
    'data-focus': id,
    change: (event) => chosen(event.target.value.trim() || null),
  });
  const chips = offered.map(([what, text]) =>
    h(
      'button',
      {
        type: 'button',
        class: 'chip',
        'aria-pressed': String(what === value),
        'data-focus': `${id}-${what}`,
        click: () => chosen(what === value ? null : what),
      },
      text,
    ),
  );
  return h('div', { class: 'part' }, h('label', { for: id }, says), field, h('div', { class: 'chips' }, ...chips));
}
