/** Decisions on notes carried over to the corrected file: by the order of the tags, whatever their times. */

const REP = '|';
const FARTHEST = 2000;

/** What a file proposes, in short: the keys of the tags of each rep in order, and last of what was said in general. */
export const outline = notes => [...notes.reps.map(rep => rep.tags), ...(notes.statements?.length ? [notes.statements] : [])].map(tags => tags.map(tag => tag.key));

/**
 * The decisions as they hold for another reading of the notes. A tag keeps its decision where it stands in the same order among
 * the others; a rep keeps its phase where most of it is still there. Where hardly anything is alike, it is another file and nothing is decided.
 * @param {{chosen: Object<string, boolean>, phases: Object<number, string>, outline: string[][]}} before
 * @param {string[][]} now the outline of the file as it is
 */
export function carried(before, now) {
  const [old, fresh] = [tokens(before.outline), tokens(now)];
  const pairs = alike(old.map(one => one.word), fresh.map(one => one.word));
  const chosen = {};
  const homes = new Map();
  for (const [i, j] of pairs) {
    const [from, to] = [old[i], fresh[j]];
    if (from.key !== null && before.chosen[from.key] !== undefined) chosen[to.key] = before.chosen[from.key];
    const home = homes.get(from.rep) ?? homes.set(from.rep, new Map()).get(from.rep);
    home.set(to.rep, (home.get(to.rep) ?? 0) + 1);
  }
  const phases = {};
  for (const [rep, home] of homes) {
    if (before.phases[rep] !== undefined) phases[[...home].sort((a, b) => b[1] - a[1])[0][0]] = before.phases[rep];
  }
  return { chosen, phases };
}

/** Reps and their tags in one row; a tag's word is its key without the count. */
const tokens = reps => reps.flatMap((keys, i) => [
  { word: REP, key: null, rep: i + 1 }, ...keys.map(key => ({ word: key.replace(/^([^:#]*)#\d+:/, '$1:'), key, rep: i + 1 }))]);

/** Which places of two rows belong together: the longest row that stands in both, found from both ends and then as Myers (1986) does. */
export function alike(a, b) {
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head++;
  let tail = 0;
  while (tail < a.length - head && tail < b.length - head && a.at(-1 - tail) === b.at(-1 - tail)) tail++;
  const middle = between(a.slice(head, a.length - tail), b.slice(head, b.length - tail));
  return [
    ...Array.from({ length: head }, (_, i) => [i, i]),
    ...middle.map(([i, j]) => [i + head, j + head]),
    ...Array.from({ length: tail }, (_, i) => [a.length - tail + i, b.length - tail + i]),
  ];
}

function between(a, b) {
  const most = Math.min(a.length + b.length, FARTHEST);
  const far = new Int32Array(2 * most + 3);
  const past = [];
  for (let d = 0; d <= most; d++) {
    past.push(far.slice(most + 1 - d - 1, most + 1 + d + 2));
    for (let k = -d; k <= d; k += 2) {
      const at = most + 1 + k;
      let x = k === -d || (k !== d && far[at - 1] < far[at + 1]) ? far[at + 1] : far[at - 1] + 1;
      while (x < a.length && x - k < b.length && a[x] === b[x - k]) x++;
      far[at] = x;
      if (x >= a.length && x - k >= b.length) return wayBack(a.length, b.length, past);
    }
  }
  return [];
}

/** The pairs on the way that was found, from its end. `past[d]` holds the farthest places before step d, of the diagonals -d-1 to d+1. */
function wayBack(m, n, past) {
  const pairs = [];
  let [x, y] = [m, n];
  for (let d = past.length - 1; d >= 0; d--) {
    const at = k => past[d][k + d + 1];
    const k = x - y;
    const down = k === -d || (k !== d && at(k - 1) < at(k + 1));
    const from = d === 0 ? 0 : down ? at(k + 1) : at(k - 1);
    const start = d === 0 ? 0 : down ? from : from + 1;
    while (x > start) pairs.push([--x, --y]);
    x = from;
    y = d === 0 ? 0 : from - (down ? k + 1 : k - 1);
  }
  return pairs.reverse();
}
