/** A list whose tail waits behind a button. */
import { el, show } from './elements.js';

const FIRST = 8;

/** The first eight, and the rest when asked for; `draw` makes the line of one. */
export function listing(all, draw) {
  const list = el('ul', { class: 'bare' }, all.slice(0, FIRST).map(draw));
  if (all.length <= FIRST + 1) return show(list, all.map(draw));
  const more = el('p', {}, el('button', { type: 'button', class: 'plain small controls', onclick: () => { show(list, all.map(draw)); more.remove(); } }, `All ${all.length}`));
  return [list, more];
}
