/** What a role asks for, in words; no document in here. */

/** How a fit is told. */
export const WORDS = { shown: 'shown', 'not-shown': 'not shown on this tape', 'no-tape': 'no tape yet' };

/** The disc beside it; the word always stands with it. */
export const DISCS = { shown: 'confirmed', 'not-shown': 'watch', 'no-tape': 'not-enough-tape' };

/** What is asked for: a gap is asked for by its absence. */
export const asked = ({ label, without }) => (without ? `clear of "${label}"` : label);
