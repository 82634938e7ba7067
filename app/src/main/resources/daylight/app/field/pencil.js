// The pencil sheet as it is typed: what is typed stays in this browser until the archive has it, and
// Enter goes on to the next row. Everything else is the form's own doing.

const name = (visit) => `daylight-pencil-${visit}`;
const main = document.querySelector('main');
const at = (id) => document.getElementById(id);
let sending = false;

/** What the form has now, in its order. */
const typed = (form) => [...new FormData(form)].filter(([key]) => key !== 'token').map(([key, value]) => [key, String(value)]);

// Without a store, as in some private windows, the page itself still holds what was typed.
function keep(form) {
  try {
    localStorage.setItem(name(form.dataset.visit), JSON.stringify(typed(form)));
  } catch (full) {
    say('unsent', form.dataset.unsent.replace('{0}', `${full.message ?? full}.`));
  }
}

function held(visit) {
  try {
    return JSON.parse(localStorage.getItem(name(visit)));
  } catch (unreadable) {
    return null;
  }
}

function forget(visit) {
  try {
    localStorage.removeItem(name(visit));
  } catch (none) {
    // Where nothing can be stored, nothing is.
  }
}

function say(state, text) {
  const line = at('pencil-state');
  line.className = `sending ${state}`;
  line.textContent = text;
}

/** Sends fields as the form would; the answer takes the place of the page. */
async function send(form, fields) {
  if (sending) {
    return false;
  }
  sending = true;
  say('', form.dataset.sending);
  try {
    const body = new URLSearchParams([['token', form.elements.token.value], ...fields]);
    const reply = await fetch(form.action, { method: 'POST', body });
    const html = new DOMParser().parseFromString(await reply.text(), 'text/html');
    if (reply.redirected && html.querySelector('#pencil') === null) {
      forget(form.dataset.visit);
      location.assign(reply.url);
      return true;
    }
    const fresh = html.querySelector('#pencil');
    if (fresh === null) {
      throw new Error(html.body.textContent.trim().slice(0, 300) || String(reply.status));
    }
    main.replaceChildren(...html.querySelector('main').children);
    begin();
    keep(at('pencil'));
    const trouble = main.querySelector('.trouble');
    trouble?.setAttribute('tabindex', '-1');
    trouble?.focus();
    return true;
  } catch (unsent) {
    say('unsent', form.dataset.unsent.replace('{0}', `${unsent.message}.`));
    return false;
  } finally {
    sending = false;
  }
}

/** A letter of the paper becomes the name that it stands for, so that it can be read over. */
function spelled(field) {
  const letter = field.value.trim().toLowerCase();
  const option = letter && document.querySelector(`#kinds option[data-letter="${CSS.escape(letter)}"]`);
  if (option) {
    field.value = option.value;
  }
}

/** The first cell of the next row; behind the last one the button. */
function next(field) {
  const row = field.closest('tr');
  const rows = [...main.querySelectorAll('tr[data-row]')];
  const to = rows[rows.indexOf(row) + 1];
  (to?.querySelector('[data-column]') ?? at('keep')).focus();
}

function begin() {
  const form = at('pencil');
  form.addEventListener('change', (event) => {
    if (event.target.dataset.column === 'kind' && event.target.list) {
      spelled(event.target);
    }
    keep(form);
  });
  form.addEventListener('input', () => keep(form));
  form.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' || event.target.tagName !== 'INPUT') {
      return;
    }
    event.preventDefault();
    if (event.target.dataset.column) {
      event.target.dispatchEvent(new Event('change', { bubbles: true }));
      next(event.target);
    } else {
      const fields = [...form.querySelectorAll('input:not([type=hidden]), select, button')];
      fields[fields.indexOf(event.target) + 1]?.focus();
    }
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const pressed = event.submitter;
    send(form, [...typed(form), ...(pressed?.name ? [[pressed.name, pressed.value]] : [])]);
  });
}

/** What was typed before and never kept stands there again, with its identities. */
async function again(form) {
  const before = held(form.dataset.visit);
  if (before === null || !before.some(([key, value]) => value !== '' && /^([pwm]\d+-(?!id$)|end-cable)/.test(key))) {
    return;
  }
  const { again: told, anew } = form.dataset;
  if (await send(form, [...before, ['show', 'yes']])) {
    say('', told);
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'button second';
    button.textContent = anew;
    button.addEventListener('click', () => {
      forget(form.dataset.visit);
      location.reload();
    });
    at('pencil-state').after(button);
  }
}

const kept = document.querySelector('[data-kept-visit]');
if (kept) {
  forget(kept.dataset.keptVisit);
}
const print = at('print');
if (print) {
  print.hidden = false;
  print.addEventListener('click', () => window.print());
}
const form = at('pencil');
if (form) {
  begin();
  if (form.dataset.fresh === 'true') {
    await again(form);
  }
  at('pencil').dataset.ready = 'yes';
}
