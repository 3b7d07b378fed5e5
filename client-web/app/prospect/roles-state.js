/** What a role asks for, in words; no document in here. */
import { counted, percent } from '../parts/elements.js';

/** How a fit is told. */
export const WORDS = { shown: 'shown', 'not-shown': 'not shown on this tape', 'no-tape': 'not enough tape' };

/** The disc beside it; the word always stands with it. */
export const DISCS = { shown: 'confirmed', 'not-shown': 'watch', 'no-tape': 'not-enough-tape' };

/** What is asked for: a gap is asked for by its absence. */
export const asked = ({ label, without }) => (without ? `clear of "${label}"` : label);

/** The count of a need with its likely range: "3 of 3 in 2 games, likely range 56 to 100 %". */
export function count({ events, opportunities, games, low, high }) {
  const range = typeof low === 'number' ? `, likely range ${Math.round(low * 100)} to ${percent(high)}` : '';
  return `${events} of ${opportunities} in ${counted(games, 'game')}${range}`;
}

/** How many of some needs are shown. */
export const shownOf = needs => `${needs.filter(need => need.shown === 'shown').length} of ${needs.length} shown`;
