/** What stands around the weeks: why there are none, what was refused, cautions, limits, and what is kept. */
import { el } from '../parts/elements.js';
import { folded } from '../parts/folded.js';

/** Why there is no plan, and the least that would have to give. */
export const nothing = ({ reasons, clash, giveUp }) => el('section', { class: 'trouble' }, el('h2', { class: 'first' }, 'No plan keeps all of this'),
  reasons.map(text => el('p', {}, text)),
  clash.length ? el('p', {}, el('strong', {}, 'These cannot hold together: '), `${clash.join('; ')}.`) : null,
  giveUp.length ? el('p', {}, el('strong', {}, 'The least that would have to give: '), `${giveUp.join('; ')}.`)
    : clash.length ? el('p', {}, 'Nothing that may give way would help: more minutes, men or days would.') : null);

export const refusal = fault => el('div', { class: 'trouble' }, el('p', {}, fault.message),
  (fault.problem?.reasons?.length ?? 0) > 1 ? el('ul', {}, fault.problem.reasons.slice(1).map(text => el('li', {}, text))) : null);

export const list = (title, lines) => (lines.length ? el('section', {}, el('h2', {}, title), el('ul', {}, lines.map(line => el('li', {}, line)))) : null);

export function safety(sheet) {
  const part = name => sheet.cautions.filter(one => one.part === name).map(one => el('li', {}, one.text));
  return el('section', { class: 'plan-safety' }, el('h2', {}, 'Before anybody does it'),
    el('p', {}, el('strong', {}, 'Not approved until each of these has a name and a date:')), el('ul', { class: 'plan-boxes' }, part('approval')),
    el('h3', {}, 'In every session'), el('ul', {}, part('rule')),
    el('h3', {}, 'Stop now'), el('ul', {}, part('stop')),
    part('drill').length ? [el('h3', {}, 'What can hurt in these drills'), el('ul', {}, part('drill'))] : null);
}

/** A number with its unit: 1 set, 3 sets, rank 1. */
const amount = ({ amount: number, unit }) => (unit === 'rank' ? `rank ${number}` : unit === 'percent' ? `${number} %` : `${number} ${number === 1 ? unit.replace(/s$/, '') : unit}`);

/** The numbers the weeks keep to, each with where it comes from, and what to know of them. */
export const limits = frame => [
  folded(`Limits it keeps to: ${frame.limits.length}`, () => el('ul', {}, frame.limits.map(one =>
    el('li', {}, `${one.what}: at ${one.bound} ${amount(one)} (${[one.from, one.source].filter(Boolean).join('; ')})`))), { class: 'brief' }),
  frame.notes.length ? folded('What to know of these weeks', () => el('ul', {}, frame.notes.map(text => el('li', {}, text))), { class: 'brief', open: true }) : null,
];

/** Every version of the kept plan, to look at and to bring back. */
export function versions(kept, { look, bringBack, takeBack }) {
  const day = when => when.slice(0, 16).replace('T', ' ');
  const button = (words, deed) => el('button', { type: 'button', class: 'plain', onclick: deed }, words);
  return folded(kept.takenBack ? 'The kept plan was taken back' : `Kept ${day(kept.when)}${kept.filmChanged ? '; the film has changed since' : ''}`, () =>
    el('ol', { class: 'bare' }, kept.versions.map((one, i) => el('li', { class: 'row' }, `Version ${one.version}, ${day(one.when)}${one.takenBack ? ', taken back' : ''}`,
      one.takenBack ? null : button('Look at it', () => look(one.version)),
      i > 0 && !one.takenBack ? button('Make it stand again', () => bringBack(one.version)) : null,
      i === 0 && !one.takenBack ? button('Take it back', takeBack) : null))), { class: 'small controls versions' });
}
