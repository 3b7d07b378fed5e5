import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readFileSync } from 'node:fs';
import { add, arranged, back, begun, change, cueAt, decide, decided, holds, merge, nameOf, neighbor, nextOpen, outline, phaseOf, pieces, placeFor, progress, readd, setPhase, split, stretches, sure, undecided } from './notes-state.js';

const tag = (key, from, to, band = 'sure') => ({ key, from, to, band });
const reps = [
  { at: '1', ordinal: 1, part: '', phase: 'run', tags: [tag('a', 0, 3), tag('b', 4, 8, 'weak')] },
  { at: '2', ordinal: 2, part: '', phase: null, tags: [tag('c', 9, 12)] },
];

test('a decision is counted, and taken back', () => {
  const state = decide(undecided(), ['a', 'c'], true);
  assert.deepEqual(progress(reps, state), { tags: 3, open: 1, accepted: 2, rows: 2, unphased: ['2'] });
  assert.deepEqual(back(state), undecided());
  assert.deepEqual(back(undecided()), undecided());
});

test('a phase that is chosen goes before the one that was read', () => {
  const state = setPhase(undecided(), 2, 'drop');
  assert.equal(phaseOf(reps[1], state), 'drop');
  assert.equal(phaseOf(reps[0], state), 'run');
  assert.deepEqual(progress(reps, decide(state, ['c'], true)).unphased, []);
});

test('only what is sure and open is accepted in one go', () => {
  assert.deepEqual(sure(reps[0], undecided()), ['a']);
  assert.deepEqual(sure(reps[0], decide(undecided(), ['a'], false)), []);
});

test('one walks from tag to tag, and on to the next open one', () => {
  const all = reps.flatMap(rep => rep.tags);
  assert.equal(neighbor(all, 'a', 1), 'b');
  assert.equal(neighbor(all, 'a', -1), null);
  assert.equal(neighbor(all, null, 1), 'a');
  assert.equal(nextOpen(all, 'b', decide(undecided(), ['c'], true)), 'a');
  assert.equal(nextOpen(all, 'a', decide(undecided(), ['a', 'b', 'c'], true)), null);
});

test('words are cut where tags begin and end, overlapping ones too, and nothing is lost', () => {
  const cut = pieces('chop club rip', 0, 13, [tag('a', 0, 4), tag('b', 0, 9), tag('c', 10, 13)]);
  assert.deepEqual(cut.map(piece => [piece.text, piece.keys]), [['chop', ['a', 'b']], [' club', ['b']], [' ', []], ['rip', ['c']]]);
});

test('a rep is told once; a replay and what is said in general have their own tags', () => {
  const sheet = {
    text: 'rip sack again dip he spins', cues: [{ start: 4, from: 0 }, { start: 9, from: 9 }],
    notes: {
      segments: [{ kind: 'rep', rep: 1, from: 0, to: 8 }, { kind: 'replay', rep: 1, from: 9, to: 18 }, { kind: 'summary', rep: 0, from: 19, to: 27 }],
      reps: [{ ordinal: 1, tags: [tag('a', 0, 3), tag('d', 15, 18)] }], statements: [tag('s', 22, 27)],
    },
  };
  const [first, again, general] = stretches(sheet);
  assert.equal(first.told.ordinal, 1);
  assert.deepEqual([first.start, again.start], [4, 9]);
  assert.equal(again.told, null);
  assert.deepEqual([first, again, general].map(one => one.tags.map(t => t.key)), [['a'], ['d'], ['s']]);
  assert.equal(cueAt([], 3), null);
});

test('the stretches together are the text, with every mark between them', () => {
  const text = 'Well. Wide 9, dips. "Sack." Next one: (bull rush), stood up!\nEnd.';
  const at = word => ({ from: text.indexOf(word), to: text.indexOf(word) + word.length });
  const sheet = {
    text, cues: [],
    notes: {
      segments: [{ kind: 'rep', rep: 1, from: at('Wide').from, to: at('Sack').to }, { kind: 'rep', rep: 2, from: at('bull').from, to: at('stood up').to }],
      reps: [{ ordinal: 1, tags: [{ key: 'a', ...at('Sack') }] }, { ordinal: 2, tags: [{ key: 'b', ...at('bull rush') }] }], statements: [],
    },
  };
  const words = stretches(sheet).map(one => one.pieces.map(piece => piece.text).join(''));
  assert.deepEqual(words, ['Well. Wide 9, dips. "Sack." Next one: ', '(bull rush), stood up!\nEnd.']);
  assert.deepEqual(stretches({ text: 'Hm.', cues: [], notes: { segments: [], reps: [], statements: [] } })[0].pieces, [{ text: 'Hm.', keys: [] }]);
});

const cases = JSON.parse(readFileSync(new URL('../../../server/src/test/resources/notes/review-cases.json', import.meta.url)));

