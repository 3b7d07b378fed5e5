/** What a field with completion knows; no document in here. */

/** @typedef {{value: string, label: string, gloss?: string}} Option */
/** @typedef {{words: string, options: Option[], open: boolean, active: number}} State active is -1 where nothing is picked yet */

/** @type {State} */
export const EMPTY = { words: '', options: [], open: false, active: -1 };

/** Somebody typed. Old options stay until the new ones are there. */
export const typed = (state, words) => ({ ...state, words, active: -1, open: state.open && words.trim() !== '' });

/** Options have come; an answer to older words changes nothing. */
export const offered = (state, words, options, eager = false) =>
  state.words === words ? { ...state, options, open: options.length > 0, active: eager && options.length ? 0 : -1 } : state;

/** Arrow keys go round, through "nothing picked". */
export function moved(state, by) {
  if (!state.options.length) return state;
  const places = state.options.length + 1;
  return { ...state, open: true, active: ((state.active + 1 + by + places) % places) - 1 };
}

/** The option one would take now. */
export const picked = state => (state.open && state.active >= 0 ? state.options[state.active] : null);

export const closed = state => ({ ...state, open: false, active: -1 });

/**
 * The part of a list cell or an exchange that stands under the caret: `bull-rush > [sits-d|`.
 * @param {string} text
 * @param {number} caret
 * @param {RegExp} divider what parts the values
 * @returns {{from: number, to: number, word: string}} without blanks, brackets and the hand at its end
 */
export function wordAt(text, caret, divider) {
  let from = 0;
  let to = text.length;
  for (let i = caret; i > 0; i--) {
    if (divider.test(text[i - 1])) { from = i; break; }
  }
  for (let i = caret; i < text.length; i++) {
    if (divider.test(text[i])) { to = i; break; }
  }
  while (from < to && /\s/.test(text[from])) from++;
  while (to > from && /\s/.test(text[to - 1])) to--;
  return { from, to, word: text.slice(from, to) };
}

/** The text with one part replaced, and where the caret stands then. */
export const replaced = (text, { from, to }, word) => ({ text: text.slice(0, from) + word + text.slice(to), caret: from + word.length });
