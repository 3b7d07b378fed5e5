/** The mark of a verdict: a disc that fills as the tape does, with its word. */
import { el, svg } from './elements.js';

export const VERDICTS = ['confirmed', 'likely', 'watch', 'not-enough-tape', 'cleared'];

const WORDS = { 'not-enough-tape': 'not enough tape', watch: 'watch', likely: 'likely', confirmed: 'confirmed', cleared: 'cleared' };
const FILLS = { watch: 'M8 8V2a6 6 0 0 1 6 6z', likely: 'M8 2a6 6 0 0 1 0 12z', confirmed: 'M8 2a6 6 0 0 1 0 12a6 6 0 0 1 0-12z' };

/** What each word means, for those who ask. */
export const MEANINGS = {
  confirmed: '19 to 1 or better, from ten chances or more in more than one game',
  likely: '4 to 1 or better',
  watch: 'seen, and still open',
  'not-enough-tape': 'too few chances to say anything',
  cleared: 'the tape speaks against it',
};

/** The word of a verdict; of a strength, cleared reads differently. */
export const verdictWord = (verdict, polarity = 'gap') =>
  verdict === 'cleared' && polarity === 'strength' ? 'not a strength on this tape' : WORDS[verdict] ?? verdict;

/** The disc alone; give it words where nothing beside it says them. */
export function disc(verdict, words = '') {
  return svg('svg', { class: `disc disc-${verdict}`, viewBox: '0 0 16 16', ...(words ? { role: 'img' } : { 'aria-hidden': 'true' }) },
    words ? svg('title', {}, words) : null,
    svg('circle', { class: 'ring', cx: 8, cy: 8, r: 6 }),
    FILLS[verdict] ? svg('path', { class: 'fill', d: FILLS[verdict] }) : null);
}

/** Disc and word. */
export const verdictMark = (verdict, polarity) =>
  el('span', { class: 'verdict', title: MEANINGS[verdict] }, disc(verdict), verdictWord(verdict, polarity));

/**
 * The count of a cell in short; where no chance is sure to have been his, on how many reps nobody knows his duty.
 * @param {{events: number, opportunities: number, unknownDuties: number}} cell
 */
export const tally = ({ events, opportunities, unknownDuties }) =>
  opportunities ? `${events} of ${opportunities}` : unknownDuties ? `duty unknown (${unknownDuties})` : 'no chance';

/** For sorting: the firmest first. */
export const firmness = verdict => VERDICTS.indexOf(verdict);
