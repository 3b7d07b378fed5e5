/** Somebody changed the rep meanwhile: both versions, and a choice. */
import { el } from '../parts/elements.js';
import { differing } from './sheet-state.js';

/** @param {{mine: Object, theirs: Object, columns: Array, keep: () => void, take: () => void}} what */
export function conflict({ mine, theirs, columns, keep, take }) {
  const names = new Map(columns.map(column => [column.name, column.label]));
  return el('div', { class: 'trouble' },
    el('p', {}, el('strong', {}, 'Somebody changed this rep while you wrote.'), ' Nothing of yours is lost: choose which stands.'),
    el('div', { class: 'scroller', tabindex: 0, role: 'group', 'aria-label': 'Both versions' }, el('table', { class: 'versions' },
      el('thead', {}, el('tr', {}, ['', 'Yours', 'Stored now'].map(head => el('th', { scope: 'col' }, head)))),
      el('tbody', {}, differing(mine, theirs.cells).map(name => el('tr', {}, el('th', { scope: 'row' }, names.get(name) ?? name), el('td', {}, mine[name] ?? '–'), el('td', {}, theirs.cells[name] ?? '–')))))),
    el('p', { class: 'row' }, el('button', { type: 'button', onclick: keep }, 'Keep mine'), el('button', { type: 'button', onclick: take }, 'Take what is stored')));
}
