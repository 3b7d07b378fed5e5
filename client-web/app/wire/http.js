/** The only place that talks to the server. A refused request is thrown as a Trouble with the server's own words. */

export class Trouble extends Error {
  /** @param {{title?: string, detail?: string, status?: number}} problem problem details as of RFC 9457 */
  constructor(problem) {
    super(problem.detail || problem.title || 'That did not work.');
    this.problem = problem;
    this.title = problem.title ?? 'That did not work';
    this.status = problem.status ?? 0;
  }
}

/** What the window hears when somebody has to sign in first. */
export const SIGNED_OUT = 'rushlight-signed-out';

/** What no page of another site can send: the server takes changes of a session with it alone. */
const OURS = { 'X-Requested-With': 'rushlight' };

const SILENT = {
  title: 'The server does not answer',
  detail: 'Is "rushlight serve" still running? Start it again and load this page anew.',
};

/** Reads JSON; null and empty parameters are left out, a list is repeated. */
export const read = (path, parameters = {}, { signal } = {}) => ask(address(path, parameters), { signal }).then(answer => answer.json());

/** Reads JSON together with the tag that names its version. */
export async function readTagged(path, parameters = {}, { signal } = {}) {
  const answer = await ask(address(path, parameters), { signal });
  return { tag: answer.headers.get('ETag'), body: await answer.json() };
}

/** Reads text, such as a drawing. */
export const readText = (path, parameters = {}, { signal } = {}) => ask(address(path, parameters), { signal }).then(answer => answer.text());

/** Sends JSON, or text or the bytes of a file with their type, and reads JSON back. With `wait: false` long work may answer with a job. */
export async function send(method, path, wants = {}) {
  const answer = await sent(method, path, wants);
  const text = await answer.text();
  return { tag: answer.headers.get('ETag'), body: text ? JSON.parse(text) : null };
}

/** Sends JSON, or text with its type, and reads text back. */
export const sendForText = (method, path, wants = {}) => sent(method, path, wants).then(answer => answer.text());

function sent(method, path, { parameters = {}, body, type = 'application/json', tag, wait = true, keepalive = false, headers: more = {}, signal } = {}) {
  const headers = { ...OURS, ...more, ...(body === undefined ? {} : { 'Content-Type': type }), ...(tag ? { 'If-Match': tag } : {}), ...(wait ? {} : { Prefer: 'respond-async' }) };
  return ask(address(path, parameters), { method, headers, body: typeof body === 'string' || body instanceof ArrayBuffer ? body : JSON.stringify(body), keepalive, signal });
}

/** A path with its parameters. */
export function address(path, parameters) {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(parameters)) {
    for (const one of Array.isArray(value) ? value : [value]) {
      if (one !== null && one !== undefined && one !== '') query.append(name, one);
    }
  }
  const text = query.toString();
  return text ? `${path}?${text}` : path;
}

/** Parts of a path, each one escaped. */
export const path = (...parts) => `/${parts.map(encodeURIComponent).join('/')}`;

async function ask(url, options) {
  let answer;
  try {
    answer = await fetch(url, { ...options, headers: { Accept: 'application/json, image/svg+xml;q=0.9, text/*;q=0.5', ...options.headers } });
  } catch (fault) {
    if (fault.name === 'AbortError') throw fault;
    throw new Trouble(SILENT);
  }
  if (answer.ok) return answer;
  if (answer.status === 401 && url !== '/api/session') dispatchEvent(new Event(SIGNED_OUT));
  throw new Trouble(await problem(answer));
}

async function problem(answer) {
  try {
    return { status: answer.status, ...await answer.json() };
  } catch {
    return { status: answer.status, title: `The server answered ${answer.status}`, detail: 'It gave no reason.' };
  }
}
