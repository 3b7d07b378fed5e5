/** The film log: every reading as a row, filtered and mended in place. */
import { columns } from '../wire/book.js';
import { path, read } from '../wire/http.js';
import { labelsReady } from '../wire/labels.js';
import { capital, choice, counted, el, field, show } from '../parts/elements.js';
import { pageKeys } from '../shell/keys.js';
import { cellField, word } from './cell-field.js';
import { grid } from './grid.js';

const FIRST = 100;
const SHOWN = ['quarter', 'clock', 'phase', 'alignment', 'blocker', 'exchange', 'result', 'faults', 'results', 'assignment'];

export async function mount(page, context) {
  const { parameters: { prospect }, query, signal } = context;
  if (!prospect) return logs(page, context);
  const filter = { prospect, game: query.get('game'), evaluator: query.get('evaluator'), q: query.get('q'), where: query.getAll('where'), sort: query.get('sort') };
  const [who, { columns: known }, found] = await Promise.all([
    read(`/api${path('prospects', prospect)}`, {}, { signal }), columns(), read('/api/reps', { ...filter, limit: FIRST }, { signal }), labelsReady()]);
  context.title(`Film of ${who.name}`);
  pageKeys('Film log', [['Arrow keys', 'from cell to cell'], ['Enter', 'change the cell; Enter again keeps it, Esc does not'], ['o', 'open the sheet of the row', 'o', () => document.activeElement?.closest('tr')?.querySelector('a')?.click()], ['Ctrl + Z', 'undo the change']]);
  const shown = (query.get('columns')?.split(',') ?? SHOWN).filter(name => known.some(column => column.name === name));
  const go = changes => context.open(address(prospect, { ...filter, columns: query.get('columns'), ...changes }));
  const table = grid({ reps: found.reps, columns: shown.map(name => known.find(column => column.name === name)), sort: filter.sort, onsort: sort => go({ sort }) });
  const more = el('div', { class: 'controls' });
  const grow = have => show(more, have < found.total ? el('button', { type: 'button', onclick: async () => {
    const next = await read('/api/reps', { ...filter, limit: FIRST, offset: have });
    table.add(next.reps);
    grow(have + next.reps.length);
  } }, `More of ${counted(found.total, 'row')}`) : null);
  grow(found.reps.length);
  page.append(
    el('h1', {}, 'Film of ', el('a', { href: path('prospect', who.id) }, who.name)),
    el('p', { class: 'lead' }, `${counted(found.total, 'reading')}${filtered(filter) ? ' fit the filter' : ''}.`, el('span', { class: 'writes' }, ' Any cell can be changed where it stands.')),
    filters(who, filter, known, go), columnsChoice(known, shown, go),
    found.reps.length ? table.root : el('p', {}, 'No reading fits. ', el('a', { href: path('film', prospect) }, 'Show all')), more);
}

const filtered = ({ game, evaluator, q, where }) => Boolean(game || evaluator || q || where.length);

function address(prospect, filter) {
  const query = new URLSearchParams();
  for (const name of ['game', 'evaluator', 'q', 'sort', 'columns']) if (filter[name]) query.set(name, filter[name]);
  for (const one of filter.where) query.append('where', one);
  return `${path('film', prospect)}${query.size ? `?${query}` : ''}`;
}

function filters(who, filter, known, go) {
  const evaluators = [...new Map(who.logs.map(log => [log.evaluator.id, log.evaluator.name]))];
  const words = el('input', { id: 'filter-words', value: filter.q ?? '', type: 'search' });
  const game = filter.game ? who.games.find(one => one.id === filter.game) : null;
  return el('form', { class: 'controls', onsubmit: event => { event.preventDefault(); go({ q: words.value }); } },
    el('div', { class: 'row filters' },
      field('Game', choice('filter-game', [['', 'all games'], ...who.games.map(one => [one.id, one.name])], filter.game, value => go({ game: value }))),
      evaluators.length > 1 ? field('Read by', choice('filter-evaluator', [['', 'everybody'], ...evaluators], filter.evaluator, value => go({ evaluator: value }))) : null,
      field('Words in any cell', words), condition(known, filter, go),
      el('p', { class: 'links writes' }, el('a', { class: 'button', href: `${path('rep', who.id)}${game ? `?game=${encodeURIComponent(game.id)}` : ''}` }, 'New rep'))),
    filter.where.length ? el('ul', { class: 'chips' }, filter.where.map(one => el('li', {}, el('button', { type: 'button', class: 'chip', onclick: () => go({ where: filter.where.filter(other => other !== one) }) },
      one.split(':').map(word).join(': '), el('span', { 'aria-hidden': 'true' }, '×'), el('span', { class: 'hidden-text' }, 'take this filter away'))))) : null);
}

