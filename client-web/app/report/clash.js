/** Somebody else changed the report meanwhile: both texts, and a choice for each thing that both changed. */
import { el } from '../parts/elements.js';
import { both, NAMES, room, told } from './report-state.js';

/**
 * @param {{clashes: string[], mine: Object, theirs: Object, longest: number, decide: (field: string, value: any) => void}} what
 */
export function clash({ clashes, mine, theirs, longest, decide }) {
  return el('div', { class: 'trouble', role: 'alert' },
    el('p', {}, el('strong', {}, 'Somebody changed this report while you wrote.'), ' Nothing of yours is lost: choose which stands, then keep it.'),
    clashes.map(field => {
      const together = field === 'summary' && room(both(mine.summary, theirs.summary), longest) >= 0;
      const answer = (words, value) => el('button', { type: 'button', onclick: () => decide(field, value) }, words);
      return el('section', { class: 'clash', 'aria-label': NAMES[field] }, el('h3', {}, NAMES[field]),
        el('dl', {}, el('dt', {}, 'Yours'), el('dd', {}, told(field, mine)), el('dt', {}, 'Stored now'), el('dd', {}, told(field, theirs))),
        el('p', { class: 'row' }, answer('Mine', mine[field]), answer('What is stored', theirs[field]), together ? answer('Both', both(mine.summary, theirs.summary)) : null));
    }));
}
