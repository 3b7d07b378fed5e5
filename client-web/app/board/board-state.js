/** Rows of the board in the order one asks for. */
import { firmness } from '../parts/verdict.js';

/** Columns of the board beside findings. */
export const FIXED = [['name', 'Player'], ['team', 'School'], ['reps', 'Reps'], ['games', 'Games'], ['primary', 'Main rush']];

/**
 * Sorted by a column; `-column` turns it round. A finding sorts by its verdict, then by the lower end of the range.
 * @param {Array<Object>} prospects
 * @param {string} sort
 * @param {(slug: string) => string} label
 */
export function sorted(prospects, sort, label) {
  const down = sort.startsWith('-');
  const column = down ? sort.slice(1) : sort;
  const value = key(column, label);
  const compare = (a, b) => {
    const [x, y] = [value(a), value(b)];
    for (let i = 0; i < x.length; i++) {
      if (x[i] === y[i]) continue;
      return (typeof x[i] === 'string' ? x[i].localeCompare(y[i], 'en') : x[i] - y[i]) * (down ? -1 : 1);
    }
    return a.name.localeCompare(b.name, 'en');
  };
  return [...prospects].sort(compare);
}

function key(column, label) {
  if (column === 'primary') return one => [one.primary ? 0 : 1, one.primary ? label(one.primary.move) : '', -(one.primary?.share ?? 0)];
  if (FIXED.some(([name]) => name === column)) return one => [one[column] ?? ''];
  return one => {
    const cell = one.cells[column];
    return cell ? [firmness(cell.verdict), -(cell.low ?? 0)] : [9, 0];
  };
}

/** The sort that a press on a column leads to. */
export const pressed = (sort, column) => (sort === column ? `-${column}` : column);
