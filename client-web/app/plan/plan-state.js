/** A plan as a coach changes it: blocks moved, skills in another order, every step with a way back. No document in here. */

/** What a plan begins with: everything left to the weeks and the house. */
const OPEN = Object.freeze({});

/** The names of a request that the form shows, each with how its text is read. */
const FIELDS = {
  preset: String, weeks: Number, sessions: Number, minutes: Number, start: String, people: Number, profile: String, checked: String, approved: String, contact: Number,
};

/** The request with one field changed; an empty text leaves it open. */
export function asked(request, name, text) {
  const { [name]: gone, ...rest } = request;
  const value = String(text ?? '').trim();
  return value === '' ? rest : { ...rest, [name]: FIELDS[name](value) };
}

/** A request as an address has it, without what was decided block by block. */
export const inAddress = request => Object.fromEntries(Object.entries(request).filter(([name]) => FIELDS[name]).map(([name, value]) => [name, String(value)]));

/** The request of an address. */
export const ofAddress = query => [...query].reduce((request, [name, text]) => (FIELDS[name] ? asked(request, name, text) : request), OPEN);

/** Slugs of the blocks, session by session, as the server reads them. */
export const sessionsOf = weeks => weeks.flatMap(week => week.sessions.map(session => session.blocks.map(block => block.exercise)));

/** What is sent to be checked or kept. */
export const change = (request, sheet, sessions, more = {}) => ({ request, skills: sheet.workOn.map(one => one.skill), sessions, ...more });

/** The sessions with one block in another; the same where it cannot go there or stands there already. */
export function moved(sessions, exercise, from, to) {
  if (to < 0 || to >= sessions.length || to === from || !sessions[from]?.includes(exercise)) return sessions;
  return sessions.map((blocks, place) => (place === from ? without(blocks, exercise) : place === to ? [...blocks, exercise] : blocks));
}

function without(blocks, exercise) {
  const at = blocks.indexOf(exercise);
  return [...blocks.slice(0, at), ...blocks.slice(at + 1)];
}

/** Whether blocks stand elsewhere than planned. */
export const isMoved = (sheet, sessions) => JSON.stringify(sessionsOf(sheet.weeks).map(sorted)) !== JSON.stringify(sessions.map(sorted));

const sorted = blocks => [...blocks].sort();

/** Wishes of a request of one kind. */
const wishes = (request, kind) => (request.fixed ?? []).filter(one => one.wish === kind);

/** Whether two wishes are one; the server writes null where nothing is said. */
const same = (a, b) => ['wish', 'exercise', 'session', 'later'].every(name => (a[name] ?? null) === (b[name] ?? null));

/** The request with a wish, or without it where it stood there. */
export function toggled(request, wish) {
  const fixed = request.fixed ?? [];
  const next = fixed.some(one => same(one, wish)) ? fixed.filter(one => !same(one, wish)) : [...fixed, wish];
  const { fixed: gone, ...rest } = request;
  return next.length ? { ...rest, fixed: next } : rest;
}

export const isPinned = (request, exercise, session) => wishes(request, 'pin').some(one => one.exercise === exercise && one.session === session);

/** The request that keeps moved blocks where the coach put them; what was pinned where it no longer stands is let go. */
export function aroundMoves(request, sheet, sessions) {
  const planned = sessionsOf(sheet.weeks);
  const moves = sessions.flatMap((blocks, session) => blocks.filter(one => !planned[session].includes(one)).map(exercise => ({ wish: 'pin', exercise, session })));
  const stands = one => one.wish !== 'pin' || sessions[one.session]?.includes(one.exercise);
  const fixed = [...(request.fixed ?? []).filter(stands), ...moves.filter(move => !isPinned(request, move.exercise, move.session))];
  const { fixed: gone, ...rest } = request;
  return fixed.length ? { ...rest, fixed } : rest;
}

/** The request in which a skill comes one place earlier (-1) or later (1) among those that are worked on for their own sake. */
export function reordered(request, sheet, skill, by) {
  const order = sheet.workOn.filter(one => one.role !== 'prerequisite').map(one => one.skill);
  const at = order.indexOf(skill);
  const to = at + by;
  if (at < 0 || to < 0 || to >= order.length) return request;
  [order[at], order[to]] = [order[to], order[at]];
  return { ...request, workOn: order };
}

/** The request with a finding or skill taken in or left out; what was asked the other way is let go. */
export function chosen(request, slug, kind) {
  const next = { ...request };
  for (const list of ['workOn', 'leaveOut', 'has']) {
    const names = (next[list] ?? []).filter(one => one !== slug);
    if (list === kind) names.push(slug);
    if (names.length) next[list] = names; else delete next[list];
  }
  return next;
}

/** What stands, with the steps that led there. */
export const begun = state => ({ now: state, past: [] });

/** A further step. */
export const stepped = ({ now, past }, state) => ({ now: state, past: [...past.slice(-49), now] });

/** One step back; the same where there is none. */
export const undone = visit => (visit.past.length ? { now: visit.past.at(-1), past: visit.past.slice(0, -1) } : visit);

/** Where a session stands, in words: "week 2 Monday". */
export function sessionName(weeks, place) {
  for (const week of weeks) for (const one of week.sessions) if (one.place === place) return `week ${week.week} ${one.day}`;
  return '';
}

/** The breaches of a session, by the place of the session; those of a week or the block under 'all'. */
export function byPlace(breaches, weeks) {
  const places = new Map(weeks.flatMap(week => week.sessions.map(one => [sessionName(weeks, one.place), one.place])));
  const grouped = new Map();
  for (const breach of breaches) {
    const key = places.get(breach.where) ?? 'all';
    grouped.set(key, [...(grouped.get(key) ?? []), breach]);
  }
  return grouped;
}

/** What is told after a check. */
export function verdict({ kept, breaches }, isChanged) {
  if (kept) return isChanged ? 'Moved by hand: every limit is kept.' : 'Every limit is kept.';
  return breaches.length === 1 ? 'This breaks a limit. ' : `This breaks ${breaches.length} limits. `;
}

/** What is proven of a plan, as a sentence. */
export function proofWords(proof, isChanged) {
  if (!proof.proven) return isChanged ? 'Moved by hand; how much better a plan could be is not known.' : 'Not proven best.';
  if (proof.best) return isChanged ? 'Moved by hand, and as good as the best plan there is under these limits.' : 'Proven: no better plan exists under these limits.';
  return `${isChanged ? 'Moved by hand' : 'Proven'}: at most ${proof.betterAtMostPercent} % better is possible under these limits.`;
}

/** Places in which a skill is trained or checked. */
export const placesOf = (weeks, skill) => weeks.flatMap(week => week.sessions.filter(one => one.blocks.some(block => block.skill === skill)).map(one => one.place));

/** A request without what was left open. */
export const bare = request => Object.fromEntries(Object.entries(request ?? OPEN).filter(([, value]) => value !== null));

/** Whether what is looked at is what is kept, block by block. */
export const stands = ({ sheet, sessions }, kept) => JSON.stringify(sheet) === JSON.stringify(kept.sheet) && JSON.stringify(sessions) === JSON.stringify(sessionsOf(kept.sheet.weeks));
