/** Then and now, folded: what became of his gaps since a game, each with its rate from game to game. */
import { path, read } from '../wire/http.js';
import { label } from '../wire/labels.js';
import { capital, choice, counted, el, field, show } from '../parts/elements.js';
import { claim } from '../parts/claim.js';
import { drawing } from '../parts/drawing.js';
import { folded } from '../parts/folded.js';
import { verdictMark } from '../parts/verdict.js';
import { changeWords, cuts, firstCut, gameRows, inOrder } from './since-state.js';

/** The fold; null where there is one game only. */
export function since(who, { signal }) {
  const where = cuts(who.games);
  if (!where.length) return null;
  const home = `/api${path('prospects', who.id)}`;
  return folded('Then and now: what became of his gaps since a game', () => {
    const told = el('div', { 'aria-live': 'polite' });
    const go = async game => show(told, await outcome(home, game, signal));
    go(firstCut(who.games));
    return [field('Since', choice('since-game', where.map(game => [game.id, game.date ? `${game.name}, ${game.date}` : game.name]), firstCut(who.games), go)), told];
  }, { class: 'since' });
}

async function outcome(home, game, signal) {
  const progress = await read(`${home}/progress`, { since: game }, { signal });
  const drawn = await Promise.all(progress.findings.map(one => one.byGame.length
    ? drawing(`${home}/findings/${encodeURIComponent(one.finding)}/games.svg`, { caption: `${capital(label(one.finding))}, game by game`, table: table(one), parameters: { since: game }, signal })
    : null));
  const charts = new Map(progress.findings.map((one, i) => [one.finding, drawn[i]]));
  return [
    el('p', {}, `Before: ${half(progress.before)}. Since: ${half(progress.after)}. What was found before is held against the reps since, which had no part in finding it.`),
    progress.findings.length ? inOrder(progress.findings).map(one => finding(one, charts.get(one.finding))) : el('p', { class: 'soft' }, 'No gap stood before, so there is nothing to test again.'),
    progress.fresh.length ? [el('h3', {}, 'Stands on these games and did not stand before'), el('ul', {}, progress.fresh.map(one =>
      el('li', {}, verdictMark(one.verdict, 'gap'), ' ', capital(label(one.finding)), ': ', one.sentence)))] : null,
    progress.cautions.length ? el('ul', { class: 'soft small' }, progress.cautions.map(text => el('li', {}, text))) : null,
  ];
}

const half = ({ reps, games }) => `${counted(reps, 'rep')} from ${counted(games, 'game')}`;

function finding(one, chart) {
  const id = `since-${one.finding}`;
  return claim({
    tag: 'article', id, label: `${id}-title`, summary: 'Game by game',
    claim: [
      el('h3', { id: `${id}-title` }, capital(label(one.finding))),
      el('p', { class: 'standing' }, el('strong', {}, changeWords(one.change)), el('span', { class: 'soft' }, 'was '), verdictMark(one.verdict, one.polarity), one.safety ? el('strong', {}, 'safety') : null),
      el('p', { class: 'sentence' }, one.sentence),
    ],
    evidence: chart,
  });
}

const table = one => el('table', {}, el('caption', { class: 'hidden-text' }, `${capital(label(one.finding))}, game by game`),
  el('thead', {}, el('tr', {}, ['Game', 'Half', 'Count'].map(head => el('th', { scope: 'col' }, head)))),
  el('tbody', {}, gameRows(one.byGame).map(row => el('tr', {}, row.map(cell => el('td', {}, cell))))));