/** The reps of the cases, with the keys that the server gives. */
function proposed() {
  const given = new Map();
  const key = (concept, text) => {
    const nth = (given.get(concept) ?? 0) + 1;
    given.set(concept, nth);
    return `${concept}${nth === 1 ? '' : `#${nth}`}:${text}`;
  };
  return {
    cues: cases.cues.map(([from, start]) => ({ from, start })),
    notes: { statements: [], reps: cases.reps.map(rep => ({ ...rep, tags: rep.tags.map(([concept, text, from]) => ({ key: key(concept, text), concept, text, from, to: from + text.length, band: 'sure', because: [] })) })) },
  };
}

for (const { name, decided: what, wanted } of cases.cases) {
  test(`as in the log: ${name}`, () => {
    const state = begun(what);
    const got = arranged(proposed(), state).map(rep => [nameOf(rep), phaseOf(rep, state) || null, rep.start, rep.end, rep.tags.filter(one => holds(one, state)).map(one => one.concept)]);
    assert.deepEqual(got.filter(([, , , , tags]) => tags.length), wanted);
  });
}

test('whatever was done is taken back step by step', () => {
  const steps = [state => decide(state, ['a'], true), state => setPhase(state, '1', 'run'), state => change(state, { key: 'a', concept: 'x' }, 'y'),
    state => add(state, { concept: 'x', text: '', rep: 1, after: '' }), state => readd(state, 0, 'z'), state => split(state, 'b'), state => merge(state, { at: '2', first: 'c' }), state => readd(state, 0)];
  const states = [undecided()];
  for (const step of steps) states.push(step(states.at(-1)));
  let state = states.at(-1);
  for (const former of states.toReversed().slice(1)) {
    state = back(state);
    assert.deepEqual(decided(state), decided(former));
  }
});

test('a split is joined again, and a joined rep split', () => {
  const both = split(setPhase(undecided(), 'b', 'run'), 'b');
  assert.deepEqual(decided(merge(both, { at: 'b', first: 'b' })), decided(undecided()));
  assert.deepEqual(split(merge(undecided(), { at: '2', first: 'c' }), 'c').merges, []);
});

test('a tag changed back to what was read is not changed', () => {
  const changed = change(undecided(), { key: 'a', concept: 'x' }, 'y');
  assert.deepEqual(changed.changed, { a: 'y' });
  assert.deepEqual(change(changed, { key: 'a', concept: 'y', was: 'x' }, 'x').changed, {});
});

test('marked words find their place among the tags, the added ones too', () => {
  const text = 'bull rush, pins him off, rips, chops, sack';
  const sheet = { text, cues: [], notes: { statements: [], reps: [{ ordinal: 1, phase: null, start: null, end: null, from: 0, to: text.length,
    tags: ['bull rush', 'rips'].map(words => tag(words, text.indexOf(words), text.indexOf(words) + words.length)) }], segments: [{ kind: 'rep', rep: 1, from: 0, to: text.length }] } };
  const say = (state, words) => {
    const [rep] = arranged(sheet, state);
    const { after, place } = placeFor(rep, 1, text.indexOf(words), state);
    return add(state, { concept: words, text: words, rep: 1, after }, place);
  };
  const state = say(say(say(undecided(), 'sack'), 'pins him off'), 'chops');
  assert.deepEqual(state.added.map(one => [one.text, one.after]), [['chops', 'rips'], ['sack', 'rips'], ['pins him off', 'bull rush']]);
  assert.deepEqual(arranged(sheet, state)[0].tags.map(one => text.slice(one.from, one.to)), ['bull rush', 'pins him off', 'rips', 'chops', 'sack']);
});

test('a stretch is cut where its rep was split, and no word is lost', () => {
  const text = 'Rips, sack. Then spins, hurry. Next one bull rush.';
  const at = word => ({ key: word, concept: word, from: text.indexOf(word), to: text.indexOf(word) + word.length, because: [] });
  const sheet = { text, cues: [], notes: { statements: [], segments: [{ kind: 'rep', rep: 1, from: 0, to: 29 }, { kind: 'rep', rep: 2, from: 31, to: text.length - 1 }],
    reps: [{ ordinal: 1, phase: null, from: 0, to: 29, start: null, end: null, tags: ['Rips', 'sack', 'spins', 'hurry'].map(at) }, { ordinal: 2, phase: null, from: 31, to: 49, start: null, end: null, tags: [at('bull rush')] }] } };
  const shown = state => stretches(sheet, state).map(one => [one.told ? nameOf(one.told) : one.joins ? `joins ${nameOf(one.joins)}` : '', one.tags.map(t => t.key).join(' '), one.pieces.map(piece => piece.text).join('')]);
  assert.deepEqual(shown(split(undecided(), 'spins')), [['1', 'Rips sack', 'Rips, sack. Then '], ['1b', 'spins hurry', 'spins, hurry. '], ['2', 'bull rush', 'Next one bull rush.']]);
  assert.deepEqual(shown(merge(undecided(), { at: '2', first: 'bull rush' })), [['1', 'Rips sack spins hurry', 'Rips, sack. Then spins, hurry. '], ['joins 1', 'bull rush', 'Next one bull rush.']]);
  assert.deepEqual(outline(sheet.notes), [['Rips', 'sack', 'spins', 'hurry'], ['bull rush']]);
});
