import assert from 'node:assert/strict';
import { test } from 'node:test';
import { closed, EMPTY, moved, offered, picked, replaced, typed, wordAt } from './combobox-state.js';

const two = [{ value: 'rip', label: 'rip' }, { value: 'spin', label: 'spin' }];

test('a late answer to older words is dropped', () => {
  const now = typed(typed(EMPTY, 'ri'), 'rip');
  assert.equal(offered(now, 'ri', two), now);
});

test('arrows go round through nothing picked', () => {
  let state = offered(typed(EMPTY, 'r'), 'r', two);
  const seen = [];
  for (let i = 0; i < 4; i++) { state = moved(state, 1); seen.push(state.active); }
  assert.deepEqual(seen, [0, 1, -1, 0]);
  assert.equal(moved(offered(typed(EMPTY, 'r'), 'r', two), -1).active, 1);
});

test('nothing is picked from a closed list', () => {
  const state = moved(offered(typed(EMPTY, 'r'), 'r', two), 1);
  assert.deepEqual(picked(state), two[0]);
  assert.equal(picked(closed(state)), null);
});

test('an eager field has its first option picked at once', () =>
  assert.deepEqual(picked(offered(typed(EMPTY, 'r'), 'r', two, true)), two[0]));

test('the word under the caret of an exchange stands between arrows and brackets', () => {
  const text = 'bull-rush > [sits d] > pull';
  assert.deepEqual(wordAt(text, 17, /[>[\]@]/), { from: 13, to: 19, word: 'sits d' });
  assert.deepEqual(wordAt(text, text.length, /[>[\]@]/), { from: 23, to: 27, word: 'pull' });
  assert.deepEqual(wordAt('', 0, /;/), { from: 0, to: 0, word: '' });
});

test('a word is replaced in its place', () =>
  assert.deepEqual(replaced('a > [sits d] > b', { from: 5, to: 11 }, 'sits-down'), { text: 'a > [sits-down] > b', caret: 14 }));
