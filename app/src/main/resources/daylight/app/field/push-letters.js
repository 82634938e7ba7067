// The push by keyboard: figures go into the distance, letters are keys where somebody wants them so.

import { page } from './push.js';

const { find, board, distance, nudge } = page;
const box = document.querySelector('#letters');
const name = 'daylight-letters';
const large = [...board.querySelectorAll('[aria-label] > .key[data-kind]')];
const fixed = { m: 'more', u: 'undo', x: 'ended', t: 'later', p: 'pulling', v: 'voice', s: 'stop' };
const letters = new Map();

large.forEach((button, i) => letters.set('abcdefghijkl'[i], button));
Object.entries(fixed).forEach(([letter, act]) => letters.set(letter, find(`[data-act=${act}]`)));

function label() {
  for (const [letter, button] of letters) {
    if (box.checked) {
      button.dataset.letter = letter.toUpperCase();
      button.setAttribute('aria-keyshortcuts', letter.toUpperCase());
    } else {
      delete button.dataset.letter;
      button.removeAttribute('aria-keyshortcuts');
    }
  }
}

const stored = localStorage.getItem(name);
box.checked = stored === null ? matchMedia('(hover: hover) and (pointer: fine)').matches : stored === 'yes';
label();
box.addEventListener('change', () => {
  localStorage.setItem(name, box.checked ? 'yes' : 'no');
  label();
});

document.addEventListener('keydown', (event) => {
  const typing = event.target.closest('input:not([type=checkbox]), textarea, select');
  if (event.ctrlKey || event.altKey || event.metaKey) {
    return;
  }
  if (typing === distance && event.key === 'Enter') {
    distance.blur();
  } else if (!typing && box.checked) {
    const by = { '+': 1, '-': -1, ArrowUp: 0.1, ArrowDown: -0.1 }[event.key];
    if (/^[\d.,]$/.test(event.key)) {
      distance.value = '';
      distance.focus();
    } else if (by !== undefined && event.target.closest('.ring') === null) {
      event.preventDefault();
      nudge(by);
    } else {
      letters.get(event.key)?.click();
    }
  }
});

board.dataset.ready = 'yes';
