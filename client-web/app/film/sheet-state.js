/** What stands on a rep sheet: its groups, its cells, the next rep; no document in here. */

/** Columns by group, in the order one tags. A column that no group names stands under "More". */
export const GROUPS = [
  ['The snap', ['rep', 'quarter', 'clock', 'down', 'distance', 'snap', 'hash']],
  ['Before it', ['phase', 'play', 'direction', 'over', 'alignment', 'numbering', 'stance', 'surface', 'assignment', 'assignment_source', 'gap', 'blocker', 'help']],
  ['The exchange', ['exchange', 'get_off', 'first_contact', 'second_move_time', 'hand_cleared', 'hip_cleared']],
  ['How it ended', ['result', 'how_won', 'results', 'faults', 'chances', 'movement', 'shed', 'depth_at_contact', 'bodies_taken', 'ball_reach']],
  ['The view', ['not_seen', 'confidence', 'note']],
  ['The film', ['video', 'start', 'end']],
];
/** What names the log; told above the sheet. */
export const NAMES = ['prospect', 'game', 'evaluator', 'date', 'level', 'opponent'];
/** What the next rep of a game usually has in common with the one before. */
const CARRIED = ['prospect', 'game', 'evaluator', 'date', 'level', 'opponent', 'quarter', 'video', 'numbering', 'over'];

/** Groups with their columns as the server describes them. */
export function grouped(columns) {
  const byName = new Map(columns.map(column => [column.name, column]));
  const placed = new Set([...GROUPS.flatMap(([, names]) => names), ...NAMES]);
  const rest = columns.filter(column => !placed.has(column.name));
  return [...GROUPS.map(([title, names]) => [title, names.map(name => byName.get(name)).filter(Boolean)]), ...(rest.length ? [['More', rest]] : [])];
}

/** Cells without blanks around them, and without the blank ones. */
export const tidy = cells => Object.fromEntries(Object.entries(cells).map(([name, value]) => [name, String(value).trim()]).filter(([, value]) => value));

/** Whether two rows say the same. */
export function same(a, b) {
  const [x, y] = [tidy(a), tidy(b)];
  return Object.keys(x).length === Object.keys(y).length && Object.entries(x).every(([name, value]) => y[name] === value);
}

/** Columns in which two rows differ. */
export const differing = (a, b) => [...new Set([...Object.keys(a), ...Object.keys(b)])].filter(name => (a[name] ?? '') !== (b[name] ?? ''));

/** Where a new rep starts from, after the one before it. */
export const carried = cells => Object.fromEntries(CARRIED.filter(name => cells[name]).map(name => [name, cells[name]]));

/** The name after the last one: r20 gives r21, 9 gives 10. */
export function nextName(names) {
  let best = null;
  for (const name of names) {
    const found = /^(.*?)(\d+)$/.exec(name);
    if (found && (!best || Number(found[2]) >= Number(best[2]))) best = found;
  }
  return best ? best[1] + String(Number(best[2]) + 1).padStart(best[2].length, '0') : `r${String(names.length + 1).padStart(2, '0')}`;
}

/** Faults by column; those of no column stand under ''. */
export function byColumn(faults) {
  const found = new Map();
  for (const fault of faults) found.set(fault.column, [...(found.get(fault.column) ?? []), fault]);
  return found;
}

/** Film time as the log writes it, to the tenth: 75.25 is 1:15.3. */
export function filmTime(seconds) {
  const tenths = Math.round(seconds * 10);
  const s = (tenths % 600) / 10;
  const whole = Math.floor(tenths / 600);
  const text = s.toFixed(tenths % 10 ? 1 : 0);
  const padded = s < 10 ? `0${text}` : text;
  return whole >= 60 ? `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}:${padded}` : `${whole}:${padded}`;
}

/** Seconds of a film time as it may be typed; null where it is none. */
export function seconds(text) {
  if (!/^\d+(:\d{1,2}){0,2}(\.\d+)?$/.test(text.trim())) return null;
  return text.trim().split(':').reduce((sum, part) => sum * 60 + Number(part), 0);
}
