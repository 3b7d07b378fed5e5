/** What is worked on and why, what is looked at first, and what was left out and why. Claim left, evidence right. */
import { path } from '../wire/http.js';
import { label } from '../wire/labels.js';
import { claim } from '../parts/claim.js';
import { capital, el } from '../parts/elements.js';
import { folded } from '../parts/folded.js';
import { placesOf, sessionName } from './plan-state.js';

const ROLES = { safety: 'safety, before everything', gap: 'a gap', prerequisite: 'groundwork' };

export function work(sheet, weeks, doing) {
  if (!sheet.workOn.length) return null;
  const own = sheet.workOn.filter(one => one.role !== 'prerequisite').map(one => one.skill);
  return el('section', { 'aria-labelledby': 'work' }, el('h2', { id: 'work' }, 'What he works on'),
    sheet.workOn.map(one => target(one, own, sheet, weeks, doing)));
}

function target(one, own, sheet, weeks, doing) {
  const id = `skill-${one.skill}`;
  const at = own.indexOf(one.skill);
  const [first, ...rest] = one.because;
  const places = placesOf(weeks, one.skill);
  const button = (words, id, deed) => el('button', { type: 'button', class: 'plain small', id, 'aria-label': `${words}: ${one.label}`, onclick: deed }, words);
  return claim({
    tag: 'article', id, label: `${id}-title`, summary: 'What says so',
    claim: [
      el('h3', { id: `${id}-title` }, el('a', { href: path('technique', one.skill) }, capital(one.label))),
      el('p', { class: 'standing' }, one.role === 'safety' ? el('strong', {}, ROLES.safety) : el('span', { class: 'soft' }, ROLES[one.role])),
      first ? el('p', {}, first) : null,
      el('p', { class: 'row controls' },
        at > 0 ? button('Earlier', `up-${one.skill}`, () => doing.up(one.skill)) : null,
        at >= 0 && at < own.length - 1 ? button('Later', `down-${one.skill}`, () => doing.down(one.skill)) : null,
        at >= 0 ? button('Leave it out', null, () => doing.leaveOut(one.skill)) : null, button('He has it', null, () => doing.has(one.skill))),
    ],
    evidence: [
      one.findings.length ? el('ul', { class: 'bare' }, one.findings.map(slug => el('li', {}, el('a', { href: `${path('prospect', sheet.id)}#${slug}` }, capital(label(slug))), ': his reps'))) : null,
      rest.map(text => el('p', { class: 'small' }, text)),
      places.length ? el('p', { class: 'small soft' }, `In ${places.map(place => sessionName(weeks, place)).join(', ')}.`) : null,
    ],
  });
}

export const look = sheet => (sheet.look.length ? el('section', {}, el('h2', {}, 'Look at these in the first week, before anything heavier'),
  el('ul', {}, sheet.look.map(one => el('li', {}, el('a', { href: path('technique', one.skill) }, capital(one.label)), `: ${one.why}`)))) : null);

export const left = (sheet, doing) => (sheet.left.length ? folded(`Left out, and why: ${sheet.left.length}`, () => el('ul', {}, sheet.left.map(one => el('li', {},
  el('a', { href: path('technique', one.finding) }, capital(one.label)), `: ${one.why} `,
  el('button', { type: 'button', class: 'plain small controls', 'aria-label': `Work on it: ${one.label}`, onclick: () => doing.workOn(one.finding) }, 'Work on it')))), { class: 'brief' }) : null);
