/** Something folded away that is drawn only when it is opened. */
import { el } from './elements.js';

/**
 * @param {string} summary what stands on the fold
 * @param {() => any} build draws what is inside
 * @param {{class?: string, open?: boolean}} [wants]
 */
export function folded(summary, build, { open = false, ...attributes } = {}) {
  const root = el('details', { ...attributes, open }, el('summary', {}, summary));
  let drawn = false;
  const draw = () => {
    if (drawn || !root.open) return;
    drawn = true;
    root.append(el('div', {}, build()));
  };
  root.addEventListener('toggle', draw);
  draw();
  return root;
}
