import assert from 'node:assert/strict';
import { test } from 'node:test';
import { byTrigger, cited, numbered, steps } from './technique-state.js';

test('counters stand by trigger, best first, the general ones last', () =>
  assert.deepEqual(byTrigger([{ counter: 'c', trigger: null, rank: 1 }, { counter: 'b', trigger: 'sits-down', rank: 2 }, { counter: 'a', trigger: 'sits-down', rank: 1 }])
    .map(group => [group.trigger, group.counters.map(one => one.counter)]), [['sits-down', ['a', 'b']], [null, ['c']]]));

test('printed sources are numbered once, in order; the trade has none', () => {
  const book = { slug: 'a', title: 'A', author: 'X', year: '2019', printed: true };
  const habit = { slug: 'common-practice', title: 'Common practice', author: '', year: '', printed: false };
  const found = numbered([{ sources: [habit] }, { sources: [book, habit] }, { sources: [{ ...book, slug: 'b' }, book] }]);
  assert.deepEqual([...found].map(([slug, { number }]) => [slug, number]), [['a', 1], ['b', 2]]);
  assert.equal(cited(book), 'X, A, 2019');
});

test('what can be taught side by side shares a step', () =>
  assert.deepEqual(steps([{ concept: 'c', step: 2 }, { concept: 'a', step: 1 }, { concept: 'b', step: 1 }]).map(step => step.map(rung => rung.concept)), [['a', 'b'], ['c']]));
