/** Two to four prospects side by side. */
import { path, read } from '../wire/http.js';
import { findings } from '../wire/book.js';
import { label, labelsReady } from '../wire/labels.js';
import { combobox } from '../parts/combobox.js';
import { capital, counted, el, field, listed, percent, scroller } from '../parts/elements.js';
import { intervalBar } from '../parts/interval.js';
import { tally, verdictMark } from '../parts/verdict.js';
import { honest, kinds } from './compare-state.js';

const MOST = 4;

export async function mount(page, context) {
  const ids = [...new Set(context.query.getAll('id'))].slice(0, MOST);
  const [{ prospects }, book] = await Promise.all([read('/api/prospects', {}, context), findings(), labelsReady()]);
  const found = ids.length > 1 ? await read('/api/compare', { id: ids }, context) : null;
  const names = ids.map(id => prospects.find(one => one.id === id)?.name ?? id);
  context.title(names.length ? names.join(', ') : 'Compare');
  page.append(el('h1', {}, names.length > 1 ? `${listed(names)}, side by side` : 'Compare'),
    el('p', { class: 'lead' }, lead(found)), chooser(prospects, ids, context.open));
  if (found) page.append(head(found), ...kinds(found.findings).map(([title, rows]) => section(title, rows, found, book)), el('p', { class: 'soft' }, honest(found.comparisons)), moves(found));
}

function lead(found) {
  if (!found) return 'Name two to four players, and see where the tape tells them apart, and how far.';
  const apart = found.findings.filter(one => one.apart);
  return apart.length ? `The tape tells them apart in ${listed(apart.slice(0, 5).map(one => label(one.finding)))}${apart.length > 5 ? ` and ${apart.length - 5} more` : ''}.`
    : 'By this tape nobody can tell them apart for sure.';
}

function chooser(prospects, ids, open) {
  const go = next => open(`/compare?${new URLSearchParams(next.map(id => ['id', id]))}`);
  const rest = prospects.filter(one => !ids.includes(one.id));
  const { root } = combobox({ attributes: { id: 'add-player', placeholder: 'name' }, eager: true, says: 'Players',
    complete: async typed => rest.filter(one => one.name.toLowerCase().includes(typed.trim().toLowerCase())).slice(0, 10).map(one => ({ value: one.name, label: one.name, gloss: `${one.reps} reps` })),
    onpick: option => { if (option) go([...ids, rest.find(one => one.name === option.value).id]); } });
  return el('div', { class: 'who controls' }, ids.length < MOST ? field(ids.length ? 'Add a player' : 'First player', root, { id: 'add-player' }) : null,
    el('ul', { class: 'chips' }, ids.map(id => el('li', {}, el('button', { type: 'button', class: 'chip', onclick: () => go(ids.filter(one => one !== id)) }, prospects.find(one => one.id === id)?.name ?? id, el('span', { 'aria-hidden': 'true' }, '×'), el('span', { class: 'hidden-text' }, ', remove'))))));
}

const heads = ({ prospects }) => prospects.map(one => el('th', { scope: 'col' }, el('a', { href: path('prospect', one.id) }, one.name)));

function head(found) {
  const row = (name, value) => el('tr', {}, el('th', { scope: 'row' }, name), found.prospects.map(one => el('td', { 'data-who': one.name }, value(one) || '–')));
  return scroller('Who they are', el('table', { class: 'board compare' }, el('caption', { class: 'hidden-text' }, 'Who they are'),
    el('thead', {}, el('tr', {}, el('td', {}), heads(found))),
    el('tbody', {}, row('School', one => one.team), row('Position', one => one.position), row('Class', one => one.classYear), row('Tape', one => `${counted(one.reps, 'rep')}, ${counted(one.games, 'game')}`),
      row('Main rush', one => (one.primary ? `${label(one.primary.move)}, ${percent(one.primary.share)}` : 'none')))));
}

function section(title, rows, found, book) {
  const table = some => scroller(title, el('table', { class: 'board compare' }, el('caption', { class: 'hidden-text' }, title),
    el('thead', {}, el('tr', {}, el('th', { scope: 'col' }, 'Finding'), heads(found))),
    el('tbody', {}, some.map(row => el('tr', {},
      el('th', { scope: 'row' }, el('a', { href: path('technique', row.finding) }, capital(label(row.finding))),
        row.differences.filter(one => row.differences.length === 1 || one.standing === row.standing).map(one => el('p', { class: 'small soft' }, one.sentence)),
        row.whyNot ? el('p', { class: 'small soft' }, row.whyNot) : null),
      row.cells.map((cell, i) => el('td', { 'data-who': found.prospects[i].name }, cellOf(cell, row, found.prospects[i], book))))))));
  return el('section', {}, el('h2', {}, title), table(rows));
}

function cellOf(cell, row, who, book) {
  const count = tally(cell);
  if (!cell.opportunities) return cell.unknownDuties ? el('a', { class: 'soft', href: `${path('prospect', who.id)}#${row.finding}` }, count) : el('span', { class: 'soft' }, count);
  return [el('a', { href: `${path('prospect', who.id)}#${row.finding}` }, verdictMark(cell.verdict, row.polarity)), el('div', {}, count),
    intervalBar({ ...cell, measure: book.get(row.finding)?.measure })];
}

function moves(found) {
  if (!found.moves.length) return '';
  return el('section', {}, el('h2', {}, 'What they open with'), scroller('What they open with', el('table', { class: 'board compare' }, el('caption', { class: 'hidden-text' }, 'First moves'),
    el('thead', {}, el('tr', {}, el('th', { scope: 'col' }, 'First move'), heads(found))),
    el('tbody', {}, found.moves.slice(0, 12).map(row => el('tr', {}, el('th', { scope: 'row' }, capital(label(row.move))),
      row.cells.map((cell, i) => el('td', { 'data-who': found.prospects[i].name }, cell.reps ? `${percent(cell.share)}, ${counted(cell.reps, 'rep')}, ${cell.won} won` : el('span', { class: 'soft' }, 'never')))))))));
}
