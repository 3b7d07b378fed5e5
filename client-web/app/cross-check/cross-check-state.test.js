import assert from 'node:assert/strict';
import { test } from 'node:test';
import { at, bar, choices, chosen, judgedBy, lead, step, watchedTwice, worstFirst } from './cross-check-state.js';

const log = (evaluator, prospect, game) => ({ evaluator: { id: evaluator, name: evaluator.toUpperCase() }, prospect: { id: prospect, name: prospect }, game: { id: game } });
const facet = (column, trust, value, more = {}) => ({ column, common: 40, same: 30, trust, alpha: value === null ? null : { value, low: value - 0.1, high: value + 0.1 }, masi: null, ac1: null, kappa: null, tags: [], ...more });

test('a player can be compared where two evaluators have read one of his games; what they settled on is no evaluator', () => {
  const players = watchedTwice([log('ada', 'x', 'g1'), log('ben', 'x', 'g1'), log('cid', 'x', 'g2'), log('reconciled', 'x', 'g2'), log('ada', 'y', 'g1')]);
  assert.deepEqual(players.map(one => [one.id, one.evaluators.map(who => who.id)]), [['x', ['ada', 'ben']]]);
});

test('whom nobody names is the first who can be compared, and two names are never one person', () => {
  const players = watchedTwice([log('ada', 'x', 'g1'), log('ben', 'x', 'g1'), log('cid', 'x', 'g1')]);
  const ids = ({ player, first, second }) => [player.id, first.id, second.id];
  assert.deepEqual(ids(chosen(players, {})), ['x', 'ada', 'ben']);
  assert.deepEqual(ids(chosen(players, { prospect: 'x', second: 'ada' })), ['x', 'ben', 'ada']);
  assert.deepEqual(ids(chosen(players, { first: 'cid' })), ['x', 'cid', 'ada']);
  assert.equal(chosen(players, { prospect: 'nobody' }), null);
  assert.equal(chosen([], {}), null);
});

test('a column is judged by AC1 where one answer makes up nearly all of it', () => {
  assert.equal(judgedBy(facet('a', 'good', 0.2, { ac1: { value: 0.9, low: 0.8, high: 1 } })).name, 'AC1');
  assert.equal(judgedBy(facet('a', 'low', 0.2)).value, 0.2);
  assert.equal(judgedBy(facet('a', 'too-few', null)), null);
});

test('what cannot be relied on stands first, what nothing can be said of last', () => {
  const sorted = worstFirst([facet('few', 'too-few', null), facet('good', 'good', 0.9), facet('bad', 'low', 0.5), facet('worse', 'low', 0.1)]);
  assert.deepEqual(sorted.map(one => one.column), ['worse', 'bad', 'good', 'few']);
});

test('the page opens with how many reps they part on and where that matters', () => {
  const name = column => column;
  assert.equal(lead({ common: 40, differences: [1, 2], facets: [facet('hands', 'low', 0.1)] }, name),
    'Both have read 40 reps; 2 of them they read differently somewhere. Their tags cannot be relied on yet in hands.');
  assert.match(lead({ common: 1, differences: [], facets: [facet('hands', 'too-few', null)] }, name), /Both have read 1 rep; .* too few/);
});

test('a coefficient is drawn on its scale, and worse than chance stays on the paper', () => {
  assert.equal(at(1), 306);
  assert.equal(at(-3), 6);
  assert.equal(bar(facet('a', 'low', 0.5)).words, 'alpha 0.50, likely range 0.40 to 0.60; 0 is chance, 1 full agreement, the lines are at 0.67 and 0.80.');
  assert.equal(bar(facet('a', 'too-few', null)), null);
});

test('choices begin with the first, and of a settled rep with what was settled', () => {
  const difference = { cells: [{ column: 'result' }, { column: 'shed' }] };
  const [first, second] = [{ cells: { result: 'won', shed: 'none' } }, { cells: { result: 'lost' } }];
  assert.deepEqual(choices(difference, [first, second, undefined]), { result: 'first', shed: 'first' });
  assert.deepEqual(choices(difference, [first, second, { cells: { result: 'lost' } }]), { result: 'second', shed: 'second' });
});

test('keys go from rep to rep and stop at the ends', () => {
  assert.equal(step(['a', 'b'], undefined, 1), 'a');
  assert.equal(step(['a', 'b'], 'b', 1), 'b');
  assert.equal(step(['a', 'b'], 'a', -1), 'a');
});
