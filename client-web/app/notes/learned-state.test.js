import assert from 'node:assert/strict';
import { test } from 'node:test';
import { places, sentence, sorted } from './learned-state.js';

const one = { key: 'long-arm:pins him off', kind: 'name', concept: 'long-arm', words: 'pins him off', times: 3, accepted: 0, state: 'open', readAs: [],
  places: [{ file: 'friday.vtt', rep: 1 }, { file: 'friday.vtt', rep: 4 }, { file: 'monday.vtt', rep: 0 }] };
const name = slug => slug.replace('-', ' ');

test('what was tagged once stands apart from what was tagged often, and what is settled from both', () => {
  const once = { ...one, key: 'b', times: 1 };
  const warning = { ...one, key: 'c', kind: 'warning', times: 2 };
  const taken = { ...one, key: 'd', state: 'taken' };
  const { often, once: single, settled } = sorted([one, once, warning, taken]);
  assert.deepEqual([often, single, settled].map(list => list.map(it => it.key)), [[one.key, 'c'], ['b'], ['d']]);
});

test('a suggestion is a sentence that says what the words are read as now', () => {
  assert.equal(sentence(one, name), '“pins him off” was tagged as long arm 3 times.');
  assert.equal(sentence({ ...one, times: 1, readAs: ['rip'] }, name), '“pins him off” was tagged as long arm once. The book reads it as rip now.');
  assert.equal(sentence({ ...one, kind: 'warning', times: 2, accepted: 1 }, name), '“pins him off” was rejected as long arm twice, accepted 1 time.');
});

test('places are told by file', () => {
  assert.equal(places(one), 'friday.vtt, rep 1 and rep 4; monday.vtt, in general');
});
