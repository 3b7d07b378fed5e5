import assert from 'node:assert/strict';
import { test } from 'node:test';
import { aroundMoves, asked, begun, byPlace, change, chosen, inAddress, isMoved, isPinned, moved, ofAddress, placesOf, proofWords, reordered, sessionName, sessionsOf, stepped, toggled, undone, verdict } from './plan-state.js';

const block = (exercise, skill) => ({ exercise, skill });
const weeks = [
  { week: 1, sessions: [{ place: 0, day: 'Monday', blocks: [block('get-off', 'start'), block('bag', 'tackle')] }, { place: 1, day: 'Wednesday', blocks: [block('mirror', 'feet')] }] },
  { week: 2, sessions: [{ place: 2, day: 'Monday', blocks: [] }] },
];
const sheet = { weeks, workOn: [{ skill: 'tackle', role: 'safety' }, { skill: 'start', role: 'prerequisite' }, { skill: 'feet', role: 'gap' }] };

test('a field left empty is left open, and numbers are numbers', () => {
  assert.deepEqual(asked({ weeks: 4, preset: 'x' }, 'weeks', ' '), { preset: 'x' });
  assert.deepEqual(asked({}, 'weeks', '3'), { weeks: 3 });
});

test('an address carries the request there and back, without what was decided block by block', () => {
  const request = { preset: 'off-season', weeks: 6, start: '2026-08-03', fixed: [{ wish: 'leave', exercise: 'bag' }] };
  assert.deepEqual(ofAddress(new URLSearchParams({ ...inAddress(request), other: 'x' })), { preset: 'off-season', weeks: 6, start: '2026-08-03' });
});

test('a block goes to another session and nowhere else; what it left keeps the rest', () => {
  const sessions = sessionsOf(weeks);
  assert.deepEqual(sessions, [['get-off', 'bag'], ['mirror'], []]);
  assert.deepEqual(moved(sessions, 'bag', 0, 2), [['get-off'], ['mirror'], ['bag']]);
  for (const [exercise, from, to] of [['bag', 0, 3], ['bag', 0, -1], ['bag', 0, 0], ['bag', 1, 2]]) assert.equal(moved(sessions, exercise, from, to), sessions);
  assert.ok(isMoved(sheet, moved(sessions, 'bag', 0, 2)));
  assert.ok(!isMoved(sheet, moved(moved(sessions, 'get-off', 0, 1), 'get-off', 1, 0)));
});

test('what is sent names the skills of the plan, so that the server knows against what to check', () => {
  assert.deepEqual(change({ weeks: 2 }, sheet, [['a']], { note: 'n' }), { request: { weeks: 2 }, skills: ['tackle', 'start', 'feet'], sessions: [['a']], note: 'n' });
});

test('a pin is set and let go, and leaves no empty list behind', () => {
  const pin = { wish: 'pin', exercise: 'bag', session: 0 };
  const pinned = toggled({ weeks: 2 }, pin);
  assert.ok(isPinned(pinned, 'bag', 0) && !isPinned(pinned, 'bag', 1));
  assert.deepEqual(toggled(pinned, pin), { weeks: 2 });
  assert.deepEqual(toggled({ fixed: [{ wish: 'leave', exercise: 'bag', session: null, later: null }] }, { wish: 'leave', exercise: 'bag' }), {});
});

test('planning around moves pins what was moved, and lets go of a pin on what is elsewhere now', () => {
  const request = { fixed: [{ wish: 'pin', exercise: 'bag', session: 0 }, { wish: 'leave', exercise: 'sled' }] };
  assert.deepEqual(aroundMoves(request, sheet, moved(sessionsOf(weeks), 'bag', 0, 2)).fixed, [{ wish: 'leave', exercise: 'sled' }, { wish: 'pin', exercise: 'bag', session: 2 }]);
});

test('a skill goes up or down among those worked on for their own sake; first things stay first', () => {
  assert.deepEqual(reordered({}, sheet, 'feet', -1).workOn, ['feet', 'tackle']);
  assert.deepEqual(reordered({ a: 1 }, sheet, 'tackle', -1), { a: 1 });
  assert.deepEqual(reordered({}, sheet, 'start', 1), {});
});

test('what is left out is no longer asked for, and the other way round', () => {
  assert.deepEqual(chosen({ workOn: ['x', 'y'] }, 'x', 'leaveOut'), { workOn: ['y'], leaveOut: ['x'] });
  assert.deepEqual(chosen({ leaveOut: ['x'] }, 'x', 'workOn'), { workOn: ['x'] });
});

test('every step has a way back, and the first has none', () => {
  const visit = stepped(stepped(begun('a'), 'b'), 'c');
  assert.equal(undone(visit).now, 'b');
  assert.equal(undone(undone(undone(visit))).now, 'a');
});

test('a breach stands at its session, one of a week or the block at the top', () => {
  const grouped = byPlace([{ where: 'week 1 Wednesday', text: 'a' }, { where: 'week 2', text: 'b' }, { where: '', text: 'c' }], weeks);
  assert.deepEqual([...grouped.keys()], [1, 'all']);
  assert.equal(grouped.get('all').length, 2);
  assert.equal(sessionName(weeks, 2), 'week 2 Monday');
  assert.deepEqual(placesOf(weeks, 'feet'), [1]);
});

test('the proof is told as it is, by hand or not', () => {
  assert.match(proofWords({ proven: true, best: true, betterAtMostPercent: 0 }, false), /no better plan exists/);
  assert.match(proofWords({ proven: true, best: false, betterAtMostPercent: 4 }, true), /Moved by hand: at most 4 %/);
  assert.match(proofWords({ proven: false, best: false, betterAtMostPercent: 0 }, false), /Not proven/);
  assert.match(verdict({ kept: false, breaches: [1, 2] }, true), /2 limits/);
});
