import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lines, sent, slug, tagOf, trouble, wayBackTo } from './projection-state.js';

const full = { evaluator: 'M. Ordway', role: 'big-end', readiness: ' now ', ceiling: '', floor: '', risk: 'knee', words: '', scale: 'rounds', tier: 'third' };

test('the slug of an evaluator is the one of the server', () => {
  assert.equal(slug('M. Ordway'), 'm-ordway');
  assert.equal(slug('  Zoë Ångström '), 'zoe-angstrom');
  assert.equal(slug('...'), '');
});

test('what is sent is trimmed and whole', () => assert.deepEqual(sent({ evaluator: ' Kim ', readiness: ' now ' }),
  { evaluator: 'Kim', role: '', readiness: 'now', ceiling: '', floor: '', risk: '', scale: '', tier: '', words: '' }));

test('it needs a name, a word, and a scale with its tier', () => {
  assert.match(trouble({ readiness: 'now' }), /name/);
  assert.match(trouble({ evaluator: 'Kim' }), /one field/);
  assert.match(trouble({ evaluator: 'Kim', scale: 'rounds' }), /one field/);
  assert.match(trouble({ evaluator: 'Kim', tier: 'third' }), /scale/);
  assert.match(trouble({ evaluator: 'Kim', readiness: 'now', scale: 'rounds' }), /scale/);
  assert.equal(trouble(full), '');
});

test('only what is said is told, and the scale names its tier', () => assert.deepEqual(lines(full, slug => slug.replace('-', ' ')),
  [['Sees him as', 'big end'], ['Readiness', ' now '], ['Risk', 'knee'], ['Rounds', 'third']]));

test('the way back keeps what stood before, or takes back what is new', () => {
  assert.deepEqual(wayBackTo(null), { method: 'DELETE' });
  assert.deepEqual(wayBackTo({ ...full, takenBack: true }), { method: 'DELETE' });
  assert.equal(wayBackTo({ ...full, takenBack: false }).method, 'PUT');
  assert.equal(wayBackTo(full).body.readiness, 'now');
  assert.equal(tagOf({ version: 3 }), '"p3"');
});
