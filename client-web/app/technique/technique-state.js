/** How a page of the book is put together; no document in here. */

/** Counters by what the blocker does, in the order of the book; the general ones last. */
export function byTrigger(counters) {
  const groups = new Map();
  for (const one of counters) groups.set(one.trigger ?? '', [...(groups.get(one.trigger ?? '') ?? []), one]);
  const ordered = [...groups].sort(([a], [b]) => Number(a === '') - Number(b === ''));
  return ordered.map(([trigger, ones]) => ({ trigger: trigger || null, counters: [...ones].sort((a, b) => a.rank - b.rank) }));
}

/** Sources of statements, numbered in the order in which a reader meets them; the trade's own habit has no number. */
export function numbered(statements) {
  const numbers = new Map();
  for (const { sources } of statements) {
    for (const source of sources) if (source.printed && !numbers.has(source.slug)) numbers.set(source.slug, { number: numbers.size + 1, source });
  }
  return numbers;
}

/** A source in a line. */
export const cited = ({ author, title, year }) => [author, title, year].filter(Boolean).join(', ');

/** Rungs by step, the first to teach first. */
export function steps(ladder) {
  const found = new Map();
  for (const rung of ladder) found.set(rung.step, [...(found.get(rung.step) ?? []), rung]);
  return [...found].sort(([a], [b]) => a - b).map(([, rungs]) => rungs);
}
