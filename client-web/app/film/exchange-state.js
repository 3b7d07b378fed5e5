/** The exchange of a rep as text: his steps plain, the blocker's in brackets, `>` between them. */

/** Parts the words of an exchange from each other. */
export const DIVIDER = /[>[\]@]/;

/**
 * Steps as they are typed so far.
 * @param {string} text such as `bull-rush > [sits-down] > push-pull@inside`
 * @returns {Array<{by: 'him' | 'blocker', words: string, hand: string}>}
 */
export function steps(text) {
  return text.split('>').map(part => part.trim()).filter(Boolean).map(part => {
    const blocker = part.startsWith('[');
    const [words, hand = ''] = part.replace(/^\[/, '').replace(/\]$/, '').split('@');
    return { by: blocker ? 'blocker' : 'him', words: words.trim(), hand: hand.trim() };
  }).filter(step => step.words);
}

/** Whose step stands under the caret. */
export function whose(text, caret) {
  const before = text.slice(text.lastIndexOf('>', caret - 1) + 1, caret);
  return before.includes('[') ? 'blocker' : 'him';
}

/**
 * Helps the hands: `>` brings its blanks, `[` its other half, and a `]` that stands there already is stepped over.
 * @returns {?{text: string, caret: number}} null where the key does what it always does
 */
export function helped(text, caret, key) {
  const before = text.slice(0, caret);
  const after = text.slice(caret);
  if (key === '>') {
    const closed = after.startsWith(']') ? after.slice(1) : after;
    const head = `${(before + (closed === after ? '' : ']')).trimEnd()} > `;
    return { text: head + closed.trimStart(), caret: head.length };
  }
  if (key === ' ' && before.endsWith('> ')) return { text, caret };
  if (key === '[' && !after.startsWith(']')) return { text: `${before}[]${after}`, caret: caret + 1 };
  if (key === ']' && after.startsWith(']')) return { text, caret: caret + 1 };
  return null;
}
