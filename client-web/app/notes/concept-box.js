/** A field for the concept of a tag, with completion over everything a row of the film log may name. */
import { read } from '../wire/http.js';
import { combobox } from '../parts/combobox.js';
import { fits } from '../parts/combobox-state.js';
import { el, show } from '../parts/elements.js';

const PLACES = [{ column: 'exchange', by: 'him' }, { column: 'exchange', by: 'blocker' }, { column: 'results' }, { column: 'faults' }, { column: 'alignment' }, { column: 'stance' }, { column: 'help' }];
const MOST = 10;

async function complete(q) {
  const answers = await Promise.all(PLACES.map(place => read('/api/complete', { q, ...place, limit: 5 })));
  const found = new Map();
  const wanted = q.trim().toLowerCase();
  const rank = one => ([one.label, one.matched].some(name => name?.toLowerCase() === wanted) ? 0 : one.label.toLowerCase().startsWith(wanted) ? 1 : fits(option(one), q) ? 2 : 3);
  for (const one of answers.flatMap(answer => answer.completions)) if (!found.has(one.slug)) found.set(one.slug, one);
  return [...found.values()].sort((a, b) => rank(a) - rank(b)).slice(0, MOST).map(option);
}

const option = one => ({ value: one.label, slug: one.slug, label: one.label, gloss: one.matched && one.matched !== one.label ? one.matched : '' });

/**
 * @param {{says: string, onpick: (slug: string) => void, oncancel: () => void}} wants
 */
export function conceptBox({ says, onpick, oncancel }) {
  let done = false;
  const once = deed => (...rest) => { if (!done) { done = true; deed(...rest); } };
  const cancel = once(oncancel);
  const told = el('p', { class: 'soft small', role: 'status' });

  /** Enter before the list was there: what the words name is taken; what is only near them a person has to choose. */
  async function entered(words) {
    if (!words.trim()) return;
    const [best] = await complete(words).catch(() => []);
    if (best && fits(best, words)) once(onpick)(best.slug);
    else show(told, `No term begins with \u201c${words.trim()}\u201d.`, best ? ' Choose one of the list with the arrow keys.' : '');
  }

  const { root, input } = combobox({
    attributes: { class: 'concept-box', 'aria-label': says, placeholder: says, oninput: () => show(told) }, eager: fits, says: 'Terms', none: 'No term is called like that.', complete,
    onpick: (one, words) => { if (one) once(onpick)(one.slug); else entered(words); },
  });
  root.addEventListener('keydown', event => { if (event.key === 'Escape' && !event.defaultPrevented) { event.preventDefault(); cancel(); } });
  return { root: el('div', { class: 'row concept-row' }, root, el('button', { type: 'button', onclick: cancel }, 'Cancel'), told), input };
}
