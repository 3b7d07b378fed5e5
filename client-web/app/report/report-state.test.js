import assert from 'node:assert/strict';
import { test } from 'node:test';
import { both, moved, room, same, sent, settle, sheetOf, switched, taken, told, trouble, wanted, withSentence } from './report-state.js';

const parts = [['summary', true], ['gaps', true], ['plan', false]].map(([part, isWanted]) => ({ part, title: part.toUpperCase(), wanted: isWanted }));
const base = { summary: 'He bends.', author: 'Kim', parts };

test('what is sent is trimmed, and names the parts wanted in their order', () =>
  assert.deepEqual(sent({ summary: ' He bends.\n', author: ' Kim ', parts }), { summary: 'He bends.', author: 'Kim', parts: ['summary', 'gaps'] }));

test('a sheet is a copy: changing it changes nothing of the answer', () => {
  const answer = { ...base, etag: '"sheet-1"' };
  const sheet = sheetOf(answer);
  sheet.parts[0].wanted = false;
  assert.equal(answer.parts[0].wanted, true);
  assert.equal('etag' in sheet, false);
});

test('blanks at the ends and parts left out in another order make no difference', () => {
  assert.ok(same(base, { ...base, summary: ' He bends. ' }));
  assert.ok(same(base, { ...base, parts: [parts[2], parts[0], parts[1]] }));
  assert.ok(!same(base, { ...base, parts: [parts[1], parts[0], parts[2]] }));
});

test('a part moves one place and no farther than the end', () => {
  assert.deepEqual(moved(parts, 'gaps', -1).map(one => one.part), ['gaps', 'summary', 'plan']);
  assert.equal(moved(parts, 'summary', -1), parts);
  assert.equal(moved(parts, 'plan', 1), parts);
  assert.equal(moved(parts, 'nobody', 1), parts);
});

test('the last part stays in', () => {
  const one = switched(parts, 'gaps');
  assert.deepEqual(wanted(one), ['summary']);
  assert.deepEqual(wanted(switched(one, 'summary')), ['summary']);
  assert.deepEqual(wanted(switched(one, 'plan')), ['summary', 'plan']);
});

test('a sentence goes in at the caret with blanks around it, and out again without a trace', () => {
  const put = withSentence('He bends. He is late.', 'He wins inside.', 9);
  assert.deepEqual(put, { text: 'He bends. He wins inside. He is late.', caret: 25 });
  assert.ok(taken(put.text, 'He wins inside.'));
  assert.equal(withSentence(put.text, 'He wins inside.').text, 'He bends. He is late.');
  assert.equal(withSentence('', 'He bends.').text, 'He bends.');
  assert.equal(withSentence('He bends.', 'He bends.').text, '');
  assert.equal(withSentence('He bends. He is late.', 'He bends.').text, 'He is late.');
  assert.equal(withSentence('He bends.\n', 'He is late.').text, 'He bends.\nHe is late.');
});

test('what is too long says by how much', () => {
  assert.equal(room('12345', 4), -1);
  assert.equal(trouble({ summary: ' 1234 ' }, 4), '');
  assert.match(trouble({ summary: '123456' }, 4), /room for 4 letters.*take out 2/);
});

test('what only one of two changed needs no decision', () => {
  const mine = { ...base, summary: 'He bends late.' };
  const theirs = { ...base, author: 'Dole' };
  assert.deepEqual(settle(base, mine, theirs), { sheet: { summary: 'He bends late.', author: 'Dole', parts }, clashes: [] });
  assert.deepEqual(settle(base, mine, { ...base, summary: 'He bends late.' }).clashes, [], 'the same change twice');
});

test('what both changed is mine until somebody decides, and neither text is lost', () => {
  const mine = { ...base, summary: 'Mine.' };
  const theirs = { ...base, summary: 'Theirs.', parts: switched(parts, 'plan') };
  const { sheet, clashes } = settle(base, mine, theirs);
  assert.deepEqual(clashes, ['summary']);
  assert.equal(sheet.summary, 'Mine.');
  assert.deepEqual(wanted(sheet.parts), ['summary', 'gaps', 'plan']);
  assert.equal(both('Mine. ', 'Theirs.'), 'Mine.\nTheirs.');
});

test('fields are told in words', () => {
  assert.equal(told('parts', base), 'SUMMARY, GAPS');
  assert.equal(told('author', { ...base, author: '' }), 'nothing');
});
