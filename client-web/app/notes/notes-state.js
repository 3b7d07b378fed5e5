/** Proposed reps and what a person decides on them; nothing here touches the document. */
import { carried } from './carry.js';

/** @typedef {{key: string, concept: string, assertion: string, actor: string, from: number, to: number, band: string}} Tag */
/** @typedef {{chosen: Object<string, boolean>, phases: Object<number, string>, past: Array}} Decisions chosen: true is accepted, false rejected */

/** Nothing decided yet. */
export const undecided = () => ({ chosen: {}, phases: {}, past: [] });

/** Decides on some tags; null takes the decision away. */
export function decide(state, keys, value) {
  const chosen = { ...state.chosen };
  for (const key of keys) {
    if (value === null) delete chosen[key];
    else chosen[key] = value;
  }
  return { ...state, chosen, past: [...state.past, { chosen: state.chosen, phases: state.phases }] };
}

/** Says what kind of play a rep was. */
export const setPhase = (state, ordinal, phase) =>
  ({ ...state, phases: { ...state.phases, [ordinal]: phase }, past: [...state.past, { chosen: state.chosen, phases: state.phases }] });

/** The state before the last decision. */
export const back = state => (state.past.length ? { ...state.past.at(-1), past: state.past.slice(0, -1) } : state);

/** The tags of a rep that may be accepted in one go: exact matches that nothing had to be read into. */
export const sure = (rep, state) => rep.tags.filter(tag => tag.band === 'sure' && state.chosen[tag.key] === undefined).map(tag => tag.key);

/** The phase of a rep: chosen, or read. */
export const phaseOf = (rep, state) => state.phases[rep.ordinal] ?? rep.phase ?? '';

/** How far it is: decided and accepted tags, reps that will be rows, and those that still want a phase. */
export function progress(reps, state) {
  const tags = reps.flatMap(rep => rep.tags);
  const rows = reps.filter(rep => rep.tags.some(tag => state.chosen[tag.key]));
  return {
    tags: tags.length,
    open: tags.filter(tag => state.chosen[tag.key] === undefined).length,
    accepted: tags.filter(tag => state.chosen[tag.key]).length,
    rows: rows.length,
    unphased: rows.filter(rep => !phaseOf(rep, state)).map(rep => rep.ordinal),
  };
}

/** The next or former tag, the first undecided one where `open` is wanted; null where there is none. */
export function neighbor(tags, key, step) {
  const at = tags.findIndex(tag => tag.key === key);
  if (at < 0) return tags[step > 0 ? 0 : tags.length - 1]?.key ?? null;
  return tags[at + step]?.key ?? null;
}

/** The next tag that is not decided on, from here to the end and then from the beginning. */
export function nextOpen(tags, key, state) {
  const at = tags.findIndex(tag => tag.key === key) + 1;
  return [...tags.slice(at), ...tags.slice(0, at)].find(tag => state.chosen[tag.key] === undefined)?.key ?? null;
}

/** The notes in stretches, each with its words, its tags and, where a rep is told first, the rep; the words of all make the whole text. */
export function stretches({ notes, text, cues }) {
  const marks = [...notes.reps.flatMap(rep => rep.tags), ...notes.statements].sort((a, b) => a.from - b.from || a.to - b.to);
  const told = new Set();
  const parts = notes.segments.length ? notes.segments : text ? [{ kind: 'chatter', rep: 0, from: 0, to: text.length }] : [];
  let tag = 0;
  let shown = 0;
  return parts.map((segment, i) => {
    const own = [];
    while (tag < marks.length && marks[tag].from < segment.to) own.push(marks[tag++]);
    const first = segment.kind === 'rep' && !told.has(segment.rep);
    if (first) told.add(segment.rep);
    const from = shown;
    shown = i + 1 < parts.length ? untilNext(text, segment.to, parts[i + 1].from) : text.length;
    return {
      ...segment, tags: own,
      told: first ? notes.reps.find(rep => rep.ordinal === segment.rep) ?? null : null,
      start: cueAt(cues, segment.from)?.start ?? null,
      pieces: pieces(text, from, shown, own),
    };
  });
}

/** Where the words of a stretch end: marks and breaks after its last word are its own, what opens the next one ("(", a quote) is not. */
function untilNext(text, end, next) {
  const between = text.slice(end, Math.max(end, next));
  return end + between.length - /[(["'\u201c\u2018\u2014-]*$/.exec(between)[0].length;
}

/** The cue in which a place stands. */
export function cueAt(cues, place) {
  let [low, high] = [0, cues.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (cues[middle].from <= place) low = middle;
    else high = middle - 1;
  }
  return cues[low] ?? null;
}

/** A stretch of text cut where a tag begins or ends, each piece with the keys of the tags over it. */
export function pieces(text, from, to, tags) {
  const cuts = new Set([from, to]);
  for (const tag of tags) {
    cuts.add(Math.min(to, Math.max(from, tag.from)));
    cuts.add(Math.min(to, Math.max(from, tag.to)));
  }
  const places = [...cuts].sort((a, b) => a - b);
  return places.slice(1).map((end, i) => ({
    text: text.slice(places[i], end),
    keys: tags.filter(tag => tag.from <= places[i] && tag.to >= end).map(tag => tag.key),
  }));
}

/** What a decision is kept as, with the tags of the file it was made on, so that it holds when the corrected file is opened. */
export const kept = ({ chosen, phases }, outline) => JSON.stringify({ chosen, phases, outline });

/** Decisions as they were kept, for the file as it is now; what cannot be read is none. */
export function restored(text, outline) {
  try {
    const { chosen, phases, outline: before } = JSON.parse(text);
    const known = Object.fromEntries(Object.entries(chosen).filter(([, value]) => typeof value === 'boolean'));
    return { ...carried({ chosen: known, phases: { ...phases }, outline: before }, outline), past: [] };
  } catch {
    return undecided();
  }
}
