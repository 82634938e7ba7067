// The table of what was seen, sifted and put in order. Nothing is asked of the server: every row
// says what it is, how soon something is to be done about it, and where it stands along the drain.

const box = document.querySelector('.sift');
if (box) sift(box);

function sift(controls) {
  const body = document.querySelector('.log tbody');
  const rows = [...body.rows];
  const part = (name) => controls.querySelector(`[name=${name}]`);
  const [order, show, text] = ['order', 'show', 'holding'].map(part);
  const told = controls.querySelector('.told');
  const plain = (words) => words.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const words = new Map(rows.map((row) => [row, plain(row.textContent)]));

  const wanted = (row) => {
    const [what, value] = show.value.split(':');
    return (what === '' || row.dataset[what] === value) && words.get(row).includes(plain(text.value.trim()));
  };
  const rank = (row) => Number(row.dataset.rank);

  function again() {
    // Sorting keeps the order along the drain among what is equally urgent.
    const ordered = order.value === 'rank' ? [...rows].sort((a, b) => rank(a) - rank(b)) : rows;
    body.append(...ordered);
    for (const row of rows) row.hidden = !wanted(row);
    const left = rows.filter((row) => !row.hidden).length;
    told.textContent = controls.dataset.told.replace('{0}', left).replace('{1}', rows.length);
  }

  /** Whoever is led to a row is shown it. */
  function led() {
    const row = rows.find((one) => location.hash === `#${one.id}`);
    if (!row?.hidden) return;
    show.value = '';
    text.value = '';
    again();
    row.scrollIntoView();
  }

  for (const one of [order, show]) one.addEventListener('change', again);
  text.addEventListener('input', again);
  window.addEventListener('hashchange', led);
  controls.hidden = false;
  again();
  led();
}
