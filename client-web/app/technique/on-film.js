/** What your logs show of a concept. */
import { path } from '../wire/http.js';
import { counted, el } from '../parts/elements.js';
import { listing } from '../parts/listing.js';
import { repList } from '../parts/reps.js';
import { disc, firmness, verdictWord } from '../parts/verdict.js';

/** Reps of a technique: how often, by whom, how it went. */
export function onFilm(film) {
  const players = film.prospects;
  return [
    el('p', {}, `${counted(film.reps, 'rep')} of ${counted(players.length, 'player')}: ${film.won} won, ${film.lost} lost, ${film.reps - film.won - film.lost} even or not tagged.`),
    listing(players, one => el('li', {}, el('a', { href: path('prospect', one.id) }, one.name), ` ${counted(one.reps, 'rep')}, ${one.won} won`)),
    film.examples.length ? [el('h4', {}, 'Newest reps'), repList(film.examples.map(rep => ({ ...rep, words: rep.sentence })))] : null,
  ];
}

/** Who shows a finding, the firmest first. */
export function whoShows(prospects, slug) {
  const seen = prospects.filter(one => one.cells[slug]?.opportunities).sort((a, b) => firmness(a.cells[slug].verdict) - firmness(b.cells[slug].verdict) || b.cells[slug].events - a.cells[slug].events);
  if (!seen.length) return el('p', { class: 'soft' }, 'Nobody on your film has had a chance to show it.');
  return listing(seen, one => el('li', {}, el('span', { class: 'verdict' }, disc(one.cells[slug].verdict, verdictWord(one.cells[slug].verdict))), ' ',
    el('a', { href: `${path('prospect', one.id)}#${slug}` }, one.name), ` ${one.cells[slug].events} of ${one.cells[slug].opportunities}`));
}