/** Only rows in which a column holds a value. */
function condition(known, filter, go) {
  const asked = known.filter(column => ['concept', 'words', 'exchange'].includes(column.kind) || column.oneOf);
  const home = el('div', {});
  const draw = name => {
    const column = asked.find(one => one.name === name);
    if (!column) return show(home);
    let value = '';
    const take = () => { if (value.trim()) go({ where: [...filter.where, `${column.name}:${value.trim()}`] }); };
    const { root, input } = cellField({ ...column, list: false }, '', { id: 'filter-value', name: `${column.label} is`, onchange: now => { value = now; if (input?.tagName === 'SELECT') take(); } });
    input.addEventListener('keydown', event => { if (event.key === 'Enter' && input.getAttribute('aria-expanded') !== 'true') { event.preventDefault(); take(); } });
    show(home, field('is', root, { id: 'filter-value' }));
    input.focus();
    return null;
  };
  return [field('Only where', choice('filter-column', [['', 'any column'], ...asked.map(one => [one.name, capital(one.label)])], '', draw)), home];
}

function columnsChoice(known, shown, go) {
  const offered = known.filter(column => !['rep', 'prospect', 'game', 'date', 'level', 'opponent', 'evaluator'].includes(column.name));
  const toggle = name => go({ columns: offered.map(column => column.name).filter(one => shown.includes(one) !== (one === name)).join(',') });
  return el('details', { class: 'controls' }, el('summary', {}, `Columns: ${shown.length} of ${offered.length}`),
    el('div', { class: 'columns' }, offered.map(column => el('label', {}, el('input', { type: 'checkbox', checked: shown.includes(column.name), onchange: () => toggle(column.name) }), capital(column.label)))));
}

async function logs(page, context) {
  const { logs: all } = await read('/api/logs', {}, context);
  context.title('Film');
  const byMan = new Map();
  for (const log of all) byMan.set(log.prospect.id, [...(byMan.get(log.prospect.id) ?? []), log]);
  page.append(el('h1', {}, 'Film log'),
    el('p', { class: 'lead' }, all.length ? `${counted(sum(all), 'reading')} in ${counted(all.length, 'log')}. A log is what one evaluator read of one player in one game.` : 'No film yet.'),
    el('p', { class: 'row controls' }, el('a', { class: 'button writes', href: '/rep' }, 'New rep'), el('a', { class: 'button writes', href: '/import' }, 'Import a CSV'), all.length ? el('a', { class: 'button', href: '/api/export', download: 'film.csv' }, 'Export all as CSV') : null),
    el('ul', { class: 'bare logs' }, [...byMan].map(([id, ones]) => el('li', {},
      el('div', { class: 'player' }, el('strong', {}, el('a', { href: path('film', id) }, ones[0].prospect.name)), el('span', { class: 'soft' }, `${counted(sum(ones), 'reading')} in ${counted(ones.length, 'log')}`)),
      el('details', {}, el('summary', {}, `Logs of ${ones[0].prospect.name}`), el('ul', {}, ones.map(log => logLine(id, log))))))));
}

const sum = logs => logs.reduce((total, log) => total + log.readings, 0);

const logLine = (id, log) => el('li', {},
  el('a', { href: `${path('film', id)}?game=${encodeURIComponent(log.game.id)}&evaluator=${encodeURIComponent(log.evaluator.id)}` }, log.game.name),
  ` ${[log.game.date, counted(log.readings, 'reading'), `read by ${log.evaluator.name}`].filter(Boolean).join(', ')} `, log.file ? el('span', { class: 'soft' }, `from ${log.file}`) : null);
