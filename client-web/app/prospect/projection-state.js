/** What an evaluator writes about where a prospect will go; no document in here. */

/** The fields of a projection in the order they are read, each with its name and what belongs in it. */
export const FIELDS = [
  ['role', 'Sees him as', ''],
  ['readiness', 'Readiness', 'passing downs now, every down in a year'],
  ['ceiling', 'Ceiling', 'the best he may become'],
  ['floor', 'Floor', 'the least he will be'],
  ['risk', 'Risk', 'what may go wrong'],
  ['scale', 'Your scale', 'rounds, tiers, a board of your own'],
  ['tier', 'Where on it', 'third round'],
  ['words', 'In your words', ''],
];

/** The slug of a name as the server makes it, for addresses. */
export const slug = name => name.normalize('NFKD').replace(/\p{M}+/gu, '').toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');

/** What is sent: the evaluator and every field, ends trimmed. */
export const sent = fields => Object.fromEntries([['evaluator', (fields.evaluator ?? '').trim()], ...FIELDS.map(([name]) => [name, (fields[name] ?? '').trim()])]);

/** Why it cannot be kept yet; empty where it can. */
export function trouble(fields) {
  const said = sent(fields);
  if (!slug(said.evaluator)) return 'Whose judgement is it? Put a name to it.';
  if (FIELDS.every(([name]) => name === 'scale' || !said[name])) return 'Fill in one field at least.';
  if (!said.scale !== !said.tier) return 'A tier stands on a scale: name both, or neither.';
  return '';
}

/** What stands of a projection, as [name, text] without the empty ones; the scale names its tier. */
export function lines(projection, roleLabel) {
  return FIELDS.filter(([name]) => name !== 'scale' && projection[name]).map(([name, title]) =>
    name === 'tier' ? [capital(projection.scale), projection.tier] : name === 'role' ? [title, roleLabel(projection.role)]
      : [name === 'words' ? 'In his words' : title, projection[name]]);
}

const capital = text => (text ? text[0].toUpperCase() + text.slice(1) : text);

/** The tag by which the server knows a version. */
export const tagOf = projection => `"p${projection.version}"`;

/** How to take a change back: what stood before is kept again, or, where nothing stood, it is taken back. */
export const wayBackTo = before => (before && !before.takenBack ? { method: 'PUT', body: sent(before) } : { method: 'DELETE' });
