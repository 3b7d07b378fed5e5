import assert from 'node:assert/strict';
import { test } from 'node:test';
import { alike, carried, outline } from './carry.js';

/** Random numbers from a seed, the same in every run. */
function seeded(seed) {
  let state = seed;
  return below => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Keys as the server makes them: a word that comes again is counted. */
function keyed(reps) {
  const given = new Map();
  return reps.map(words => words.map(word => {
    const nth = (given.get(word) ?? 0) + 1;
    given.set(word, nth);
    return `${word}${nth === 1 ? '' : `#${nth}`}:said ${word}`;
  }));
}

/** Some reps of some words each, few words so that many come again. */
const told = random => Array.from({ length: 1 + random(30) }, () => Array.from({ length: random(6) }, () => 'abcdefgh'[random(8)]));

const decided = (keys, random) => Object.fromEntries(keys.flat().filter(() => random(3) > 0).map(key => [key, random(2) === 0]));

/** The length of the longest row in both, by the table that everybody knows. */
function longest(a, b) {
  const table = Array.from({ length: a.length + 1 }, () => new Array(b.length + 1).fill(0));
  for (let i = 1; i <= a.length; i++) for (let j = 1; j <= b.length; j++) table[i][j] = a[i - 1] === b[j - 1] ? table[i - 1][j - 1] + 1 : Math.max(table[i - 1][j], table[i][j - 1]);
  return table[a.length][b.length];
}

test('the pairs are of like words, in order, and as many as can be', () => {
  for (let seed = 1; seed <= 400; seed++) {
    const random = seeded(seed);
    const [a, b] = [random(25), random(25)].map(length => Array.from({ length }, () => 'abc'[random(3)]));
    const pairs = alike(a, b);
    pairs.forEach(([i, j], at) => {
      assert.equal(a[i], b[j]);
      if (at) assert.ok(pairs[at - 1][0] < i && pairs[at - 1][1] < j);
    });
    assert.equal(pairs.length, longest(a, b), `seed ${seed}`);
  }
});

test('the same file keeps every decision', () => {
  for (let seed = 1; seed <= 100; seed++) {
    const random = seeded(seed);
    const keys = keyed(told(random));
    const chosen = decided(keys, random);
    const phases = { 1: 'run' };
    assert.deepEqual(carried({ chosen, phases, outline: keys }, keys), { chosen, phases });
  }
});

test('where one tag became another, which is new, every other keeps its decision, however often its words come again', () => {
  for (let seed = 1; seed <= 200; seed++) {
    const random = seeded(seed);
    const reps = told(random);
    const places = reps.flatMap((words, i) => words.map((_, j) => [i, j]));
    if (!places.length) continue;
    const [rep, at] = places[random(places.length)];
    const before = keyed(reps);
    const chosen = decided(before, random);
    const after = keyed(reps.map((words, i) => words.map((word, j) => (i === rep && j === at ? 'new' : word))));
    const wanted = {};
    for (const [i, j] of places) if ((i !== rep || j !== at) && chosen[before[i][j]] !== undefined) wanted[after[i][j]] = chosen[before[i][j]];
    assert.deepEqual(carried({ chosen, phases: {}, outline: before }, after).chosen, wanted, `seed ${seed}`);
  }
});

test('a rep that came in before it moves a phase along; another file takes nothing over', () => {
  const [before, after] = [keyed([['rip', 'sack'], ['dip']]), keyed([['bull'], ['rip', 'sack'], ['dip', 'sack']])];
  assert.deepEqual(carried({ chosen: { 'sack:said sack': true, 'dip:said dip': false }, phases: { 1: 'run', 2: 'drop' }, outline: before }, after),
    { chosen: { 'sack:said sack': true, 'dip:said dip': false }, phases: { 2: 'run', 3: 'drop' } });
  assert.deepEqual(carried({ chosen: { 'rip:said rip': true }, phases: {}, outline: keyed([['rip']]) }, keyed([['spin']])).chosen, {});
  assert.deepEqual(outline({ reps: [{ tags: [{ key: 'a' }, { key: 'b' }] }] }), [['a', 'b']]);
});
