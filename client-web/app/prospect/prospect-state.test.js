import assert from 'node:assert/strict';
import { test } from 'node:test';
import { build, dutyMatters, groups, ifThen, tellingOrder } from './prospect-state.js';

const finding = over => ({
  finding: 'x', polarity: 'gap', verdict: 'confirmed', severity: 'moderate', safety: false, opportunities: 12, events: 9, probability: 0.97,
  bounds: null, conditional: [], ...over,
});
const unknown = [{ unknownDuties: 'none', opportunities: 0, events: 0, verdict: 'not-enough-tape' }, { unknownDuties: 'all', opportunities: 24, events: 7, verdict: 'likely' }];
const iffy = finding({ finding: 'edge', verdict: 'not-enough-tape', opportunities: 0, events: 0, bounds: unknown,
  conditional: [{ assignment: 'box', opportunities: 24, events: 7, verdict: 'likely' }, { assignment: 'another', opportunities: 0, events: 0, verdict: 'not-enough-tape' }] });

test('what one duty would make stand hangs on duty, and is told there only', () => {
  assert.ok(dutyMatters(iffy));
  const told = groups([iffy, finding({})]);
  assert.deepEqual(told.duty, [iffy]);
  assert.deepEqual(told.unseen, []);
  assert.equal(told.gaps.length, 1);
});

test('what stands anyway does not hang on duty', () =>
  assert.ok(!dutyMatters(finding({ bounds: unknown, conditional: iffy.conditional }))));

test('every finding is told once', () => {
  const all = ['confirmed', 'likely', 'watch', 'cleared', 'not-enough-tape'].flatMap(verdict =>
    ['gap', 'strength', 'note', 'conditional'].map(polarity => finding({ finding: `${verdict}-${polarity}`, verdict, polarity })));
  const told = Object.values(groups(all)).flat();
  assert.equal(told.length, all.length);
  assert.equal(new Set(told).size, all.length);
});

test('safety first, then the firmest, then the gravest', () => {
  const order = [finding({ finding: 'a', verdict: 'likely', severity: 'high' }), finding({ finding: 'b' }), finding({ finding: 'c', verdict: 'watch', safety: true }),
    finding({ finding: 'd', severity: 'high' })].sort(tellingOrder).map(one => one.finding);
  assert.deepEqual(order, ['c', 'd', 'b', 'a']);
});

test('duties with one count share a line; another duty stands alone', () =>
  assert.deepEqual(ifThen([
    { assignment: 'box', opportunities: 5, events: 5, verdict: 'watch' },
    { assignment: 'contain', opportunities: 5, events: 5, verdict: 'watch' },
    { assignment: 'another', opportunities: 5, events: 5, verdict: 'watch' },
  ]).map(line => line.duties), [['box', 'contain'], ['another']]));

test('sizes are told as the trade does', () => assert.deepEqual(build({ heightCm: 190.5, weightKg: 121.6, armCm: 84.455 }), ['6 ft 3 in', '268 lb', 'arm 33.25 in']));
