import assert from 'node:assert/strict';
import { test } from 'node:test';
import { nextPath, passwordFault, signInAddress, who } from './sign-in-state.js';

test('one comes back to the page one wanted', () => {
  assert.equal(nextPath('/prospect/tavish-mordell?over=left#reps'), '/prospect/tavish-mordell?over=left#reps');
  assert.equal(signInAddress('/board'), '/sign-in?next=%2Fboard');
  assert.equal(signInAddress('/'), '/sign-in');
});

test('nobody is led to another site, or in a circle', () => {
  for (const wanted of ['//elsewhere.example', '/\\elsewhere.example', 'https://elsewhere.example', 'javascript:alert(1)', '/\t/elsewhere.example', '/sign-in?next=/board', '/api/export', null, '']) {
    assert.equal(nextPath(wanted), '/', String(wanted));
  }
});

test('it is said who is signed in, where anybody has to be', () => {
  const kim = { accounts: true, signedIn: true, name: 'Kim Orr', role: 'evaluator', team: '' };
  assert.equal(who(kim), 'Kim Orr, evaluator');
  assert.equal(who({ ...kim, team: 'harrow-vale' }), 'Kim Orr, evaluator of harrow-vale');
  assert.equal(who({ ...kim, accounts: false }), '');
  assert.equal(who({ ...kim, signedIn: false, name: '' }), '');
});

test('a new password is long, and twice the same', () => {
  assert.match(passwordFault('short', 'short'), /at least 10/);
  assert.match(passwordFault('four words in a row', 'four words in a hat'), /twice the same/);
  assert.equal(passwordFault('four words in a row', 'four words in a row'), '');
});
