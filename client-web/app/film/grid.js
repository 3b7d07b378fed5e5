/** Readings as a grid: arrow keys go from cell to cell, Enter changes one in its place. */
import { path, read, send, Trouble } from '../wire/http.js';
import { capital, el, show } from '../parts/elements.js';
import { repHref } from '../parts/reps.js';
import { notice } from '../shell/notices.js';
import { cellField, word } from './cell-field.js';

/** @param {{reps: Array, columns: Array, sort: ?string, onsort: (sort: string) => void}} what */
export function grid({ reps, columns, sort, onsort }) {
  const body = el('tbody', {});
  const rows = [];
  const table = el('table', { class: 'grid', role: 'grid', 'aria-label': 'Readings' }, el('thead', {}, el('tr', { role: 'row' },
    el('th', { scope: 'col', role: 'columnheader' }, 'Rep'), columns.map(column => el('th', { scope: 'col', role: 'columnheader', 'aria-sort': sort === column.name ? 'ascending' : sort === `-${column.name}` ? 'descending' : 'none' },
      el('button', { type: 'button', class: 'plain', title: column.help, onclick: () => onsort(sort === column.name ? `-${column.name}` : column.name) }, capital(column.label)))))), body);
  body.addEventListener('keydown', event => walk(event));

  function add(more) {
    for (const rep of more) {
      if (!sort && rep.game !== rows.at(-1)?.rep.game) body.append(gameLine(rep));
      const row = { rep, line: null };
      row.line = el('tr', { role: 'row' }, el('th', { scope: 'row', role: 'rowheader' }, el('a', { href: repHref(rep) }, rep.rep), sort ? el('span', { class: 'soft small' }, ` ${rep.cells.game ?? ''}`) : null),
        columns.map(column => cell(row, column)));
      rows.push(row);
      body.append(row.line);
    }
    const first = body.querySelector('td[tabindex]');
    if (first && !body.querySelector('td[tabindex="0"]')) first.tabIndex = 0;
  }

  const gameLine = rep => el('tr', { role: 'row', class: 'game' }, el('th', { scope: 'rowgroup', role: 'rowheader', colspan: columns.length + 1 },
    [rep.cells.game ?? rep.game, rep.cells.date, rep.cells.evaluator ? `read by ${rep.cells.evaluator}` : ''].filter(Boolean).join(', ')));

  function cell(row, column) {
    const home = el('td', { role: 'gridcell', tabindex: -1, class: column.kind === 'exchange' ? 'exchange' : null });
    const draw = () => { home.classList.remove('editing'); show(home, text(column, row.rep.cells[column.name] ?? '')); };
    const edit = () => editCell({ home, row, column, draw });
    home.addEventListener('click', () => { if (!home.classList.contains('editing')) edit(); });
    home.addEventListener('keydown', event => {
      if (event.target !== home) return;
      if (event.key === 'Enter' || event.key === 'F2') { event.preventDefault(); edit(); }
    });
    draw();
    return home;
  }

  function walk(event) {
    if (!event.target.matches('td[tabindex]')) return;
    const way = { ArrowLeft: [0, -1], ArrowRight: [0, 1], ArrowUp: [-1, 0], ArrowDown: [1, 0] }[event.key];
    if (!way) return;
    event.preventDefault();
    const line = event.target.parentElement;
    const at = [...line.children].indexOf(event.target);
    const next = rows[rows.findIndex(row => row.line === line) + way[0]]?.line.children[at + way[1]];
    if (next?.matches('td[tabindex]')) settle(next);
  }

  function settle(next) {
    for (const old of body.querySelectorAll('td[tabindex="0"]')) old.tabIndex = -1;
    next.tabIndex = 0;
    next.focus();
  }

  add(reps);
  return { root: el('div', { class: 'grid-home', tabindex: 0, role: 'group', 'aria-label': 'Readings, scrolls' }, table), add };
}

function text(column, value) {
  if (!value) return el('span', { class: 'soft' }, '·');
  if (column.kind === 'exchange') return value.split(' > ').map((step, i) => [i ? ' › ' : '', step.startsWith('[') ? el('span', { class: 'soft' }, `[${word(step.slice(1, -1))}]`) : word(step.replace('@', ', '))]);
  if (column.kind === 'concept' || column.oneOf) return value.split(';').map(one => word(one.trim())).join('; ');
  return value;
}

function editCell({ home, row, column, draw }) {
  const before = row.rep.cells[column.name] ?? '';
  let value = before;
  let over = false;
  const fault = el('span', { class: 'fault', role: 'alert', hidden: true });
  const { root, input } = cellField(column, before, { id: `edit-${row.rep.rep}-${column.name}`, name: column.label, onchange: now => { value = now; } });
  home.classList.add('editing');
  show(home, root, fault);
  input.focus();
  input.select?.();
  const leave = back => { over = true; draw(); if (back) home.focus(); };
  const keep = async back => {
    if (over) return;
    if (value.trim() === before.trim()) { leave(back); return; }
    over = true;
    try {
      await save(row, { ...row.rep.cells, [column.name]: value.trim() }, draw);
      leave(back);
    } catch (refused) {
      if (!(refused instanceof Trouble)) throw refused;
      over = false;
      fault.hidden = false;
      show(fault, refused.problem.faults?.map(one => one.message).join(' ') || refused.message);
      input.focus();
    }
  };
  input.addEventListener('keydown', event => {
    if (event.defaultPrevented) return;
    if (event.key === 'Escape') { event.stopPropagation(); leave(true); }
    if (event.key === 'Enter' && !event.shiftKey) { event.preventDefault(); event.stopPropagation(); keep(true); }
  });
  input.addEventListener('blur', () => setTimeout(() => { if (!home.contains(document.activeElement) && fault.hidden) keep(false); }));
}

async function save(row, cells, draw) {
  const clean = Object.fromEntries(Object.entries(cells).filter(([, value]) => value));
  const { prospect, game, rep, evaluator } = row.rep;
  const at = `/api${path('reps', prospect, game, rep)}`;
  const { body: change } = await send('PUT', at, { parameters: { by: evaluator }, body: { cells: clean }, tag: row.rep.etag });
  if (change.reading) row.rep = change.reading;
  notice(change.said, change.undo ? async () => {
    const { body: undone } = await send('POST', '/api/undo', { parameters: { revision: change.revision } });
    row.rep = undone.reading ?? await read(at, { by: evaluator });
    draw();
    notice(undone.said);
  } : null);
}
