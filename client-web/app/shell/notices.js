/** A line at the foot of the page that tells what was done, with a way back. */
import { el } from '../parts/elements.js';

const STAYS = 12000;
let undoing = null;

/** Says what happened. With `undo` it offers the way back, by button or Ctrl+Z outside of fields; `more` is another button, [words, deed]. */
export function notice(text, undo = null, more = null) {
  const home = document.getElementById('notices');
  const line = el('div', { class: 'notice' }, el('span', {}, text));
  const gone = () => { line.remove(); if (undoing === back) undoing = null; };
  const back = undo && (async () => { gone(); await undo(); });
  if (back) {
    line.append(el('button', { type: 'button', class: 'undo', onclick: back }, 'Undo'));
    undoing = back;
  }
  if (more) line.append(el('button', { type: 'button', onclick: async () => { gone(); await more[1](); } }, more[0]));
  line.append(el('button', { type: 'button', 'aria-label': 'Close this notice', onclick: gone }, '×'));
  home.replaceChildren(line);
  let left = setTimeout(gone, STAYS);
  line.addEventListener('pointerenter', () => clearTimeout(left));
  line.addEventListener('pointerleave', () => { left = setTimeout(gone, STAYS / 2); });
  line.addEventListener('focusin', () => clearTimeout(left));
}

/** The way back of the newest notice, if one is on offer. */
export const wayBack = () => undoing;

/** The region that reads notices aloud must be there before the first one. */
export function readyNotices() {
  const home = document.getElementById('notices');
  home.setAttribute('role', 'status');
  home.setAttribute('aria-live', 'polite');
}
