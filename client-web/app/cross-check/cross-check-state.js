/** Two evaluators of the same games: who can be compared, what an agreement is called, what is chosen in a rep. */

const SETTLED = 'reconciled';
const LINES = [0.667, 0.8];
const LEFT = 6;
const WIDTH = 300;

/**
 * Players whom two evaluators or more have watched in the same game, each with those evaluators.
 * @param {Array<{evaluator: {id: string, name: string}, prospect: {id: string, name: string}, game: {id: string}}>} logs
 */
export function watchedTwice(logs) {
  const players = new Map();
  for (const log of logs) {
    if (log.evaluator.id === SETTLED) continue;
    const one = players.get(log.prospect.id) ?? { ...log.prospect, byGame: new Map() };
    one.byGame.set(log.game.id, [...(one.byGame.get(log.game.id) ?? []), log.evaluator]);
    players.set(log.prospect.id, one);
  }
  return [...players.values()].map(({ id, name, byGame }) => {
    const shared = [...byGame.values()].filter(who => who.length > 1);
    return { id, name, evaluators: [...new Map(shared.flat().map(who => [who.id, who])).values()] };
  }).filter(one => one.evaluators.length > 1);
}

/** Whom the address asks for, or the first that can be compared; null where there is nobody. */
export function chosen(players, { prospect, first, second }) {
  const player = players.find(one => one.id === prospect) ?? (prospect ? null : players[0]);
  if (!player) return null;
  const find = id => player.evaluators.find(one => one.id === id);
  const one = find(first) ?? player.evaluators.find(who => who.id !== second);
  const other = find(second) ?? player.evaluators.find(who => who.id !== one.id);
  return { player, first: one, second: other };
}

/** What an agreement is called, and whether more can be said of it than the count. */
export const trustWords = trust => ({
  'too-few': 'too few reps in common to say',
  'no-variety': 'one thing only was ever said',
  low: 'not enough to rely on',
  tentative: 'enough for tentative words',
  good: 'they agree',
})[trust] ?? trust;

/** The coefficient a column is judged by: AC1 where one answer makes up nearly all of it, else alpha. */
export const judgedBy = facet => (facet.ac1 ? { name: 'AC1', ...facet.ac1 } : facet.alpha ? { name: 'alpha', ...facet.alpha } : null);

/** Columns by how much they can be relied on, the worst first, those nothing can be said of last. */
export function worstFirst(facets) {
  const rank = { low: 0, tentative: 1, good: 2, 'no-variety': 3, 'too-few': 4 };
  return [...facets].sort((a, b) => rank[a.trust] - rank[b.trust] || (judgedBy(a)?.value ?? 2) - (judgedBy(b)?.value ?? 2));
}

/** The sentence the page opens with. */
export function lead(check, columnName) {
  const weak = worstFirst(check.facets).filter(one => one.trust === 'low').map(one => columnName(one.column));
  const reps = `Both have read ${check.common} ${check.common === 1 ? 'rep' : 'reps'}; ${check.differences.length} of them they read differently somewhere.`;
  if (check.facets.every(one => one.trust === 'too-few')) return `${reps} That is too few to say how far they agree: 30 are needed.`;
  return weak.length ? `${reps} Their tags cannot be relied on yet in ${list(weak.slice(0, 4))}${weak.length > 4 ? ` and ${weak.length - 4} more` : ''}.`
    : `${reps} In no column do they part so far that its tags could not be relied on.`;
}

const list = words => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`);

/** Where a coefficient stands on the drawing, which runs from -0.2 to 1; what lies below is drawn at its left end. */
export const at = value => LEFT + ((Math.min(1, Math.max(-0.2, value)) + 0.2) / 1.2) * WIDTH;

/** What is drawn and said of a coefficient; null where there is none. */
export function bar(facet) {
  const by = judgedBy(facet);
  if (!by) return null;
  const two = value => value.toFixed(2);
  const ranged = by.low !== null && by.high !== null;
  return {
    value: at(by.value),
    low: ranged ? at(by.low) : null,
    high: ranged ? at(by.high) : null,
    lines: LINES.map(at),
    short: `${by.name} ${two(by.value)}`,
    words: `${by.name} ${two(by.value)}${ranged ? `, likely range ${two(by.low)} to ${two(by.high)}` : ''}; 0 is chance, 1 full agreement, the lines are at 0.67 and 0.80.`,
  };
}

/** Names a rep across answers. */
export const repKey = ({ game, rep }) => `${game}/${rep}`.toLowerCase();

/** A choice for every column the two differ in; of a settled rep the choices that made it, where they can be told. */
export function choices(difference, readings) {
  const [first, second, settled] = readings;
  return Object.fromEntries(difference.cells.map(({ column }) => {
    const cell = settled?.cells[column] ?? '';
    const isSeconds = settled && cell === (second?.cells[column] ?? '') && cell !== (first?.cells[column] ?? '');
    return [column, isSeconds ? 'second' : 'first'];
  }));
}

/** The next rep in a direction, from one that may not be there. */
export const step = (keys, from, by) => keys[Math.min(keys.length - 1, Math.max(0, keys.indexOf(from) + by))];
