/** The jobs on a front held against his film: what it shows of each on the left, the counts and reps on the right. */
import { path, read } from '../wire/http.js';
import { claim } from '../parts/claim.js';
import { capital, counted, el, percent } from '../parts/elements.js';
import { folded } from '../parts/folded.js';
import { repList } from '../parts/reps.js';
import { disc } from '../parts/verdict.js';
import { asked, DISCS, WORDS } from './roles-state.js';

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
    tag: 'article', id, label: `${id}-title`, summary: `What ${role.label} asks for`,
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
  return all.length ? [el('h4', {}, title), el('ul', { class: 'bare needs' }, all.map(need => el('li', {}, line(need, facts))))] : null;
}

function line(need, { who, filter }) {
  const count = need.opportunities ? `${need.events} of ${need.opportunities}` : 'no chance';
  const range = need.opportunities && typeof need.low === 'number' ? `, likely range ${percent(need.low)} to ${percent(need.high)}` : '';
  const reps = el('div', { class: 'reps-here' });
  const open = async () => {
    const { reps: found } = await read(`/api${path('prospects', who.id, 'findings', need.asked, 'reps')}`, filter);
    reps.replaceChildren(repList(found.map(one => ({ prospect: who.id, game: one.rep.game, gameName: one.rep.gameName, rep: one.rep.rep, event: one.event, seconds: one.rep.seconds }))
      .sort((a, b) => Number(b.event) - Number(a.event))));
  };
  return [
    el('p', {}, el('a', { href: path('technique', need.asked) }, asked(need)), ': ', mark(need.shown)),
    el('p', { class: 'small soft' }, `${count}${range}`, need.games ? `, ${counted(need.games, 'game')}` : '', typeof need.line === 'number' ? `; line ${percent(need.line)}` : '', '.'),
    need.opportunities ? folded('The reps', () => { open(); return reps; }, { class: 'small' }) : null,
  ];
}
