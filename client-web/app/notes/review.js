/** Notes beside the reps they propose: words and tags light up together, each tag is decided on, reps are split and merged. */
import { capital, choice, counted, el, show } from '../parts/elements.js';
import { clock } from '../parts/reps.js';
import { label } from '../wire/labels.js';
import { conceptBox } from './concept-box.js';
import { add, arranged, back, change, cueAt, decide, merge, nameOf, neighbor, nextOpen, phaseOf, placeFor, readd, setPhase, split, stretches, sure } from './notes-state.js';
import { picked } from './picked.js';
import { tagLine } from './tag-list.js';

const GENERAL = { replay: 'Looked at again', summary: 'In general', chatter: 'Of no rep' };

/**
 * @param {{sheet: object, state: object, phases: string[], onchange: (state: object, reps: object[]) => void, onrep: (rep: object) => void, oncue: (cue: object) => void}} what
 */
export function review({ sheet, state: before, phases, onchange, onrep, oncue }) {
  let state = before;
  let lit = null;
  let parts = [];
  let reps = [];
  let tags = [];
  let home = new Map();
  let drawn = new Map();
  const lines = new Map();
  const words = new Map();
  const selects = new Map();
  const board = el('div', { class: 'stretches' });

  function light(key, { go = false } = {}) {
    for (const one of [lit, key]) {
      for (const word of words.get(one) ?? []) word.classList.toggle('lit', one === key);
    }
    const former = lit;
    lit = key;
    for (const one of [former, key]) lines.get(one)?.draw(state.chosen[one], one === key);
    if (home.has(key) && home.get(key).at !== home.get(former)?.at) onrep(home.get(key));
    if (go) lines.get(key)?.root.focus({ preventScroll: true });
    if (go) lines.get(key)?.root.scrollIntoView({ block: 'nearest' });
  }

  /** Takes a new state over. Only stretches in which something else stands now are drawn anew. */
  function changed(now, key = lit) {
    const anew = ['changed', 'added', 'splits', 'merges'].some(name => now[name] !== state[name]) || !parts.length;
    const former = anew ? null : state;
    state = now;
    if (anew) arrange();
    const other = one => !former || former.chosen[one] !== state.chosen[one];
    for (const [one, line] of lines) if (other(one)) line.draw(state.chosen[one], one === lit);
    if (!former || former.phases !== state.phases) {
      const byPlace = new Map(reps.map(rep => [rep.at, rep]));
      for (const [at, select] of selects) select.value = phaseOf(byPlace.get(at) ?? { at }, state);
    }
    for (const [one, marks] of words) if (other(one)) marks.forEach(mark => mark.classList.toggle('rejected', state.chosen[one] === false));
    onchange(state, reps);
    if (anew && key && lines.has(key)) light(key, { go: true });
  }

  function arrange() {
    reps = arranged(sheet, state);
    parts = stretches(sheet, state);
    tags = parts.filter(part => part.rep > 0).flatMap(part => part.tags);
    home = new Map(reps.flatMap(rep => rep.tags.map(tag => [tag.key, rep])));
    const marks = parts.map(one => JSON.stringify([one.kind, one.at, one.textFrom, one.to, one.told && [one.told.at, one.told.part], one.joins && nameOf(one.joins), one.tags]));
    const former = drawn;
    drawn = new Map();
    const kept = new Set(marks.filter(mark => former.has(mark)));
    for (const [mark, { part: old }] of former) {
      if (kept.has(mark)) continue;
      for (const tag of old.tags) { lines.delete(tag.key); words.delete(tag.key); }
      if (old.told) selects.delete(old.told.at);
    }
    const nodes = parts.map((one, i) => {
      const made = kept.has(marks[i]) ? { part: one, node: former.get(marks[i]).node } : { part: one, node: part(one) };
      drawn.set(marks[i], made);
      return made.node;
    });
    const old = [...board.children];
    if (old.length !== nodes.length || old.some((node, i) => node !== nodes[i])) board.replaceChildren(...nodes);
  }

  const set = (key, value) => changed(decide(state, [key], state.chosen[key] === value ? null : value));

  function piece({ text, keys }) {
    if (!keys.length) return text;
    const mark = el('mark', { onpointerenter: () => light(keys[0]), onclick: () => light(keys[0], { go: true }) }, text);
    for (const key of keys) words.set(key, [...(words.get(key) ?? []), mark]);
    return mark;
  }

  function line(tag) {
    const rep = home.get(tag.key);
    const made = tagLine(tag, { decide: set, onlight: light, change: rep ? rename : null, remove: takeOut,
      split: rep && tag.added === undefined && tag.key !== rep.first ? one => changed(split(state, one.key)) : null });
    lines.set(tag.key, made);
    return made.root;
  }

  const takeOut = tag => changed(readd(state, tag.added), null);

  function rename(tag) {
    const { editor, root: row } = lines.get(tag.key);
    const close = () => { show(editor); row.focus({ preventScroll: true }); };
    const box = conceptBox({ says: `${label(tag.concept)} should be`, oncancel: close,
      onpick: slug => { show(editor); changed(tag.added === undefined ? change(state, tag, slug) : readd(state, tag.added, slug), tag.key); } });
    show(editor, box.root);
    opened(box);
  }

  /** Adds a tag to a rep: of the words that are marked in it, else at its end. */
  function addTo(rep, ask) {
    const marked = picked(board, parts);
    const inside = marked && marked.from >= rep.from && marked.from < rep.to ? marked : null;
    const ordinal = inside ? parts.find(one => one.rep > 0 && one.textFrom <= inside.from && inside.from < one.to)?.rep ?? rep.ordinal : [rep.ordinal, ...rep.joined].at(-1);
    const { after: behind, place } = inside ? placeFor(rep, ordinal, inside.from, state) : { after: rep.tags.findLast(tag => tag.added === undefined)?.key ?? '' };
    const close = () => show(ask);
    const box = conceptBox({ says: inside ? `“${inside.text}” is` : 'Add a tag', oncancel: close, onpick: slug => {
      close();
      const now = add(state, { concept: slug, text: inside?.text ?? '', rep: ordinal, after: behind }, place);
      changed(now, `+${place ?? state.added.length}`);
    } });
    show(ask, box.root);
    opened(box);
  }

  /** The field has the keyboard, and its list has room above the bar at the foot. */
  function opened({ root: row, input }) {
    input.focus({ preventScroll: true });
    row.scrollIntoView({ block: 'nearest' });
  }

  const next = rep => reps.slice(reps.findIndex(one => one.at === rep.at) + 1).find(one => one.first && one.tags.length);

  function mergeNext(rep) {
    const later = next(rep);
    if (later) changed(merge(state, later), rep.first);
  }

  const asks = new Map();

  function repHead(rep) {
    const select = choice(`phase-${nameOf(rep)}`, [['', 'phase not said'], ...phases.map(one => [one, one.replaceAll('-', ' ')])], phaseOf(rep, state), value => changed(setPhase(state, rep.at, value)));
    selects.set(rep.at, select);
    select.setAttribute('aria-label', `Phase of rep ${nameOf(rep)}`);
    const now = () => reps.find(one => one.at === rep.at) ?? rep;
    const ask = el('div', { class: 'tag-editor' });
    asks.set(rep.at, ask);
    const plain = (words, deed) => el('button', { type: 'button', class: 'plain small controls', onmousedown: event => event.preventDefault(), onclick: deed }, words);
    return [el('div', { class: 'row rep-head' }, el('h3', {}, `Rep ${nameOf(rep)}`), select,
      plain('Accept what is sure', () => changed(decide(state, sure(now(), state), true))), plain('Add a tag', () => addTo(now(), ask)), plain('Join with the next', () => mergeNext(now()))), ask];
  }

  const goesOn = (rep, one) => el('div', { class: 'row rep-head' }, el('p', { class: 'soft' }, `Goes on with rep ${nameOf(rep)}.`),
    el('button', { type: 'button', class: 'plain small controls', onclick: () => {
      const first = sheet.notes.reps.find(other => other.ordinal === one.rep).tags[0]?.key;
      if (first) changed(split(state, first), first);
    } }, 'Make it a rep of its own'));

  function part(one) {
    const own = el('p', { class: 'words', onclick: event => turnTo(one, event) }, one.pieces.map(piece));
    return el('section', { class: `stretch stretch-${one.kind}`, 'aria-label': one.told ? `Rep ${nameOf(one.told)}` : one.rep ? `Rep ${one.rep}` : GENERAL[one.kind] },
      el('div', { class: 'told' },
        el('p', { class: 'eyebrow' }, one.start === null ? null : el('button', { type: 'button', class: 'plain cue', 'aria-label': `Turn the film to ${clock(one.start)}`, onclick: () => oncue(cueAt(sheet.cues, one.from)) }, clock(one.start)), ' ',
          one.kind === 'rep' ? null : `${GENERAL[one.kind]}${one.rep ? `: rep ${one.rep}` : ''}`),
        own),
      el('div', { class: 'proposed' }, one.told ? repHead(one.told) : one.joins ? goesOn(one.joins, one) : null,
        one.tags.length ? el('ul', { class: 'bare' }, one.tags.map(line))
          : one.kind === 'rep' ? el('p', { class: 'soft' }, 'Nothing was recognized here.') : null));
  }

  /** A click on the words turns the film to the line they stand in. */
  function turnTo(one, event) {
    if (!getSelection().isCollapsed) return;
    const node = event.currentTarget;
    const spot = document.caretPositionFromPoint?.(event.clientX, event.clientY);
    const range = spot ? null : document.caretRangeFromPoint?.(event.clientX, event.clientY);
    const [at, offset] = spot ? [spot.offsetNode, spot.offset] : range ? [range.startContainer, range.startOffset] : [node, 0];
    const until = document.createRange();
    until.setStart(node, 0);
    until.setEnd(at, node.contains(at) ? offset : 0);
    const cue = cueAt(sheet.cues, one.textFrom + until.toString().length);
    if (cue) oncue(cue);
  }

  const { diagnostics, hidden } = sheet.notes;
  const root = el('div', {},
    diagnostics.length ? el('details', { class: 'brief', open: true }, el('summary', {}, `${counted(diagnostics.length, 'oddity', 'oddities')} in the file; what could be read is here`),
      el('ul', {}, diagnostics.slice(0, 100).map(one => el('li', {}, `Line ${one.line}: ${one.message}`)))) : null,
    board,
    hidden.length ? el('details', { class: 'brief' }, el('summary', {}, `${counted(hidden.length, 'mention')} left out`),
      el('ul', {}, hidden.slice(0, 500).map(one => el('li', {}, `“${one.text.replaceAll('\n', ' ')}” (${label(one.concept)}): ${one.why}`)))) : null);
  changed(state);

  const litRep = () => home.get(lit) ?? null;
  const litTag = () => tags.find(tag => tag.key === lit) ?? null;

  return {
    root,
    /** What keys do: walk, decide and go on, change, add, split, join, take back. */
    walk: step => { const key = neighbor(tags, lit, step); if (key) light(key, { go: true }); },
    choose(value) {
      if (!lit || !home.has(lit)) { const first = nextOpen(tags, null, state); if (first) light(first, { go: true }); return; }
      if (litTag()?.added !== undefined) {
        if (!value) takeOut(litTag());
        return;
      }
      changed(decide(state, [lit], value));
      const key = nextOpen(tags, lit, state);
      if (key) light(key, { go: true });
    },
    chooseSure() { if (litRep()) changed(decide(state, sure(litRep(), state), true)); },
    change() { if (litRep() && litTag()) rename(litTag()); },
    add() {
      const marked = picked(board, parts);
      const rep = (marked && reps.find(one => one.from <= marked.from && marked.from < one.to)) ?? litRep();
      if (rep) addTo(rep, asks.get(rep.at));
    },
    split() { if (litRep() && litTag()?.added === undefined && lit !== litRep().first) changed(split(state, lit)); },
    merge() { if (litRep()) mergeNext(litRep()); },
    undo: () => changed(back(state)),
    state: () => state,
  };
}

/** How far it is, in words. */
export const told = ({ open, accepted, rows, unphased }) => [
  `${counted(accepted, 'tag')} accepted on ${counted(rows, 'rep')}`, open ? `${counted(open, 'tag')} to look at` : 'every tag is decided on',
  unphased.length ? capital(`rep ${unphased.slice(0, 6).join(', ')}${unphased.length > 6 ? ' …' : ''}: say the phase`) : null].filter(Boolean).join(' · ');
