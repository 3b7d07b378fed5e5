/** Notes beside the reps they propose: words and tags light up together, each tag is decided on. */
import { capital, choice, counted, el } from '../parts/elements.js';
import { clock } from '../parts/reps.js';
import { label } from '../wire/labels.js';
import { back, decide, neighbor, nextOpen, phaseOf, setPhase, stretches, sure } from './notes-state.js';
import { tagLine } from './tag-list.js';

const GENERAL = { replay: 'Looked at again', summary: 'In general', chatter: 'Of no rep' };

/**
 * @param {{sheet: object, state: object, phases: string[], onchange: (state: object) => void, onrep: (rep: object) => void}} what
 */
export function review({ sheet, state: before, phases, onchange, onrep }) {
  let state = before;
  let lit = null;
  const parts = stretches(sheet);
  const tags = parts.filter(part => part.rep > 0).flatMap(part => part.tags);
  const home = new Map(sheet.notes.reps.flatMap(rep => rep.tags.map(tag => [tag.key, rep])));
  const lines = new Map();
  const words = new Map();
  const selects = new Map();

  function light(key, { go = false } = {}) {
    for (const one of [lit, key]) {
      for (const word of words.get(one) ?? []) word.classList.toggle('lit', one === key);
    }
    const former = lit;
    lit = key;
    for (const one of [former, key]) lines.get(one)?.draw(state.chosen[one], one === key);
    if (home.has(key) && home.get(key) !== home.get(former)) onrep(home.get(key));
    if (go) lines.get(key)?.root.focus({ preventScroll: true });
    if (go) lines.get(key)?.root.scrollIntoView({ block: 'nearest' });
  }

  function changed(now) {
    state = now;
    for (const [key, line] of lines) line.draw(state.chosen[key], key === lit);
    for (const [rep, select] of selects) select.value = phaseOf(rep, state);
    for (const [key, marks] of words) marks.forEach(mark => mark.classList.toggle('rejected', state.chosen[key] === false));
    onchange(state);
  }

  const set = (key, value) => changed(decide(state, [key], state.chosen[key] === value ? null : value));

  function piece({ text, keys }) {
    if (!keys.length) return text;
    const mark = el('mark', { onpointerenter: () => light(keys[0]), onclick: () => light(keys[0], { go: true }) }, text);
    for (const key of keys) words.set(key, [...(words.get(key) ?? []), mark]);
    return mark;
  }

  function line(tag) {
    const made = tagLine(tag, { decide: set, onlight: light });
    lines.set(tag.key, made);
    return made.root;
  }

  function repHead(rep) {
    const select = choice(`phase-${rep.ordinal}`, [['', 'phase not said'], ...phases.map(one => [one, one.replaceAll('-', ' ')])], phaseOf(rep, state), value => changed(setPhase(state, rep.ordinal, value)));
    selects.set(rep, select);
    select.setAttribute('aria-label', `Phase of rep ${rep.ordinal}`);
    return el('div', { class: 'row rep-head' }, el('h3', {}, `Rep ${rep.ordinal}`), select,
      el('button', { type: 'button', class: 'plain small controls', onclick: () => changed(decide(state, sure(rep, state), true)) }, 'Accept what is sure'));
  }

  const part = one => el('section', { class: `stretch stretch-${one.kind}`, 'aria-label': one.rep ? `Rep ${one.rep}` : GENERAL[one.kind] },
    el('div', { class: 'told' },
      el('p', { class: 'eyebrow' }, one.start === null ? null : `${clock(one.start)} `, one.kind === 'rep' ? null : `${GENERAL[one.kind]}${one.rep ? `: rep ${one.rep}` : ''}`),
      el('p', { class: 'words' }, one.pieces.map(piece))),
    el('div', { class: 'proposed' }, one.told ? repHead(one.told) : null,
      one.tags.length ? el('ul', { class: 'bare' }, one.tags.map(line))
        : one.kind === 'rep' ? el('p', { class: 'soft' }, 'Nothing was recognized here.') : null));

  const { diagnostics, hidden } = sheet.notes;
  const root = el('div', {},
    diagnostics.length ? el('details', { class: 'brief', open: true }, el('summary', {}, `${counted(diagnostics.length, 'oddity', 'oddities')} in the file; what could be read is here`),
      el('ul', {}, diagnostics.slice(0, 100).map(one => el('li', {}, `Line ${one.line}: ${one.message}`)))) : null,
    el('div', { class: 'stretches' }, parts.map(part)),
    hidden.length ? el('details', { class: 'brief' }, el('summary', {}, `${counted(hidden.length, 'mention')} left out`),
      el('ul', {}, hidden.slice(0, 500).map(one => el('li', {}, `“${one.text.replaceAll('\n', ' ')}” (${label(one.concept)}): ${one.why}`)))) : null);
  changed(state);

  return {
    root,
    /** What keys do: walk, decide and go on, take back. */
    walk: step => { const next = neighbor(tags, lit, step); if (next) light(next, { go: true }); },
    choose(value) {
      if (!lit || !home.has(lit)) { const first = nextOpen(tags, null, state); if (first) light(first, { go: true }); return; }
      changed(decide(state, [lit], value));
      const next = nextOpen(tags, lit, state);
      if (next) light(next, { go: true });
    },
    chooseSure() {
      const rep = home.get(lit);
      if (rep) changed(decide(state, sure(rep, state), true));
    },
    undo: () => changed(back(state)),
    state: () => state,
  };
}

/** How far it is, in words. */
export const told = ({ open, accepted, rows, unphased }) => [
  `${counted(accepted, 'tag')} accepted on ${counted(rows, 'rep')}`, open ? `${counted(open, 'tag')} to look at` : 'every tag is decided on',
  unphased.length ? capital(`rep ${unphased.slice(0, 6).join(', ')}${unphased.length > 6 ? ' …' : ''}: say the phase`) : null].filter(Boolean).join(' · ');
