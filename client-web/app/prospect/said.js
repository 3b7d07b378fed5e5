/** What was said of him in general, in words that say what his reps answer; each can be taken back. */
import { path, send } from '../wire/http.js';
import { el } from '../parts/elements.js';
import { notice } from '../shell/notices.js';

/** @param {Array<{id: string, sentence: string, agreement: string|null, source: string}>} all */
export const saidOf = all => all.length ? el('ul', { class: 'bare said' }, all.map(line)) : null;

function line(said) {
  const root = el('li', { 'data-agreement': said.agreement ?? 'none' }, said.sentence, ' ',
    el('span', { class: 'soft small' }, said.source), ' ',
    el('button', { type: 'button', class: 'plain small controls', 'aria-label': `Take back: ${said.text}`, onclick: takeBack }, 'Take back'));
  const set = async (method, hidden) => { await send(method, `/api${path('opinions', said.id)}`); root.hidden = hidden; };
  async function takeBack() {
    await set('DELETE', true);
    notice('Took back what was said of him.', () => set('PUT', false));
  }
  return root;
}
