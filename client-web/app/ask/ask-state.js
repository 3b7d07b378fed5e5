/** Pure parts of asking: where answers lead, how a chip changes the question. */

/** @typedef {{role: string, label: string, text: string, from: number, to: number, concept?: ?string, choices?: Array<{label: string, words: string}>}} Chip */

/** The question with the words of a chip replaced; with no words they are cut. */
export function reworded(question, { from, to }, words) {
  const before = question.slice(0, from);
  const after = question.slice(to);
  return (words ? before + words + after : `${before.trimEnd()} ${after.trimStart()}`).replace(/\s+/g, ' ').trim();
}

/** Chips that stand on words of the question can be changed; the others only tell. */
export const changeable = chip => Number.isInteger(chip.from) && Number.isInteger(chip.to) && chip.to > chip.from;

/** The question with more words at its end. */
export const extended = (question, words) => `${question.trim().replace(/[?.!]+$/, '')} ${words}`.trim();

/** Examples for the three who ask, of players who are on file. */
export const examples = ([one, other = one] = []) => [
  ['A scout', ['edge players who wrong-arm kick-outs', 'who has no inside counter, confirmed', 'better against tight ends than tackles']],
  ['A coach', ['counters to a bull rush when the tackle sits down', 'what beats an over-set', 'drills for squeezing the down block']],
  ['Player development', one ? [`what does ${one} lack`, `reps where ${one} was over-set and lost`, `players like ${other}`]
    : ['drills for hand speed', 'what does the long arm need first', 'what beats a vertical set']],
];

/** A string cut into plain and marked parts by [from, to) offsets. */
export function marked(text, spans = []) {
  const parts = [];
  let at = 0;
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    if (from < at || to > text.length || to <= from) continue;
    if (from > at) parts.push({ text: text.slice(at, from), mark: false });
    parts.push({ text: text.slice(from, to), mark: true });
    at = to;
  }
  if (at < text.length) parts.push({ text: text.slice(at), mark: false });
  return parts;
}
