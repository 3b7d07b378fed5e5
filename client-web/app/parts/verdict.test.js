import assert from 'node:assert/strict';
import { test } from 'node:test';
import { tally } from './verdict.js';

test('a cell says its count, and where none is sure to be his, on how many reps his duty is unknown', () => {
  assert.equal(tally({ events: 3, opportunities: 8, unknownDuties: 4 }), '3 of 8');
  assert.equal(tally({ events: 0, opportunities: 0, unknownDuties: 21 }), 'duty unknown (21)');
  assert.equal(tally({ events: 0, opportunities: 0, unknownDuties: 0 }), 'no chance');
});
