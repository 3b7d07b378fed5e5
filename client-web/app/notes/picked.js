/** The words that are marked on the page, as a place in the text of the notes. */

const LONGEST = 80;

/**
 * @param {Element} board the stretches, in the order of `parts`
 * @returns {{from: number, text: string} | null} null where nothing is marked in the words of one stretch
 */
export function picked(board, parts) {
  const selection = getSelection();
  if (!selection.rangeCount || selection.isCollapsed) return null;
  const range = selection.getRangeAt(0);
  const words = (range.startContainer.nodeType === Node.TEXT_NODE ? range.startContainer.parentElement : range.startContainer).closest('.words');
  const at = words ? [...board.children].indexOf(words.closest('.stretch')) : -1;
  if (at < 0 || !words.contains(range.endContainer)) return null;
  const before = document.createRange();
  before.setStart(words, 0);
  before.setEnd(range.startContainer, range.startOffset);
  const text = range.toString();
  const lead = text.length - text.trimStart().length;
  return text.trim() && text.trim().length <= LONGEST ? { from: parts[at].textFrom + before.toString().length + lead, text: text.trim() } : null;
}
