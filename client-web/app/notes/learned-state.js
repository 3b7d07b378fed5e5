/** What kept decisions teach, as a page says it; nothing here touches the document. */
import { counted, listed } from '../parts/elements.js';

/** @typedef {{key: string, kind: string, words: string, times: number, accepted: number, state: string, readAs: string[], places: {file: string, rep: number}[]}} Suggestion */

/** What is open, taken and ignored; words that were tagged once stand apart. */
export const sorted = suggestions => {
  const open = suggestions.filter(one => one.state === 'open');
  return {
    often: open.filter(one => one.times > 1 || one.kind === 'warning'),
    once: open.filter(one => one.times === 1 && one.kind === 'name'),
    settled: suggestions.filter(one => one.state !== 'open'),
  };
};

/** One suggestion as a sentence; `name` gives the name of a term. */
export function sentence({ kind, concept, words, times, accepted, readAs, state }, name) {
  const often = times === 1 ? 'once' : times === 2 ? 'twice' : `${times} times`;
  if (kind === 'warning') return `“${words}” was rejected as ${name(concept)} ${often}, accepted ${accepted ? counted(accepted, 'time') : 'never'}.`;
  const now = readAs.length && state !== 'taken' ? ` The book reads it as ${listed(readAs.map(name))} now.` : '';
  return `“${words}” was tagged as ${name(concept)} ${often}.${now}`;
}

/** Where it was decided: "friday.vtt, rep 1 and 4". */
export function places(suggestion) {
  const files = new Map();
  for (const { file, rep } of suggestion.places) files.set(file, [...(files.get(file) ?? []), rep ? `rep ${rep}` : 'in general']);
  return [...files].map(([file, reps]) => `${file}, ${listed([...new Set(reps)])}`).join('; ');
}
