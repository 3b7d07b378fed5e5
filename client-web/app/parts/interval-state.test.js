import assert from 'node:assert/strict';
import { test } from 'node:test';
import { at, bar } from './interval-state.js';

const count = { opportunities: 15, events: 13, rate: 0.867, low: 0.68, high: 0.96, line: 0.6, houseLine: 0.6 };

test('the bar says its figures in words', () =>
  assert.equal(bar(count).words, '13 of 15, likely range 68 % to 96 %; the line is at 60 %.'));

test('a line of your own is told beside the house line', () => {
  const own = bar({ ...count, line: 0.5 });
  assert.equal(own.words, '13 of 15, likely range 68 % to 96 %; the line is at 50 % (house line 60 %).');
  assert.equal(own.lineWords, 'your line 50 %');
  assert.equal(own.houseLine, at(0.6));
});

test('low, rate and high stand in order and within the bar', () => {
  const { low, rate, high } = bar(count);
  assert.ok(at(0) <= low && low < rate && rate < high && high <= at(1));
});

test('nothing is drawn where nothing can be counted, and a difference has no bar', () => {
  assert.equal(bar({ ...count, low: null, high: null }), null);
  assert.equal(bar({ ...count, measure: 'difference' }), null);
});

test('without a line none is drawn', () => {
  const without = bar({ ...count, line: null, houseLine: null });
  assert.equal(without.line, null);
  assert.match(without.words, /no line/);
});
