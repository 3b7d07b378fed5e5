/** Decisions are kept on the server; until it has them, and where it cannot be reached, in this browser. */
import { path, send, Trouble } from '../wire/http.js';
import { decided } from './notes-state.js';

const PAUSE = 500;
const LIGHT = 60_000;
const home = file => `notes:${file}`;

/** Decisions this browser still holds for a file: those of an earlier version of the page, or that the server never got. */
export function held(file) {
  try {
    const one = JSON.parse(localStorage.getItem(home(file)));
    if (!one || !Array.isArray(one.outline)) return null;
    return one.decided ? one : { decided: { chosen: onlyBooleans(one.chosen), phases: one.phases ?? {} }, outline: one.outline, base: null };
  } catch { return null; }
}

/** Lets go of what this browser holds for a file. */
export function letGo(file) {
  try { localStorage.removeItem(home(file)); } catch { /* There is nothing to let go of. */ }
}

function hold(file, set) {
  try { localStorage.setItem(home(file), JSON.stringify(set)); return true; } catch { return false; }
}

const onlyBooleans = chosen => Object.fromEntries(Object.entries(chosen ?? {}).filter(([, value]) => typeof value === 'boolean'));

/** Puts a set in place of version `version` of what the server has; gives the new version. */
export async function put(id, version, set) {
  const body = JSON.stringify(set);
  const { body: kept } = await send('PUT', path('api', 'notes', 'decisions', id),
    { body, ...(version ? { tag: `"d${version}"` } : { headers: { 'If-None-Match': '*' } }), keepalive: body.length < LIGHT });
  return kept.version;
}

/**
 * Keeps what is decided on one file, a moment after it was.
 * @param {{file: string, kept: {id: string, version: number}, outline: string[][], onkept: (words: string) => void, onstale: (current: object, mine: object) => void}} wants
 */
export function keeping({ file, kept: { id, version: first }, outline, onkept, onstale }) {
  let version = first;
  let waiting = null;
  let timer = 0;
  let busy = false;
  let stale = false;

  const setOf = state => ({ file, decided: decided(state), outline });

  async function flush() {
    clearTimeout(timer);
    if (busy || stale || !waiting) return;
    busy = true;
    const set = waiting;
    waiting = null;
    try {
      version = await put(id, version, set);
      if (!waiting) { letGo(file); onkept('kept'); }
    } catch (fault) {
      if (!(fault instanceof Trouble)) throw fault;
      const current = fault.status === 412 ? fault.problem.current : null;
      if (current && JSON.stringify(current.decided) === JSON.stringify(sorted(set.decided))) version = current.version;
      else if (fault.status === 412) { stale = true; onstale(current, waiting ?? set); } else onkept('kept in this browser alone; the server did not take it');
    } finally { busy = false; }
    if (waiting) flush();
  }

  return {
    save(state) {
      waiting = setOf(state);
      hold(file, { decided: waiting.decided, outline, base: version });
      clearTimeout(timer);
      timer = setTimeout(flush, PAUSE);
    },
    flush,
    /** After both versions were looked at: mine stands, in place of the other. */
    async insist(current, mine) {
      stale = false;
      version = current?.version ?? 0;
      waiting = mine;
      await flush();
    },
  };
}

/** As the server writes it: names in order, so that two of the same are alike. */
const sorted = ({ chosen, phases, changed, added, splits, merges }) => ({
  chosen: inOrder(chosen), phases: inOrder(phases), changed: inOrder(changed),
  added: added.map(({ concept, text, rep, after }) => ({ concept, text, rep, after })), splits: [...splits].sort(), merges: [...merges].sort() });

const inOrder = object => Object.fromEntries(Object.entries(object).sort(([a], [b]) => (a < b ? -1 : 1)));
export { sorted as asKept };
