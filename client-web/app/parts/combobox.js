/** A field with completion, by the ARIA pattern for comboboxes with a list box. */
import { closed, EMPTY, moved, offered, picked, replaced, typed, wordAt } from './combobox-state.js';
import { el, show } from './elements.js';

const PAUSE = 90;
let made = 0;

/**
 * Mounts completion on a new field.
 * @param {Object} wants
 * @param {Object<string, any>} wants.attributes of the input
 * @param {(words: string) => Promise<import('./combobox-state.js').Option[]>} wants.complete
 * @param {(option: import('./combobox-state.js').Option | null, text: string) => void} [wants.onpick] an option was taken, or Enter pressed without one (null)
 * @param {RegExp} [wants.divider] parts the values of a field that holds several
 * @param {boolean | ((option: import('./combobox-state.js').Option, words: string) => boolean)} [wants.eager] the first option is picked while typing,
 *   so that Enter and Tab take it; a function says of which options that holds
 * @param {string} [wants.says] what the list is called
 * @param {string} [wants.none] what is told where nothing was found
 */
export function combobox({ attributes, complete, onpick = () => {}, divider = null, eager = false, says = 'Suggestions', none = '' }) {
  const list = `options-${++made}`;
  let state = EMPTY;
  let waiting = 0;
  const input = el('input', {
    type: 'text', autocomplete: 'off', spellcheck: 'false', ...attributes,
    role: 'combobox', 'aria-autocomplete': 'list', 'aria-expanded': 'false', 'aria-controls': list,
  });
  input.addEventListener('input', () => { state = typed(state, word().word); render(); later(); });
  input.addEventListener('keydown', pressed);
  input.addEventListener('blur', () => { clearTimeout(waiting); state = closed(state); render(); });
  const box = el('ul', { id: list, role: 'listbox', 'aria-label': says, hidden: true, onmousedown: event => event.preventDefault() });
  const nothing = none ? el('p', { class: 'nothing soft small', role: 'status' }) : null;
  const root = el('div', { class: 'combobox' }, input, box, nothing);

  function word() {
    return divider ? wordAt(input.value, input.selectionStart ?? input.value.length, divider) : { from: 0, to: input.value.length, word: input.value };
  }

  function later() {
    clearTimeout(waiting);
    const words = state.words;
    if (!words.trim()) return;
    waiting = setTimeout(async () => {
      const options = await complete(words).catch(() => []);
      if (document.activeElement === input) { state = offered(state, words, options, eager); render(); }
    }, PAUSE);
  }

  function pressed(event) {
    const down = event.key === 'ArrowDown';
    if (down || event.key === 'ArrowUp') {
      event.preventDefault();
      if (state.options.length) { state = moved(state, down ? 1 : -1); render(); } else { state = typed(state, word().word); later(); }
    } else if (event.key === 'Escape' && state.open) {
      event.preventDefault();
      event.stopPropagation();
      state = closed(state);
      render();
    } else if ((event.key === 'Enter' || (event.key === 'Tab' && !event.shiftKey)) && picked(state)) {
      if (event.key === 'Enter') event.preventDefault();
      take(picked(state));
    } else if (event.key === 'Enter') {
      clearTimeout(waiting);
      state = closed(state);
      render();
      onpick(null, input.value);
    }
  }

  function take(option) {
    clearTimeout(waiting);
    const next = replaced(input.value, word(), option.value);
    input.value = next.text;
    input.setSelectionRange(next.caret, next.caret);
    state = { ...EMPTY };
    render();
    input.dispatchEvent(new Event('change', { bubbles: true }));
    onpick(option, input.value);
  }

  function render() {
    box.hidden = !state.open;
    if (nothing) show(nothing, state.none ? none : '');
    input.setAttribute('aria-expanded', String(state.open));
    show(box, state.options.map((option, i) => el('li', {
      id: `${list}-${i}`, role: 'option', 'aria-selected': String(i === state.active), onclick: () => take(option),
    }, el('span', {}, option.label), option.gloss ? el('span', { class: 'gloss' }, option.gloss) : null)));
    if (state.open && state.active >= 0) {
      input.setAttribute('aria-activedescendant', `${list}-${state.active}`);
      box.children[state.active].scrollIntoView({ block: 'nearest' });
    } else input.removeAttribute('aria-activedescendant');
  }

  return { root, input };
}
