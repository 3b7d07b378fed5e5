/** The tables behind the drawings of a prospect. */
import { path } from '../wire/http.js';
import { label } from '../wire/labels.js';
import { capital, el, percent, svg } from '../parts/elements.js';

const NOTHING = { 0: 'no move', 1: 'no answer seen', 2: 'no second move', 3: 'no result' };

/** Where he lined up. */
export const spotTable = spots => table('Where he lined up', ['Spot', 'Side', 'Reps', 'Won', 'Lost'],
  spots.map(spot => [label(spot.alignment), spot.over ?? 'not told', spot.reps, spot.won, spot.lost]));

/** What led to what, more than once. */
export const flowTable = flow => table('What follows what', ['From', 'To', 'Reps'],
  [...flow.links].sort((a, b) => a.from.stage - b.from.stage || b.reps - a.reps).filter(link => link.reps > 1).map(link => [station(link.from), station(link.to), link.reps]));

/** What he opens with, each share as a bar; longer tails wait behind the first eight. */
export function moveTable(moves) {
  const most = Math.max(...moves.map(one => one.share));
  const row = one => el('tr', {},
    el('th', { scope: 'row' }, el('a', { href: path('technique', one.move) }, capital(label(one.move)))),
    el('td', { class: 'share' }, svg('svg', { viewBox: '0 0 100 10', preserveAspectRatio: 'none', 'aria-hidden': 'true', class: 'share-bar' },
      svg('rect', { width: Math.max(1, 100 * one.share / most), height: 10 }))),
    el('td', { class: 'number' }, percent(one.share)), el('td', { class: 'number' }, one.reps), el('td', { class: 'number' }, one.won));
  const head = el('thead', {}, el('tr', {}, el('th', { scope: 'col' }, 'First move'), el('td', {}), el('th', { scope: 'col', class: 'number' }, 'Share'), el('th', { scope: 'col', class: 'number' }, 'Reps'), el('th', { scope: 'col', class: 'number' }, 'Won')));
  return el('table', { class: 'moves' }, el('caption', { class: 'hidden-text' }, 'First moves of his pass rushes'), head, el('tbody', {}, moves.slice(0, 8).map(row)));
}

const station = ({ stage, value }) => value === null ? NOTHING[stage] ?? 'nothing' : label(value);

function table(caption, heads, rows) {
  const numeric = i => rows.every(row => typeof row[i] === 'number');
  return el('table', {}, el('caption', { class: 'hidden-text' }, caption),
    el('thead', {}, el('tr', {}, heads.map((head, i) => el('th', { scope: 'col', class: numeric(i) ? 'number' : null }, head)))),
    el('tbody', {}, rows.map(row => el('tr', {}, row.map((cell, i) => el('td', { class: numeric(i) ? 'number' : null }, cell))))));
}
