import assert from 'node:assert/strict';
import { test } from 'node:test';
import { kinds } from './compare-state.js';

const row = (finding, polarity, apart, ...verdicts) => ({ finding, polarity, apart, cells: verdicts.map(verdict => ({ verdict })) });

test('each finding stands once, what parts them first, what says nothing not at all', () => {
  const found = kinds([row('a', 'gap', true, 'confirmed', 'cleared'), row('b', 'gap', false, 'likely', 'watch'), row('c', 'strength', false, 'confirmed', 'confirmed'),
    row('d', 'gap', false, 'watch', 'cleared')]);
  assert.deepEqual(found.map(([title, rows]) => [title, rows.map(one => one.finding)]), [
    ['Where the tape tells them apart', ['a']], ['What one of them lacks', ['b']], ['What one of them does well', ['c']]]);
});
