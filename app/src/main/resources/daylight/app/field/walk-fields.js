// The fields of the page: what stands in them as a book writes it, and back. Every length is written
// with its unit, as it was read off the tape; nothing is converted.

const figure = (text) => text.trim().replace(',', '.').replace('−', '-');
const NUMBER = /^\d+(\.\d+)?$|^\.\d+$/;

export class Lengths {
  constructor(root) {
    this.fields = new Map();
    for (const box of root.querySelectorAll('.length')) {
      this.fields.set(box.dataset.key, box);
      box.querySelector('.sign')?.addEventListener('click', ({ currentTarget }) => {
        this.#sign(box, currentTarget.getAttribute('aria-pressed') !== 'true');
        box.dispatchEvent(new Event('change', { bubbles: true }));
      });
    }
  }

  #sign(box, minus) {
    const sign = box.querySelector('.sign');
    if (sign) {
      sign.setAttribute('aria-pressed', String(minus));
      sign.textContent = minus ? '−' : '+';
    }
  }

  /** {text} as a book writes it, {text: null} for nothing, {wrong: true} for what is no number. */
  read(key) {
    const box = this.fields.get(key);
    const main = figure(box.querySelector('[data-part=main]').value);
    const inches = figure(box.querySelector('[data-part=inches]')?.value ?? '');
    const bad = (text) => text !== '' && !NUMBER.test(text);
    if (bad(main) || bad(inches) || Number(inches) >= 12) return { wrong: true };
    if (main === '' && inches === '') return { text: null };
    const minus = box.querySelector('.sign')?.getAttribute('aria-pressed') === 'true' ? '-' : '';
    if (inches === '') return { text: `${minus}${whole(main)} ${box.dataset.unit}` };
    if (main.includes('.')) return { wrong: true };
    return { text: main === '' || Number(main) === 0
      ? `${minus}${whole(inches)} in` : `${minus}${main}' ${whole(inches)}"` };
  }

  /** Shows what a book says; what these fields cannot show stays as it is written. */
  show(key, text) {
    const box = this.fields.get(key);
    const unit = box.dataset.unit;
    const [main, inches] = [box.querySelector('[data-part=main]'), box.querySelector('[data-part=inches]')];
    const said = String(text ?? '').trim().replace('−', '-');
    const minus = said.startsWith('-');
    const bare = minus ? said.slice(1) : said;
    this.#sign(box, minus);
    main.value = '';
    if (inches) inches.value = '';
    const feet = bare.match(/^(\d+)'\s*(\d+(?:\.\d+)?)"$/);
    const one = bare.match(/^(\d+(?:\.\d+)?)\s*([a-z]*)$/);
    if (feet && inches) {
      [main.value, inches.value] = [feet[1], feet[2]];
    } else if (one && (one[2] === '' || one[2] === unit)) {
      main.value = one[1];
    } else if (one && one[2] === 'in' && inches) {
      inches.value = one[1];
    } else {
      return bare === '';
    }
    return true;
  }
}

/** A number that begins with its point gets its nought. */
const whole = (text) => (text.startsWith('.') ? `0${text}` : text);

/** A time of day with its offset from UTC, as this phone has it. */
export function moment(now = new Date()) {
  const two = (number) => String(Math.trunc(Math.abs(number))).padStart(2, '0');
  const offset = -now.getTimezoneOffset();
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}` +
    `T${two(now.getHours())}:${two(now.getMinutes())}:${two(now.getSeconds())}` +
    `${offset < 0 ? '-' : '+'}${two(offset / 60)}:${two(offset % 60)}`;
}

/** A label of that beginning that no point of the book has; the one wanted, where it is free. */
export function free(queue, wanted) {
  const taken = new Set(
    ['landmarks', 'nodes', 'locates', 'exposures'].flatMap((section) =>
      queue.all(section).map((one) => one.keys.label)));
  const start = wanted.replace(/\d+$/, '');
  let number = 1;
  for (const label of taken) {
    if (label?.startsWith(start) && /^\d+$/.test(label.slice(start.length))) {
      number = Math.max(number, Number(label.slice(start.length)) + 1);
    }
  }
  return start + number;
}

/** A letter for a landmark, in the order of the alphabet; then letters with numbers. */
export function letter(queue) {
  const taken = new Set(
    ['landmarks', 'nodes', 'locates', 'exposures'].flatMap((section) =>
      queue.all(section).map((one) => one.keys.label)));
  return 'ABDEFGHIJKMNQSTUVWYZ'.split('').find((one) => !taken.has(one)) ?? free(queue, 'A');
}
