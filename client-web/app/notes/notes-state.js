/** Proposed reps and what a person decides on them; nothing here touches the document. */

/** @typedef {{key: string, concept: string, assertion: string, actor: string, from: number, to: number, band: string}} Tag */
/**
 * What a person decided, as it is kept; `past` leads back.
 * @typedef {{chosen: Object<string, boolean>, phases: Object<string, string>, changed: Object<string, string>,
 *   added: {concept: string, text: string, rep: number, after: string}[], splits: string[], merges: string[], past: Array}} Decisions
 */

const FIELDS = ['chosen', 'phases', 'changed', 'added', 'splits', 'merges'];

/** Decisions that were kept, or none. */
export const begun = (kept = {}) => ({ chosen: {}, phases: {}, changed: {}, added: [], splits: [], merges: [], ...kept, past: [] });

/** Nothing decided yet. */
export const undecided = () => begun();

/** What is kept of them. */
export const decided = state => Object.fromEntries(FIELDS.map(name => [name, state[name]]));

const after = (state, change) => ({ ...state, ...change, past: [...state.past, decided(state)] });

const without = (object, key) => Object.fromEntries(Object.entries(object).filter(([name]) => name !== key));

/** Decides on some tags; null takes the decision away. */
export function decide(state, keys, value) {
  const chosen = { ...state.chosen };
  for (const key of keys) {
    if (value === null) delete chosen[key];
    else chosen[key] = value;
  }
  return after(state, { chosen });
}

/** Says what kind of play a rep was. `at` is the ordinal of the rep, or the tag at which it was split off. */
export const setPhase = (state, at, phase) => after(state, { phases: { ...state.phases, [at]: phase } });

/** Makes a tag one of another concept, which accepts it. */
export const change = (state, tag, concept) => after(state, {
  chosen: { ...state.chosen, [tag.key]: true },
  changed: concept === (tag.was ?? tag.concept) ? without(state.changed, tag.key) : { ...state.changed, [tag.key]: concept },
});

/** Adds a tag, before the added one at a place where that is said. */
export const add = (state, one, place = state.added.length) => after(state, { added: state.added.toSpliced(place, 0, one) });

/** Takes an added tag out, or makes it one of another concept. */
export const readd = (state, place, concept = null) =>
  after(state, { added: state.added.toSpliced(place, 1, ...(concept ? [{ ...state.added[place], concept }] : [])) });

/** Begins a rep at a tag. */
export const split = (state, key) => (state.merges.includes(key)
  ? after(state, { merges: state.merges.filter(one => one !== key) })
  : after(state, { splits: [...state.splits, key] }));

/** Lets a rep go on with the one before; `at` and `first` are those of the later one. */
export const merge = (state, { at, first }) => (state.splits.includes(at)
  ? after(state, { splits: state.splits.filter(one => one !== at), phases: without(state.phases, at) })
  : after(state, { merges: [...state.merges, first] }));

/** The state before the last decision. */
export const back = state => (state.past.length ? { ...begun(state.past.at(-1)), past: state.past.slice(0, -1) } : state);

/** The tags of a rep that may be accepted in one go: exact matches that nothing had to be read into. */
export const sure = (rep, state) => rep.tags.filter(tag => tag.band === 'sure' && isOpen(tag, state)).map(tag => tag.key);

/** The phase of a rep: chosen, or read. */
export const phaseOf = (rep, state) => state.phases[rep.at] ?? rep.phase ?? '';

/**
 * The reps as they are left: split, merged, with changed and added tags. Each has the place by which its phase is kept (`at`), the key of its
 * first proposed tag (`first`), and what it began in (`ordinal`, `part`). The server does the same for the log; both are held to the same cases.
 */
export function arranged({ notes, text = '', cues }, state) {
  const reps = [];
  for (const rep of notes.reps) {
    const own = items(rep, state, text);
    const first = rep.tags[0]?.key ?? null;
    const before = first && state.merges.includes(first) ? reps.findLast(one => one.tags.length) : null;
    if (before) {
      before.phase ??= rep.phase;
      before.joined.push(rep.ordinal);
      Object.assign(before, { end: rep.end, to: rep.to });
    }
    let here = before ?? { at: String(rep.ordinal), first, ordinal: rep.ordinal, part: '', phase: rep.phase ?? null, start: rep.start, end: rep.end, from: rep.from, to: rep.to, joined: [], tags: [] };
    if (!before) reps.push(here);
    let parts = 0;
    for (const tag of own) {
      if (tag.added === undefined && tag.key !== first && state.splits.includes(tag.key)) {
        const cue = cueAt(cues, tag.from)?.start ?? null;
        const start = cue !== null && (here.start === null || cue > here.start) ? cue : here.start;
        const isOver = start !== null && rep.end !== null && start > rep.end;
        const next = { ...here, at: tag.key, first: tag.key, ordinal: rep.ordinal, part: partName(++parts), phase: rep.phase ?? null, start, end: isOver ? null : rep.end, from: tag.from, to: rep.to, joined: [], tags: [] };
        if (start !== null && (here.start === null || start > here.start)) here.end = start;
        here.to = tag.from;
        here = next;
        reps.push(here);
      }
      here.tags.push(tag);
    }
  }
  return reps;
}

const partName = n => (n < 26 ? String.fromCharCode(97 + n) : `-${n}`);

/** The name of a rep, as the log will have it. */
export const nameOf = rep => `${rep.ordinal}${rep.part}`;

