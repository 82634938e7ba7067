// The drawings of a report come alive: what stands beside them is shown, and one cursor runs through
// them. Without this they are what they are on paper.

import { Cursor } from './line-cursor.js';

const section = document.querySelector('#line');
const table = document.querySelector('#line-table');

if (section && table) {
  section.querySelector('.sides').parentElement.classList.add('views');
  new Cursor(section, table.textContent).begin();
}
