import assert from 'node:assert/strict';
import { test } from 'node:test';
import { byColumn, carried, differing, filmTime, grouped, nextName, same, seconds, tidy } from './sheet-state.js';

test('a column that no group knows is not lost', () => {
  const groups = grouped([{ name: 'rep' }, { name: 'wind' }, { name: 'prospect' }]);
  assert.deepEqual(groups.find(([title]) => title === 'More')[1].map(column => column.name), ['wind']);
  assert.deepEqual(groups[0][1].map(column => column.name), ['rep']);
});

test('blank cells say nothing', () => {
  assert.deepEqual(tidy({ a: ' x ', b: '  ' }), { a: 'x' });
  assert.ok(same({ a: 'x', b: '' }, { a: 'x' }));
  assert.ok(!same({ a: 'x' }, { a: 'y' }));
  assert.ok(!same({ a: 'x' }, { a: 'x', b: 'y' }));
});

test('two versions differ where one is blank too', () => assert.deepEqual(differing({ a: 'x', b: 'y' }, { a: 'x', c: 'z' }), ['b', 'c']));

test('the next rep keeps who, which game and which film, not what happened', () =>
  assert.deepEqual(carried({ prospect: 'A', game: 'G', video: 'v.webm', exchange: 'rip', faults: 'x' }), { prospect: 'A', game: 'G', video: 'v.webm' }));

test('the next name counts on, as wide as the last', () => {
  assert.equal(nextName(['r01', 'r09', 'r10', 'r2']), 'r11');
  assert.equal(nextName(['r08', 'r09']), 'r10');
  assert.equal(nextName(['opening']), 'r02');
  assert.equal(nextName([]), 'r01');
});

test('faults are found by their column', () => assert.equal(byColumn([{ column: 'faults' }, { column: 'faults' }, { column: '' }]).get('faults').length, 2));

test('film time goes there and back', () => {
  assert.equal(filmTime(75.25), '1:15.3');
  assert.equal(filmTime(3), '0:03');
  assert.equal(filmTime(3661.5), '1:01:01.5');
  assert.equal(filmTime(59.96), '1:00');
  assert.equal(seconds('1:15.3'), 75.3);
  assert.equal(seconds('12'), 12);
  assert.equal(seconds('1:02:03'), 3723);
  assert.equal(seconds('soon'), null);
});