/** The tags of a proposed rep with those that were added, each behind the tag it was put behind. */
function items(rep, state, text) {
  const own = state.added.map((one, place) => ({ ...one, place })).filter(one => one.rep === rep.ordinal);
  const made = (one, from) => {
    const at = one.text ? text.toLowerCase().indexOf(one.text.toLowerCase(), from) : -1;
    const found = at >= 0 && at <= rep.to;
    return { key: `+${one.place}`, added: one.place, concept: one.concept, text: one.text, assertion: 'performed', actor: null, side: null, hand: null, target: null, order: null, opinion: null,
      from: found ? at : from, to: found ? at + one.text.length : from, band: 'sure', because: [] };
  };
  const known = new Set(rep.tags.map(tag => tag.key));
  return [
    ...own.filter(one => !one.after).map(one => made(one, rep.from)),
    ...rep.tags.flatMap(tag => [
      state.changed[tag.key] ? { ...tag, was: tag.concept, concept: state.changed[tag.key] } : tag,
      ...own.filter(one => one.after === tag.key).map(one => made(one, tag.to))]),
    ...own.filter(one => one.after && !known.has(one.after)).map(one => made(one, rep.to)),
  ];
}

/** Whether a tag will stand in the log. */
export const holds = (tag, state) => tag.added !== undefined || state.chosen[tag.key] === true;

/** Where words that were picked belong in a rep: the tag they stand behind, and the place among the added ones there. */
export function placeFor(rep, ordinal, from, state) {
  const before = rep.tags.filter(tag => tag.added === undefined && tag.from < from).at(-1);
  const behind = before?.key ?? '';
  const later = rep.tags.find(tag => tag.added !== undefined && tag.from > from && state.added[tag.added].after === behind && state.added[tag.added].rep === ordinal);
  return { after: behind, place: later?.added };
}

const isOpen = (tag, state) => tag.added === undefined && state.chosen[tag.key] === undefined;

/** How far it is: decided and accepted tags, reps that will be rows, and those that still want a phase. */
export function progress(reps, state) {
  const tags = reps.flatMap(rep => rep.tags);
  const rows = reps.filter(rep => rep.tags.some(tag => holds(tag, state)));
  return {
    tags: tags.length,
    open: tags.filter(tag => isOpen(tag, state)).length,
    accepted: tags.filter(tag => holds(tag, state)).length,
    rows: rows.length,
    unphased: rows.filter(rep => !phaseOf(rep, state)).map(nameOf),
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
  return [...tags.slice(at), ...tags.slice(0, at)].find(tag => isOpen(tag, state))?.key ?? null;
}

/**
 * The notes in stretches, each with its words, its tags and, where a rep begins, the rep; the words of all make the whole text. A stretch is cut
 * where a rep was split; `joins` is the rep that a merged one goes on with.
 */
export function stretches({ notes, text, cues }, state = undecided()) {
  const reps = arranged({ notes, text, cues }, state);
  const byPlace = new Map(reps.map(rep => [rep.at, rep]));
  const home = new Map(reps.flatMap(rep => [rep.ordinal, ...rep.joined].map(ordinal => [ordinal, rep])));
  const marks = [...reps.flatMap(rep => rep.tags), ...notes.statements].sort((a, b) => a.from - b.from || a.to - b.to);
  const begins = reps.filter(rep => rep.part).map(rep => ({ at: rep.at, from: rep.from }));
  const told = new Set();
  const whole = notes.segments.length ? notes.segments : text ? [{ kind: 'chatter', rep: 0, from: 0, to: text.length }] : [];
  const parts = whole.flatMap(segment => cut(segment, begins));
  let tag = 0;
  let shown = 0;
  return parts.map((segment, i) => {
    const own = [];
    while (tag < marks.length && (marks[tag].from < segment.to || i + 1 === parts.length || marks[tag].from < parts[i + 1].from)) own.push(marks[tag++]);
    const first = !segment.at && segment.kind === 'rep' && !told.has(segment.rep);
    if (first) told.add(segment.rep);
    const from = shown;
    shown = i + 1 < parts.length ? untilNext(text, segment.to, parts[i + 1].from) : text.length;
    const begun = first ? byPlace.get(String(segment.rep)) : segment.at ? byPlace.get(segment.at) : null;
    return {
      ...segment, textFrom: from, tags: own, told: begun ?? null, joins: first && !begun ? home.get(segment.rep) ?? null : null,
      start: cueAt(cues, segment.from)?.start ?? null,
      pieces: pieces(text, from, shown, own),
    };
  });
}

/** A stretch in pieces, each but the first with the tag at which a rep begins. */
function cut(segment, begins) {
  const places = begins.filter(one => one.from >= segment.from && one.from < segment.to && segment.rep > 0).sort((a, b) => a.from - b.from);
  const ends = [...places.map(one => one.from), segment.to];
  const rest = places.map((one, i) => ({ ...segment, kind: 'rep', from: one.from, to: ends[i + 1], at: one.at }));
  return places[0]?.from === segment.from ? rest : [{ ...segment, to: ends[0] }, ...rest];
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

/** What notes propose, in short: the keys of the tags of each rep in order, and last of what was said in general. */
export const outline = notes => [...notes.reps.map(rep => rep.tags), ...(notes.statements?.length ? [notes.statements] : [])].map(tags => tags.map(tag => tag.key));
