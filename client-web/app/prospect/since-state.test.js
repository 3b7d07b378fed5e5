import assert from 'node:assert/strict';
import { test } from 'node:test';
import { changeWords, cuts, firstCut, gameRows, inOrder } from './since-state.js';

const games = ['a', 'b', 'c', 'd', 'e'].map(id => ({ id, name: id.toUpperCase() }));

test('a tape is cut before any game but the first, and half way until somebody says', () => {
  assert.deepEqual(cuts(games).map(game => game.id), ['b', 'c', 'd', 'e']);
  assert.equal(firstCut(games), 'c');
  assert.deepEqual(cuts(games.slice(0, 1)), []);
  assert.equal(firstCut([]), null);
});

test('what stops the work comes first, what cannot be told last', () =>
  assert.deepEqual(inOrder([{ change: 'not-enough-tape' }, { change: 'cleared' }, { change: 'no-evidence-yet' }, { change: 'hold' }]).map(one => one.change),
    ['hold', 'cleared', 'no-evidence-yet', 'not-enough-tape']));

test('every change has words of its own', () =>
  assert.equal(new Set(['hold', 'slipping', 'cleared', 'improving', 'no-evidence-yet', 'not-enough-tape'].map(changeWords)).size, 6));

test('the table says in which half a game lies', () =>
  assert.deepEqual(gameRows([{ name: 'A', since: false, count: { events: 1, opportunities: 4 } }, { name: 'B', since: true, count: { events: 0, opportunities: 0 } }]),
    [['A', 'before', '1 of 4'], ['B', 'since', '0 of 0']]));
