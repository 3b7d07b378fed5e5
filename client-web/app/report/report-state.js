/** What an evaluator puts into a report: his words, his name, which parts in which order; no document in here. */

/**
 * @typedef {{part: string, title: string, wanted: boolean}} Part
 * @typedef {{summary: string, author: string, parts: Part[]}} Sheet
 */

/** The sheet in what the server answered. @returns {Sheet} */
export const sheetOf = ({ summary, author, parts }) => ({ summary, author, parts: parts.map(part => ({ ...part })) });

/** The parts wanted, in order. */
export const wanted = parts => parts.filter(part => part.wanted).map(part => part.part);

/** What is sent to be kept or to be shown. */
export const sent = ({ summary, author, parts }) => ({ summary: summary.trim(), author: author.trim(), parts: wanted(parts) });

/** Whether two sheets say the same. */
export const same = (a, b) => FIELDS.every(field => alike(field, a, b));

/** A part one place up (-1) or down (1); at an end it stays. */
export function moved(parts, name, by) {
  const from = parts.findIndex(part => part.part === name);
  const to = from + by;
  if (from < 0 || to < 0 || to >= parts.length) return parts;
  const next = [...parts];
  next.splice(to, 0, ...next.splice(from, 1));
  return next;
}

/** A part in or out. The last one stays in: a report without any part is none. */
export function switched(parts, name) {
  const last = wanted(parts).length === 1 && wanted(parts)[0] === name;
  return last ? parts : parts.map(part => (part.part === name ? { ...part, wanted: !part.wanted } : part));
}

/** Whether a sentence stands in a summary. */
export const taken = (summary, sentence) => summary.includes(sentence);

/**
 * A sentence put in where the caret is, or taken out where it stands already.
 * @returns {{text: string, caret: number}}
 */
export function withSentence(summary, sentence, caret = summary.length) {
  const at = summary.indexOf(sentence);
  if (at >= 0) {
    const before = summary.slice(0, at).replace(/ $/, '');
    const after = summary.slice(at + sentence.length);
    const text = before ? before + after : after.replace(/^ /, '');
    return { text, caret: before.length };
  }
  const before = summary.slice(0, caret);
  const after = summary.slice(caret);
  const lead = before && !/\s$/.test(before) ? ' ' : '';
  const tail = after && !/^\s/.test(after) ? ' ' : '';
  return { text: before + lead + sentence + tail + after, caret: before.length + lead.length + sentence.length };
}

/** How many letters there is still room for; below 0 there are too many. */
export const room = (summary, longest) => longest - summary.trim().length;

/** Why it cannot be kept; empty where it can. */
export function trouble({ summary }, longest) {
  const over = -room(summary, longest);
  return over > 0 ? `Two pages have room for ${longest} letters of summary: take out ${over}.` : '';
}

/** What can be changed, and what it is called. */
export const FIELDS = ['summary', 'author', 'parts'];
export const NAMES = { summary: 'Summary', author: 'Written by', parts: 'Parts' };

/**
 * Two changes of one sheet put together: what only one of them changed is taken from him; what both changed differently is a clash,
 * and stands as it is mine until somebody decides.
 * @returns {{sheet: Sheet, clashes: string[]}}
 */
export function settle(base, mine, theirs) {
  const sheet = {};
  const clashes = [];
  for (const field of FIELDS) {
    const iChanged = !alike(field, base, mine);
    const theyChanged = !alike(field, base, theirs);
    sheet[field] = iChanged ? mine[field] : theirs[field];
    if (iChanged && theyChanged && !alike(field, mine, theirs)) clashes.push(field);
  }
  return { sheet, clashes };
}

/** Both summaries, one below the other. */
export const both = (mine, theirs) => `${mine.trim()}\n${theirs.trim()}`.trim();

/** A field in words, to be held against another. */
export const told = (field, sheet) => (field === 'parts'
  ? sheet.parts.filter(part => part.wanted).map(part => part.title).join(', ') : sheet[field] || 'nothing');

const alike = (field, a, b) => JSON.stringify(sent(a)[field]) === JSON.stringify(sent(b)[field]);
