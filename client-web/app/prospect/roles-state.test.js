import assert from 'node:assert/strict';
import { test } from 'node:test';
import { asked, count, DISCS, shownOf, WORDS } from './roles-state.js';

const need = over => ({ label: 'holds double teams', without: false, shown: 'shown', events: 3, opportunities: 4, games: 1, low: 0.324, high: 0.949, ...over });

test('a gap is asked for by its absence', () => {
  assert.equal(asked(need({})), 'holds double teams');
  assert.equal(asked(need({ label: 'plays high', without: true })), 'clear of "plays high"');
});

test('a count tells its games and its likely range', () => {
  assert.equal(count(need({})), '3 of 4 in 1 game, likely range 32 to 95 %');
  assert.equal(count(need({ games: 2, low: null, high: null })), '3 of 4 in 2 games');
});

test('shown ones are counted, and every fit has a word and a disc', () => {
  assert.equal(shownOf([need({}), need({ shown: 'no-tape' }), need({ shown: 'not-shown' })]), '1 of 3 shown');
  assert.deepEqual(Object.keys(WORDS).sort(), Object.keys(DISCS).sort());
});
