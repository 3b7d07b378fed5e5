/** Then and now: where a tape can be cut, and in which order what became of his gaps is told; no document in here. */

const ORDER = ['hold', 'slipping', 'cleared', 'improving', 'no-evidence-yet', 'not-enough-tape'];

const WORDS = {
  hold: 'hold', slipping: 'slipping', cleared: 'cleared since', improving: 'improving', 'no-evidence-yet': 'no evidence yet', 'not-enough-tape': 'not enough tape since',
};

/** The games a tape can be cut before: every one but the first. */
export const cuts = games => games.slice(1);

/** Where it is cut until somebody says: half way. */
export const firstCut = games => games[Math.floor(games.length / 2)]?.id ?? null;

/** A change in words. */
export const changeWords = change => WORDS[change] ?? change;

/** What to stop for first, then what moved, then what cannot be told; within that as the server has it. */
export const inOrder = findings => [...findings].sort((a, b) => ORDER.indexOf(a.change) - ORDER.indexOf(b.change));

/** The rows of the table behind a chart over games. */
export const gameRows = byGame => byGame.map(({ name, since, count }) => [name, since ? 'since' : 'before', `${count.events} of ${count.opportunities}`]);
