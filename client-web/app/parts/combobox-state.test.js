import assert from 'node:assert/strict';
import { test } from 'node:test';
import { closed, EMPTY, fits, moved, offered, picked, replaced, typed, wordAt } from './combobox-state.js';

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

test('an eager field picks no option that only comes near the words', () => {
  const near = offered(typed(EMPTY, 'rap'), 'rap', two, fits);
  assert.ok(near.open);
  assert.equal(picked(near), null);
  assert.deepEqual(picked(moved(near, 1)), two[0]);
  assert.deepEqual(picked(offered(typed(EMPTY, 'ri'), 'ri', two, fits)), two[0]);
});

test('an option fits words that its label or its other name begins with', () => {
  assert.ok(fits({ label: 'bull rush', gloss: '' }, ' Bull-r'));
  assert.ok(fits({ label: 'bull rush', gloss: 'power rush' }, 'power'));
  assert.ok(!fits({ label: 'bull rush', gloss: '' }, 'rush'));
  assert.ok(!fits({ label: 'bull rush' }, ' '));
});

test('that nothing was found is known until somebody types on', () => {
  const none = offered(typed(EMPTY, 'zz'), 'zz', []);
  assert.ok(none.none);
  assert.ok(!typed(none, 'z').none);
  assert.ok(!closed(none).none);
});

test('the word under the caret of an exchange stands between arrows and brackets', () => {
  const text = 'bull-rush > [sits d] > pull';
  assert.deepEqual(wordAt(text, 17, /[>[\]@]/), { from: 13, to: 19, word: 'sits d' });
  assert.deepEqual(wordAt(text, text.length, /[>[\]@]/), { from: 23, to: 27, word: 'pull' });
  assert.deepEqual(wordAt('', 0, /;/), { from: 0, to: 0, word: '' });
});

test('a word is replaced in its place', () =>
  assert.deepEqual(replaced('a > [sits d] > b', { from: 5, to: 11 }, 'sits-down'), { text: 'a > [sits-down] > b', caret: 14 }));
