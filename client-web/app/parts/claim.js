/** Claim left, evidence right. Where the page is narrow the evidence folds under its claim. */
import { el } from './elements.js';

const wide = matchMedia('(min-width: 60.01rem)');

/**
 * A claim with its evidence.
 * @param {{id?: string, claim: any, evidence: any, summary?: string, tag?: string}} what
 */
export function claim({ id, claim: said, evidence, summary = 'What says so', tag = 'section', label }) {
  return el(tag, { class: 'claim', id, 'aria-labelledby': label },
    el('div', { class: 'said' }, said),
    evidence ? el('details', { class: 'evidence', open: wide.matches }, el('summary', {}, summary), evidence) : null);
}

/** Opens and folds evidence as the page grows and shrinks, and opens it for print. */
export function listenForFolding() {
  const set = open => document.querySelectorAll('details.evidence').forEach(one => { one.open = open; });
  wide.addEventListener('change', () => set(wide.matches));
  addEventListener('beforeprint', () => set(true));
  addEventListener('afterprint', () => set(wide.matches));
}
