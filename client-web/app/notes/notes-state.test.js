import assert from 'node:assert/strict';
import { test } from 'node:test';
import { back, cueAt, decide, kept, neighbor, nextOpen, phaseOf, pieces, progress, restored, setPhase, stretches, sure, undecided } from './notes-state.js';

const tag = (key, from, to, band = 'sure') => ({ key, from, to, band });
const reps = [
  { ordinal: 1, phase: 'run', tags: [tag('a', 0, 3), tag('b', 4, 8, 'weak')] },
  { ordinal: 2, phase: null, tags: [tag('c', 9, 12)] },
];

test('a decision is counted, and taken back', () => {
  const state = decide(undecided(), ['a', 'c'], true);
  assert.deepEqual(progress(reps, state), { tags: 3, open: 1, accepted: 2, rows: 2, unphased: [2] });
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

test('decisions outlive a visit; nonsense is no decision', () => {
  const state = setPhase(decide(undecided(), ['a'], false), 1, 'run');
  assert.deepEqual(restored(kept(state, [['a', 'b'], ['c']]), [['n'], ['a', 'b'], ['c']]), { chosen: { a: false }, phases: { 2: 'run' }, past: [] });
  assert.deepEqual(restored('nix', []), undecided());
  assert.deepEqual(restored(null, []), undecided());
});
