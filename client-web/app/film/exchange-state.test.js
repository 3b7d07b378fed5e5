import assert from 'node:assert/strict';
import { test } from 'node:test';
import { helped, steps, whose } from './exchange-state.js';

test('steps are told apart by brackets, hands by @', () =>
  assert.deepEqual(steps('long-arm@inside > [over-set] > arm-over > '), [
    { by: 'him', words: 'long-arm', hand: 'inside' }, { by: 'blocker', words: 'over-set', hand: '' }, { by: 'him', words: 'arm-over', hand: '' }]));

test('nothing typed is no step', () => assert.deepEqual(steps(' > [] > '), []));

test('the caret stands in his step or in the blocker\'s', () => {
  const text = 'bull-rush > [sits-down] > pull';
  assert.equal(whose(text, 4), 'him');
  assert.equal(whose(text, 16), 'blocker');
  assert.equal(whose(text, text.length), 'him');
});

/** Types keys one by one as a hand would. */
const typedKeys = keys => [...keys].reduce(({ text, caret }, key) => helped(text, caret, key)
  ?? { text: text.slice(0, caret) + key + text.slice(caret), caret: caret + 1 }, { text: '', caret: 0 });

test('the hands are helped: blanks around >, both brackets', () => {
  assert.deepEqual(typedKeys('bull-rush>[sits-down>push-pull'), { text: 'bull-rush > [sits-down] > push-pull', caret: 35 });
  assert.equal(typedKeys('bull-rush > [sits-down] > push-pull').text, 'bull-rush > [sits-down] > push-pull');
  assert.deepEqual(typedKeys('bull-rush>[sits-down]>push-pull').text, 'bull-rush > [sits-down] > push-pull');
});
