import assert from 'node:assert/strict';
import { test } from 'node:test';
import { honest, kinds } from './compare-state.js';

const row = (finding, polarity, apart, ...verdicts) => ({ finding, polarity, apart, standing: apart ? 'apart' : 'not-told-apart', cells: verdicts.map(verdict => ({ verdict })) });

test('each finding stands once, what parts them first, what says nothing not at all', () => {
  const found = kinds([row('a', 'gap', true, 'confirmed', 'cleared'), row('b', 'gap', false, 'likely', 'watch'), row('c', 'strength', false, 'confirmed', 'confirmed'),
    row('d', 'gap', false, 'watch', 'cleared')]);
  assert.deepEqual(found.map(([title, rows]) => [title, rows.map(one => one.finding)]), [
    ['Where the tape tells them apart', ['a']], ['What one of them lacks', ['b']], ['What one of them does well', ['c']]]);
});

test('what would stand alone and not among so many leans, and is not told as what one of them lacks', () => {
  const found = kinds([{ ...row('a', 'gap', false, 'confirmed', 'watch'), standing: 'leaning' }]);
  assert.deepEqual(found.map(([title]) => title), ['Leaning; it may be luck']);
});

test('luck is counted for as many comparisons as were made', () => {
  assert.match(honest(43), /^43 comparisons .* about 4 would look/);
  assert.match(honest(0), /Nothing could be compared/);
});
