/** Everybody, with the findings one chooses. */
import { findings } from '../wire/book.js';
import { path, read } from '../wire/http.js';
import { label, labelsReady } from '../wire/labels.js';
import { combobox } from '../parts/combobox.js';
import { capital, counted, el, field, percent, scroller } from '../parts/elements.js';
import { disc, tally, verdictWord } from '../parts/verdict.js';
import { pageKeys } from '../shell/keys.js';
import { FIXED, pressed, sorted } from './board-state.js';

const AT_FIRST = ['no-inside-counter', 'primary-without-counter', 'surrenders-edge-to-pullers', 'wrong-arms-reliably', 'sets-the-edge-consistently', 'late-to-recognize-blocks'];

export async function mount(page, context) {
  const { query, open } = context;
  const [book] = await Promise.all([findings(), labelsReady()]);
  const chosen = query.has('finding') ? query.getAll('finding').filter(Boolean) : AT_FIRST.filter(slug => book.has(slug));
  const sort = query.get('sort') ?? 'name';
  const { prospects } = await read('/api/board', { finding: chosen }, context);
  context.title('Board');
  pageKeys('Board', [['Tab, Enter', 'on a heading: sort by it']]);
  const go = changes => {
    const next = { chosen, sort, ...changes };
    const address = new URLSearchParams();
    for (const one of next.chosen.length ? next.chosen : ['']) address.append('finding', one);
    if (next.sort !== 'name') address.set('sort', next.sort);
    open(`/board?${address}`);
  };
  page.append(el('h1', {}, 'Board'),
    el('p', { class: 'lead' }, prospects.length ? `${counted(prospects.length, 'player')}, each with the findings you choose. A mark fills as the tape does.` : 'No film yet.'),
    chooser(book, chosen, go));
  if (prospects.length) page.append(scroller('Board', table(sorted(prospects, sort, label), chosen, { sort, book, go })), legend());
}

function chooser(book, chosen, go) {
  const others = [...book.values()].filter(one => !chosen.includes(one.finding) && one.measure !== 'note');
  const words = text => text.trim().toLowerCase();
  const { root } = combobox({ attributes: { id: 'add-finding', placeholder: 'such as counter, edge, hands' }, eager: true, says: 'Findings', none: 'No finding is called like that.',
    complete: async typed => others.filter(one => words(one.label).includes(words(typed))).slice(0, 12).map(one => ({ value: one.finding, label: capital(one.label), gloss: one.polarity })),
    onpick: option => { if (option) go({ chosen: [...chosen, option.value] }); } });
  return el('div', { class: 'who controls' }, field('Add a finding', root, { id: 'add-finding' }));
}

function table(prospects, chosen, { sort, book, go }) {
  const order = column => (sort === column ? 'ascending' : sort === `-${column}` ? 'descending' : 'none');
  const sign = column => ({ ascending: ' ↑', descending: ' ↓' })[order(column)] ?? '';
  const shown = FIXED.filter(([name]) => name === 'name' || prospects.some(one => one[name] !== null && one[name] !== ''));
  const classes = name => [name === 'name' ? '' : 'extra', numeric(name) ? 'number' : ''].join(' ').trim() || null;
  const numeric = name => name === 'reps' || name === 'games';
  const fixedHead = ([name, words]) => el('th', { scope: 'col', 'aria-sort': order(name), class: classes(name) },
    el('button', { type: 'button', onclick: () => go({ sort: pressed(sort, name) }) }, words, sign(name)));
  const findingHead = slug => el('th', { scope: 'col', 'aria-sort': order(slug) },
    el('button', { type: 'button', title: book.get(slug)?.definition, onclick: () => go({ sort: pressed(sort, slug) }) }, capital(label(slug)), sign(slug)),
    el('div', {}, el('button', { type: 'button', class: 'drop small controls', 'aria-label': `Remove ${label(slug)} from the board`, onclick: () => go({ chosen: chosen.filter(one => one !== slug), sort: sort.endsWith(slug) ? 'name' : sort }) }, 'remove')));
  return el('table', { class: 'board' }, el('caption', { class: 'hidden-text' }, 'All players with chosen findings'),
    el('thead', {}, el('tr', {}, shown.map(fixedHead), chosen.map(findingHead))),
    el('tbody', {}, prospects.map(one => el('tr', {}, shown.map(([name]) => fixed(one, name, classes(name))), chosen.map(slug => el('td', {}, judged(one, slug, book.get(slug))))))));
}

function fixed(one, name, classes) {
  if (name === 'name') return el('th', { scope: 'row' }, el('a', { href: path('prospect', one.id) }, one.name), el('div', { class: 'small soft about' }, [one.position, one.classYear].filter(Boolean).join(', ')));
  if (name === 'primary') return el('td', { class: classes }, one.primary ? `${label(one.primary.move)}, ${percent(one.primary.share)}` : el('span', { class: 'soft' }, 'none'));
  return el('td', { class: classes }, one[name]);
}

function judged(one, slug, finding) {
  const cell = one.cells[slug];
  if (!cell) return '–';
  const word = verdictWord(cell.verdict, finding?.polarity);
  const open = cell.opportunities && cell.unknownDuties ? `; duty unknown on ${cell.unknownDuties} more` : '';
  return el('a', { class: 'cell', href: `${path('prospect', one.id)}#${slug}`, title: `${word}${open}` }, disc(cell.verdict),
    el('span', { class: 'hidden-text' }, `${word}: `), el('span', { class: cell.opportunities ? null : 'soft' }, tally(cell)));
}

const legend = () => el('p', { class: 'row small soft legend' }, ['confirmed', 'likely', 'watch', 'not-enough-tape', 'cleared'].map(one => el('span', { class: 'verdict' }, disc(one), verdictWord(one))));
