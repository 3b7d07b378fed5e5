/** Keys that work on every page, and the page that lists them. */
import { el } from '../parts/elements.js';
import { wayBack } from './notices.js';

const EVERYWHERE = [
  ['/', 'to the question box'],
  ['g then a', 'Ask'], ['g then b', 'Board'], ['g then k', 'Book'], ['g then f', 'Film log'], ['g then n', 'Notes'], ['g then i', 'Import'], ['g then p', 'Plan'], ['g then c', 'Compare'], ['g then x', 'Cross-check'],
  ['Ctrl + Z', 'undo what the last notice tells of'],
  ['?', 'this list'],
];
const GOES = { a: '/', b: '/board', k: '/technique', f: '/film', n: '/notes', i: '/import', p: '/plan', c: '/compare', x: '/cross-check' };

let ofPage = { title: '', keys: [] };
let going = false;

/**
 * Keys of the page that is open: [key as shown, what it does, key as the browser names it, deed].
 * @param {string} title
 * @param {Array<[string, string, string?, ((event: KeyboardEvent) => void)?]>} keys
 */
export function pageKeys(title, keys) {
  ofPage = { title, keys };
}

/** Listens. `open` follows an address of this program. */
export function listenForKeys(open) {
  document.addEventListener('keydown', event => {
    if (event.defaultPrevented || event.altKey || event.metaKey || document.querySelector('dialog[open]')) return;
    const writing = inField(event.target);
    if (event.ctrlKey) {
      if (event.key === 'z' && !writing && wayBack()) { event.preventDefault(); wayBack()(); }
      return;
    }
    if (writing) return;
    if (going) {
      going = false;
      if (GOES[event.key]) { event.preventDefault(); open(GOES[event.key]); }
      return;
    }
    if (event.key === 'g') { going = true; setTimeout(() => { going = false; }, 1500); } else if (event.key === '/') {
      event.preventDefault();
      focusQuestion();
    } else if (event.key === '?') showKeys();
    else ofPage.keys.find(([, , key]) => key === event.key)?.[3]?.(event);
  });
  document.getElementById('show-keys').addEventListener('click', showKeys);
}

/** Puts the caret into the question box and marks what stands there. */
export function focusQuestion() {
  const box = document.querySelector('.question input');
  box?.focus();
  box?.select();
}

const inField = target => target instanceof HTMLElement
  && (target.isContentEditable || target.matches('textarea, select, input:not([type="checkbox"], [type="radio"], [type="button"], [type="range"])'));

function showKeys() {
  const lines = keys => el('dl', {}, keys.flatMap(([key, does]) => [el('dt', {}, el('kbd', {}, key)), el('dd', {}, does)]));
  const dialog = el('dialog', { 'aria-labelledby': 'keys-title', onclose: () => dialog.remove() },
    el('h2', { id: 'keys-title', class: 'first' }, 'Keys'),
    ofPage.keys.length ? [el('h3', {}, ofPage.title), lines(ofPage.keys), el('h3', {}, 'On every page')] : null,
    lines(EVERYWHERE),
    el('form', { method: 'dialog' }, el('button', { autofocus: true }, 'Close')));
  document.body.append(dialog);
  dialog.showModal();
}
