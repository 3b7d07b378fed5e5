import assert from 'node:assert/strict';
import { test } from 'node:test';
import { oddities, summary } from './said.js';

const film = { kind: 'film-log', readings: 0, prospects: 0, logs: [], faults: [] };

test('where no rep is good, nothing is counted and nobody looks for a rest', () =>
  assert.equal(summary({ ...film, faults: [{}] }), 'No rep can be taken in yet; what to mend is below.'));

test('what is good is counted, and what is here already', () =>
  assert.equal(summary({ ...film, readings: 1, faults: [{}], logs: [{ before: 3 }] }), '1 rep is good, the rest is below: 1 log. 1 of these logs is here already.'));

test('one oddity is one', () =>
  assert.deepEqual([oddities(1), oddities(2)], ['1 oddity, taken in as it is', '2 oddities, taken in as they are']));
