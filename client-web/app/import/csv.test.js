import assert from 'node:assert/strict';
import { test } from 'node:test';
import { changed, parse, renumbered, told, without, write } from './csv.js';

test('cells may hold commas, quotes and lines; a row has the line it starts on', () =>
  assert.deepEqual(parse('rep,note\r\nr1,"a, ""b""\r\nc"\r\n\r\nr2,x\r\n'), [
    { line: 1, cells: ['rep', 'note'] }, { line: 2, cells: ['r1', 'a, "b"\r\nc'] }, { line: 5, cells: ['r2', 'x'] }]));

test('a byte order mark and a missing last line break are no matter', () =>
  assert.deepEqual(parse('\uFEFFa,b\n1,'), [{ line: 1, cells: ['a', 'b'] }, { line: 2, cells: ['1', ''] }]));

test('a quote inside a bare cell is a letter', () => assert.deepEqual(parse('6\'2",x')[0].cells, ['6\'2"', 'x']));

test('what is written is read back the same, whatever is in it', () => {
  let seed = 7;
  const next = n => { seed = (seed * 1103515245 + 12345) % 2147483648; return seed % n; };
  const letters = ['a', ',', '"', '\n', '\r\n', ' ', '<script>', '=1', '’', ';'];
  for (let round = 0; round < 300; round++) {
    const rows = Array.from({ length: 1 + next(4) }, () => ({ cells: ['k', ...Array.from({ length: 1 + next(4) }, () => Array.from({ length: next(6) }, () => letters[next(letters.length)]).join(''))] }));
    assert.deepEqual(parse(write(rows)).map(row => row.cells), rows.map(row => row.cells));
  }
});

test('lines are counted the same way after writing', () => {
  const rows = parse('rep,note\nr1,"a\nb"\n\n\nr2,x');
  assert.deepEqual(renumbered(rows).map(row => row.line), parse(write(rows)).map(row => row.line));
});

test('one cell is changed, a short row grows, an unknown column changes nothing', () => {
  const rows = parse('rep,phase,note\nr1,pas-rush\nr2,run,x');
  assert.deepEqual(changed(rows, 2, 'phase', 'pass-rush')[1].cells, ['r1', 'pass-rush']);
  assert.deepEqual(changed(rows, 2, 'note', 'n')[1].cells, ['r1', 'pas-rush', 'n']);
  assert.equal(changed(rows, 2, 'wind', 'n'), rows);
});

test('rows can be left out, and told in a line', () => {
  const rows = parse('rep,phase\nr1,run\nr2,run');
  assert.deepEqual(without(rows, new Set([2])).map(row => row.cells[0]), ['rep', 'r2']);
  assert.equal(told(['rep', 'phase'], ['r1', '']), 'rep: r1');
});
