/** What a field with completion knows; no document in here. */

/** @typedef {{value: string, label: string, gloss?: string}} Option */
/** @typedef {{words: string, options: Option[], open: boolean, active: number, none: boolean}} State active is -1 where nothing is picked yet; none where nothing was found */

/** @type {State} */
export const EMPTY = { words: '', options: [], open: false, active: -1, none: false };

/** Somebody typed. Old options stay until the new ones are there. */
export const typed = (state, words) => ({ ...state, words, active: -1, open: state.open && words.trim() !== '', none: false });

/**
 * Options have come; an answer to older words changes nothing.
 * @param {boolean | ((option: Option, words: string) => boolean)} [eager] whether the first option is picked at once, or which may be
 */
export const offered = (state, words, options, eager = false) => {
  if (state.words !== words) return state;
  const may = options.length > 0 && (typeof eager === 'function' ? eager(options[0], words) : eager);
  return { ...state, options, open: options.length > 0, active: may ? 0 : -1, none: options.length === 0 };
};

/** Whether a label or another name of an option begins with the words. */
export const fits = ({ label, gloss }, words) => {
  const wanted = plain(words);
  return wanted !== '' && [label, gloss ?? ''].some(name => plain(name).startsWith(wanted));
};

const plain = text => text.trim().toLowerCase().replace(/[-_\s]+/g, ' ');

/** Arrow keys go round, through "nothing picked". */
export function moved(state, by) {
  if (!state.options.length) return state;
  const places = state.options.length + 1;
  return { ...state, open: true, active: ((state.active + 1 + by + places) % places) - 1 };
}

/** The option one would take now. */
export const picked = state => (state.open && state.active >= 0 ? state.options[state.active] : null);

export const closed = state => ({ ...state, open: false, active: -1, none: false });

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
