/** Reps to open: where a claim leads back to the film. */
import { path } from '../wire/http.js';
import { counted, el } from './elements.js';

const FIRST = 12;

/** Address of the sheet of a rep. */
export const repHref = ({ prospect, game, rep, evaluator }) => path('rep', prospect, game, rep) + (evaluator ? `?by=${encodeURIComponent(evaluator)}` : '');

/** Minutes and seconds of film. */
export function clock(seconds) {
  const whole = Math.floor(seconds);
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return `${h ? `${h}:${String(m).padStart(2, '0')}` : m}:${String(s).padStart(2, '0')}`;
}

/**
 * A list of reps, grouped by game; more than a dozen wait behind a button.
 * @param {Array<{prospect: string, game: string, gameName: string, rep: string, evaluator?: string, event?: boolean, seconds?: ?{start: number}, words?: string}>} reps
 */
export function repList(reps, { empty = 'No reps.' } = {}) {
  if (!reps.length) return el('p', { class: 'soft' }, empty);
  const root = el('div', { class: 'reps' });
  const mixed = reps.some(one => one.event === true) && reps.some(one => one.event === false);
  const draw = shown => root.replaceChildren(...games(shown), ...(mixed ? [legend()] : []), ...(shown.length < reps.length
    ? [el('button', { type: 'button', class: 'plain', onclick: () => { draw(reps); root.querySelector('a')?.focus(); } }, `All ${counted(reps.length, 'rep')}`)] : []));
  draw(reps.length > FIRST + 3 ? reps.slice(0, FIRST) : reps);
  return root;
}

/** What the marks say; each rep tells it to a screen reader by itself. */
const legend = () => el('p', { class: 'soft small reps-legend', 'aria-hidden': 'true' }, el('span', { class: 'happened' }, '●'), ' it happened  ', '○ it did not');

function games(reps) {
  const groups = new Map();
  for (const rep of reps) groups.set(rep.gameName, [...(groups.get(rep.gameName) ?? []), rep]);
  return [...groups].map(([game, ones]) => el('div', { class: 'reps-game' },
    el('p', { class: 'reps-title' }, game),
    el('ul', { class: 'rep-links' }, ones.map(one => el('li', {}, link(one))))));
}

function link(rep) {
  const film = rep.seconds ? ` ${clock(rep.seconds.start)}` : '';
  const spoken = rep.event === undefined ? '' : rep.event ? ', it happened' : ', it did not happen';
  return el('a', { href: repHref(rep), class: rep.event === false ? 'rep-link not' : 'rep-link' },
    rep.event === undefined ? null : el('span', { class: 'happened', 'aria-hidden': 'true' }, rep.event ? '●' : '○'),
    el('span', { class: 'rep-name' }, rep.rep),
    film ? el('span', { class: 'soft' }, film) : null,
    rep.words ? el('span', { class: 'rep-words' }, rep.words) : null,
    spoken ? el('span', { class: 'hidden-text' }, spoken) : null);
}
