/** Faults of a file beside their rows, each to be mended where it stands. */
import { counted, el, show } from '../parts/elements.js';
import { changed, told } from './csv.js';

const AT_ONCE = 100;

/**
 * @param {{faults: Array, rows: Array, header: string[], onchange: (rows: Array) => void, oncheck: () => void}} what
 */
export function faultTable({ faults, rows, header, onchange, oncheck }) {
  let current = rows;
  const byLine = new Map(rows.map(row => [row.line, row.cells]));
  const names = header.length ? header : rows[0]?.cells ?? [];
  const body = el('tbody', {});
  const set = (fault, value) => { current = changed(current, fault.line, fault.column, value); onchange(current); };

  function line(fault, i) {
    const cells = byLine.get(fault.line) ?? [];
    const at = names.findIndex(name => name.trim() === fault.column);
    const id = `fault-${i}`;
    const editable = fault.line > 1 && at >= 0 && byLine.has(fault.line);
    const input = editable ? el('input', { id, class: 'cell-input', value: cells[at] ?? '', 'aria-label': `${fault.column} in line ${fault.line}`, 'aria-describedby': `${id}-why`,
      onchange: event => set(fault, event.target.value), onkeydown: event => { if (event.key === 'Enter') { event.preventDefault(); set(fault, input.value); oncheck(); } } }) : null;
    const take = near => { input.value = replacement(input.value, fault.value, near); set(fault, input.value); input.focus(); };
    return el('tr', {},
      el('td', {}, fault.line ? `Line ${fault.line}` : 'The file'),
      el('td', {}, fault.column),
      el('td', {}, input ?? el('span', {}, fault.value)),
      el('td', {}, el('div', { id: `${id}-why` }, fault.message),
        input && fault.nearest.length ? el('div', { class: 'nearest' }, fault.nearest.map(near => el('button', { type: 'button', onclick: () => take(near) }, near))) : null,
        cells.length ? el('details', { class: 'whole-row' }, el('summary', {}, 'The row'), told(names, cells)) : null));
  }

  const more = el('p', {});
  const grow = from => {
    body.append(...faults.slice(from, from + AT_ONCE).map((fault, i) => line(fault, from + i)));
    const left = faults.length - from - AT_ONCE;
    show(more, left > 0 ? el('button', { type: 'button', onclick: () => grow(from + AT_ONCE) }, `${counted(left, 'more fault')}`) : null);
  };
  grow(0);
  return el('div', {}, el('table', { class: 'faults' }, el('caption', { class: 'hidden-text' }, 'Faults of the file'), el('thead', {}, el('tr', {}, ['Where', 'Column', 'What stands there', 'What is wrong'].map(head => el('th', { scope: 'col' }, head)))), body), more);
}

/** The cell with the faulty value replaced: in a list or an exchange only that part. */
export function replacement(cell, value, near) {
  const at = value ? cell.toLowerCase().indexOf(value.toLowerCase()) : -1;
  return at >= 0 ? cell.slice(0, at) + near + cell.slice(at + value.length) : near;
}
