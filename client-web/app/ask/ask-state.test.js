import assert from 'node:assert/strict';
import { test } from 'node:test';
import { changeable, extended, marked, reworded } from './ask-state.js';

const question = 'who wrong-arms kick-outs against tackles';

test('a chip is replaced where it stood', () =>
  assert.equal(reworded(question, { from: 15, to: 24 }, 'reach blocks'), 'who wrong-arms reach blocks against tackles'));

test('a chip that is left out leaves one blank', () =>
  assert.equal(reworded(question, { from: 15, to: 24 }, ''), 'who wrong-arms against tackles'));

test('only chips that stand on words can be changed', () => {
  assert.ok(changeable({ from: 0, to: 3 }));
  assert.ok(!changeable({ from: null, to: null }));
  assert.ok(!changeable({ from: 3, to: 3 }));
});

test('words go in front of the question mark', () =>
  assert.equal(extended('who bulls? ', 'at least 10 times'), 'who bulls at least 10 times'));

test('marks are spans of text, whatever is in it', () =>
  assert.deepEqual(marked('<b>bull</b> rush', [[3, 7]]), [
    { text: '<b>', mark: false }, { text: 'bull', mark: true }, { text: '</b> rush', mark: false }]));

test('spans that overlap or run out of the text are passed over', () =>
  assert.deepEqual(marked('abc', [[0, 2], [1, 3], [2, 9]]), [{ text: 'ab', mark: true }, { text: 'c', mark: false }]));
