/** One prospect: who he is, where he lines up, what he does, what he lacks and has, and the reps that say so. */
import { path, read } from '../wire/http.js';
import { findings } from '../wire/book.js';
import { label, labelsReady } from '../wire/labels.js';
import { capital, choice, counted, el, field, listed, percent } from '../parts/elements.js';
import { drawing } from '../parts/drawing.js';
import { folded } from '../parts/folded.js';
import { pageKeys } from '../shell/keys.js';
import { told } from './finding.js';
import { projectionsOf } from './projection.js';
import { rolesOf } from './roles.js';
import { saidOf } from './said.js';
import { since } from './since.js';
import { build, groups } from './prospect-state.js';
import { flowTable, moveTable, spotTable } from './tables.js';

const FILTERS = ['game', 'over', 'opponent'];

export async function mount(page, context) {
  const { parameters: { id }, query, signal } = context;
  const filter = Object.fromEntries(FILTERS.map(name => [name, query.get(name)]));
  const home = `/api${path('prospects', id)}`;
  const [who, assessment, book] = await Promise.all([read(home, filter, { signal }), read(`${home}/assessment`, filter, { signal }), findings(), labelsReady()]);
  context.title(who.name);
  pageKeys('Prospect', [['n', 'next finding', 'n', () => step(page, 1)], ['p', 'finding before', 'p', () => step(page, -1)]]);
  const [front, flow] = await Promise.all([
    drawing(`${home}/front.svg`, { caption: 'Where he lines up', table: spotTable(who.spots), parameters: filter, signal }),
    drawing(`${home}/flow.svg`, { caption: 'What follows what', table: flowTable(who.flow), parameters: filter, signal }),
  ]);
  page.append(head(who, assessment), filters(who, filter, context), el('div', { class: 'figures' }, el('div', {}, section('Where he lines up', front), section('What he opens with', moves(who))), section('What follows what', flow)));
  const fold = since(who, { signal });
  page.append(...(fold ? [fold] : []), ...judged(assessment, { who, book, filter }));
}

function head(who, { primary, twoMoves, reps, games, leftOut }) {
  const main = primary
    ? `Main rush: ${label(primary.move)}, ${percent(primary.share)} of his first moves (likely range ${percent(primary.low)} to ${percent(primary.high)}).`
    : twoMoves.length === 2 ? `Two moves: ${label(twoMoves[0])} and ${label(twoMoves[1])}, neither clearly ahead.` : 'No main rush on this tape.';
  const out = [leftOut.lowConfidence ? `${counted(leftOut.lowConfidence, 'rep')} read with low confidence` : '', leftOut.drops ? counted(leftOut.drops, 'drop') : ''].filter(Boolean);
  const also = [who.position, who.team, who.classYear, ...build(who)].filter(Boolean);
  return el('header', { class: 'title' },
    el('h1', {}, who.name),
    also.length ? el('p', { class: 'eyebrow' }, also.join(', ')) : null,
    el('p', { class: 'lead' }, `${counted(reps, 'rep')} from ${counted(games, 'game')}. ${main}`),
    who.notes ? el('p', {}, who.notes) : null,
    out.length ? el('p', { class: 'soft small' }, `Left out of the counts: ${listed(out)}.`) : null);
}

function filters(who, filter, { open }) {
  const go = (name, value) => {
    const query = new URLSearchParams(Object.entries({ ...filter, [name]: value }).filter(([, v]) => v));
    open(`${path('prospect', who.id)}${query.size ? `?${query}` : ''}`);
  };
  const active = FILTERS.some(name => filter[name]);
  return el('div', { class: 'row controls filters' },
    field('Game', choice('filter-game', [['', 'all games'], ...who.games.map(game => [game.id, game.name])], filter.game, value => go('game', value))),
    field('Side of the offense', choice('filter-over', [['', 'both sides'], ...who.sides.map(side => [side, side])], filter.over, value => go('over', value))),
    field('Opponent', choice('filter-opponent', [['', 'everybody'], ...who.opponents.map(one => [one, one])], filter.opponent, value => go('opponent', value))),
    active ? el('p', { class: 'row' }, `${who.reps} of ${who.allReps} reps.`, el('a', { href: path('prospect', who.id) }, 'Show all')) : null,
    el('p', { class: 'links' }, el('a', { href: path('report', who.id) }, 'Report'), ' · ', el('a', { href: path('film', who.id) }, 'His film log'), ' · ', el('a', { href: `/compare?id=${encodeURIComponent(who.id)}` }, 'Compare him'),
      ' · ', el('a', { href: `/?q=${encodeURIComponent(`players like ${who.name}`)}` }, 'Players like him')));
}

const section = (title, content) => content ? el('section', { class: 'figure-box' }, el('h2', {}, title), content) : null;

const moves = who => who.moves.length ? moveTable(who.moves) : el('p', { class: 'soft' }, 'No pass rush with the exchange seen.');

const SECTIONS = [
  ['gaps', 'What he lacks'], ['strengths', 'What he does well'], ['notes', 'Worth knowing'], ['duty', 'Depends on what he was told'], ['open', 'Still open'],
];
const LISTS = [
  ['cleared', 'Cleared', 'cleared'], ['notStrengths', 'Not a strength on this tape', 'cleared'], ['thin', 'Not enough tape', 'not-enough-tape'], ['unseen', 'No chance on tape yet', 'not-enough-tape'],
];

function judged(assessment, facts) {
  const grouped = groups(assessment.findings);
  const conclusions = assessment.conclusions.filter(one => !assessment.findings.some(f => f.finding === one.slug));
  return [
    ...SECTIONS.filter(([key]) => grouped[key].length).map(([key, title]) =>
      el('section', { class: 'findings', 'aria-label': title }, el('h2', {}, title), grouped[key].map(one => told(one, facts, key)))),
    conclusions.length ? el('section', {}, el('h2', {}, 'Taken together'), el('ul', {}, conclusions.map(one =>
      el('li', {}, `${capital(label(one.slug))}: ${one.sentence} (from ${listed(one.from.map(label))})`)))) : null,
    rolesOf(assessment.roles, facts),
    projectionsOf(assessment, facts),
    assessment.apart.length ? el('section', { class: 'apart' }, el('h2', {}, 'Said of him, and no finding answers it'), saidOf(assessment.apart)) : null,
    el('section', { class: 'also' }, el('h2', {}, 'The rest'), LISTS.filter(([key]) => grouped[key].length).map(([key, title]) => brief(title, grouped[key], facts))),
  ].filter(Boolean);
}

function brief(title, ones, facts) {
  const here = decodeURIComponent(location.hash.slice(1));
  return folded(`${title}: ${counted(ones.length, 'finding')}`,
    () => ones.map(one => one.opportunities ? told(one, facts, 'brief') : el('div', { class: 'small', id: one.finding }, el('p', {}, el('a', { href: path('technique', one.finding) }, capital(label(one.finding)))), saidOf(one.said))),
    { class: 'brief', open: ones.some(one => one.finding === here || one.said.length) });
}

function step(page, by) {
  const all = [...page.querySelectorAll('.claim')];
  const here = all.findIndex(one => one.contains(document.activeElement));
  const next = all[Math.min(all.length - 1, Math.max(0, here + by))];
  next?.querySelector('a')?.focus();
  next?.scrollIntoView({ block: 'start' });
}
