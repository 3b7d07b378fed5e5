/** The jobs on a front held against his film: what it shows of each on the left, the counts and reps on the right. */
import { path, read } from '../wire/http.js';
import { claim } from '../parts/claim.js';
import { capital, el } from '../parts/elements.js';
import { folded } from '../parts/folded.js';
import { intervalBar } from '../parts/interval.js';
import { repList } from '../parts/reps.js';
import { disc } from '../parts/verdict.js';
import { asked, count, DISCS, shownOf, WORDS } from './roles-state.js';

/** @param {Object[]} roles of an assessment  @param {{who: Object, filter: Object}} facts */
export const rolesOf = (roles, facts) => roles.length
  ? el('section', { class: 'roles', 'aria-label': 'Which job the film shows' },
    el('h2', {}, 'Which job the film shows'),
    el('p', { class: 'soft small' }, 'What each job asks for is common practice of the trade and can be changed. "Not shown" speaks of this film, not of what he can do.'),
    roles.map(role => told(role, facts)))
  : null;

function told(role, facts) {
  const id = `role-${role.role}`;
  return claim({
    tag: 'article', id, label: `${id}-title`, summary: 'What the job asks for',
    claim: [
      el('h3', { id: `${id}-title` }, el('a', { href: path('technique', role.role) }, capital(role.label), role.local ? ' (yours)' : '')),
      el('p', { class: 'standing' }, mark(role.fit)),
      el('p', { class: 'sentence' }, role.summary),
    ],
    evidence: [needs('Required', role.required, facts), needs('Welcome', role.preferred, facts)],
  });
}

const mark = shown => el('span', { class: 'verdict' }, disc(DISCS[shown]), WORDS[shown]);

function needs(title, all, facts) {
  const list = () => el('ul', { class: 'bare needs' }, all.map(need => el('li', {}, line(need, facts))));
  if (!all.length) return null;
  return title === 'Required' ? [el('h4', {}, title), list()] : folded(`${title}: ${shownOf(all)}`, list, { class: 'welcome' });
}

function line(need, facts) {
  return [
    el('p', {}, el('a', { href: path('technique', need.asked) }, asked(need)), ': ', mark(need.shown)),
    need.opportunities ? folded(count(need), () => behind(need, facts), { class: 'small' }) : el('p', { class: 'small soft' }, 'No chance on tape yet.'),
  ];
}

function behind(need, { who, filter }) {
  const reps = el('div', {}, el('p', { class: 'soft' }, 'Looking them up.'));
  read(`/api${path('prospects', who.id, 'findings', need.asked, 'reps')}`, filter).then(({ reps: found }) => reps.replaceChildren(
    repList(found.map(({ rep, event }) => ({ ...rep, event, words: undefined })).sort((a, b) => Number(b.event) - Number(a.event)))));
  return [intervalBar(need), reps];
}
