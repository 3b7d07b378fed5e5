/** The box to ask in, on every page. */
import { read } from '../wire/http.js';
import { combobox } from '../parts/combobox.js';
import { el } from '../parts/elements.js';

/** Longest question the server reads. */
export const LONGEST = 2000;

/** The kind of a suggestion in words: RushMove is a rush move. */
const kindWords = kind => (kind === 'prospect' ? 'player' : kind.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase());

let made = 0;

/** @param {{open: (href: string) => void, question?: string, large?: boolean}} wants */
export function questionBox({ open, question = '', large = false }) {
  const id = `question-${++made}`;
  const ask = text => open(text.trim() ? `/?q=${encodeURIComponent(text.trim())}` : '/');
  const { root: box, input } = combobox({
    attributes: { id, name: 'q', value: question, maxlength: LONGEST, enterkeyhint: 'search', 'aria-label': 'Question',
      placeholder: large ? 'Players, reps or technique' : 'Ask   /' },
    says: 'What you may be asking',
    complete: async words => (await read('/api/suggest', { q: words })).suggestions.map(one => ({ value: one.text, label: one.text, gloss: kindWords(one.kind) })),
    onpick: (option, text) => { if (option) ask(text); },
  });
  const root = el('form', { role: 'search', class: large ? 'question large' : 'question', onsubmit: event => { event.preventDefault(); ask(input.value); } },
    box, large ? el('button', { class: 'first' }, 'Ask') : null);
  return { root, input };
}
