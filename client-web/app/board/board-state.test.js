import assert from 'node:assert/strict';
import { test } from 'node:test';
import { pressed, sorted } from './board-state.js';

const man = (name, reps, verdict, low, move = null) => ({ name, reps, cells: { gap: { verdict, low } }, primary: move && { move, share: 0.8 } });
const all = [man('Bo', 20, 'watch', 0.2), man('Al', 80, 'confirmed', 0.6, 'rip'), man('Cy', 50, 'confirmed', 0.7, 'bull-rush'), man('Di', 5, 'not-enough-tape', null)];
const names = sort => sorted(all, sort, slug => slug).map(one => one.name);

test('by name, and the other way round', () => {
  assert.deepEqual(names('name'), ['Al', 'Bo', 'Cy', 'Di']);
  assert.deepEqual(names('-name'), ['Di', 'Cy', 'Bo', 'Al']);
});

test('by number', () => assert.deepEqual(names('-reps'), ['Al', 'Cy', 'Bo', 'Di']));

test('a finding sorts by the firmest verdict, then by the lower end of its range', () => assert.deepEqual(names('gap'), ['Cy', 'Al', 'Bo', 'Di']));

test('who has no main rush stands last', () => assert.deepEqual(names('primary'), ['Cy', 'Al', 'Bo', 'Di']));

test('a second press turns the order round', () => {
  assert.equal(pressed('name', 'name'), '-name');
  assert.equal(pressed('-name', 'name'), 'name');
});
