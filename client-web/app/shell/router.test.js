import assert from 'node:assert/strict';
import { test } from 'node:test';
import { place, staysHere } from './router.js';

test('the start page asks', () => assert.deepEqual(place('/'), { name: 'ask', parameters: {} }));

test('a rep has an address of its own, escaped parts are read back', () =>
  assert.deepEqual(place('/rep/tavish-mordell/harrow%20vale/r04'), {
    name: 'sheet', parameters: { prospect: 'tavish-mordell', game: 'harrow vale', rep: 'r04' },
  }));

test('a plan has an address of its own, and there is one to choose a player', () => {
  assert.deepEqual(place('/plan/lucan-whitlow'), { name: 'plan', parameters: { id: 'lucan-whitlow' } });
  assert.equal(place('/plan').name, 'plan');
});

test('what there is for programs has a page', () => assert.equal(place('/programs').name, 'programs'));

test('an unknown address is lost, and so is one that is not well escaped', () => {
  assert.equal(place('/nowhere/at/all').name, 'lost');
  assert.equal(place('/technique/%E0%A4%A').name, 'lost');
});

const click = { button: 0, metaKey: false, ctrlKey: false, shiftKey: false, altKey: false };
const link = (pathname, extra = []) => ({ origin: 'http://here', pathname, target: '', hasAttribute: name => extra.includes(name) });

test('links to pages stay here; the API, downloads, other hosts and new tabs do not', () => {
  assert.ok(staysHere(link('/board'), click, 'http://here'));
  assert.ok(!staysHere(link('/api/openapi.json'), click, 'http://here'));
  assert.ok(!staysHere(link('/id/bull-rush'), click, 'http://here'));
  assert.ok(!staysHere(link('/board', ['download']), click, 'http://here'));
  assert.ok(!staysHere(link('/board'), { ...click, ctrlKey: true }, 'http://here'));
  assert.ok(!staysHere(link('/board'), click, 'http://there'));
});
