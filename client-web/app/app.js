/** Starts the program: one page at a time, each with an address of its own. */
import { SIGNED_OUT, Trouble } from './wire/http.js';
import { el, show } from './parts/elements.js';
import { listenForKeys, pageKeys } from './shell/keys.js';
import { readyNotices } from './shell/notices.js';
import { questionBox } from './shell/question-box.js';
import { place, staysHere } from './shell/router.js';
import { showWho } from './shell/who.js';
import { signInAddress } from './sign-in/sign-in-state.js';
import { listenForFolding } from './parts/claim.js';

const PAGES = {
  ask: () => import('./ask/ask.js'),
  book: () => import('./technique/book.js'),
  technique: () => import('./technique/technique.js'),
  prospect: () => import('./prospect/prospect.js'),
  film: () => import('./film/film.js'),
  sheet: () => import('./film/sheet.js'),
  import: () => import('./import/import.js'),
  notes: () => import('./notes/notes.js'),
  report: () => import('./report/report.js'),
  compare: () => import('./compare/compare.js'),
  board: () => import('./board/board.js'),
  plan: () => import('./plan/plan.js'),
  'cross-check': () => import('./cross-check/cross-check.js'),
  programs: () => import('./programs/programs.js'),
  'sign-in': () => import('./sign-in/sign-in.js'),
  lost: () => import('./shell/lost.js'),
};
const MENU = [
  ['Ask', '/', ['ask']],
  ['Board', '/board', ['board', 'prospect', 'report']],
  ['Book', '/technique', ['book', 'technique']],
  ['Film', '/film', ['film', 'sheet']],
  ['Notes', '/notes', ['notes']],
  ['Import', '/import', ['import']],
  ['Plan', '/plan', ['plan']],
  ['Compare', '/compare', ['compare']],
  ['Cross-check', '/cross-check', ['cross-check']],
];

/** How long the old page stays before an unfinished one is shown, in milliseconds. */
const PATIENCE = 120;
const main = document.getElementById('main');
let visit = new AbortController();

/** Goes to an address of this program. */
function open(href, { replace = false } = {}) {
  const url = new URL(href, location.href);
  history[replace ? 'replaceState' : 'pushState']({}, '', url);
  return enter({ fresh: true });
}

async function enter({ fresh = false } = {}) {
  visit.abort();
  visit = new AbortController();
  const { signal } = visit;
  const { name, parameters } = place(location.pathname);
  frame(name);
  try {
    const page = await PAGES[name]();
    if (signal.aborted) return;
    const context = { parameters, query: new URLSearchParams(location.search), signal, open, title: name => title(name, signal) };
    const content = el('div', { class: `page page-${name}` });
    main.setAttribute('aria-busy', 'true');
    const ready = page.mount(content, context);
    const patience = setTimeout(() => { if (!signal.aborted && main.firstChild !== content) show(main, content); }, PATIENCE);
    await Promise.resolve(ready).finally(() => clearTimeout(patience));
    if (signal.aborted) return;
    show(main, content);
    performance.mark('page-shown');
  } catch (fault) {
    if (signal.aborted) return;
    report(fault);
  } finally {
    if (!signal.aborted) main.setAttribute('aria-busy', 'false');
  }
  if (fresh) { scrollTo(0, 0); main.focus({ preventScroll: true }); }
  if (location.hash) document.getElementById(decodeURIComponent(location.hash.slice(1)))?.scrollIntoView();
}

function frame(name) {
  pageKeys('', []);
  show(document.getElementById('pages'), MENU.map(([words, href, names]) =>
    el('a', { href, 'aria-current': names.includes(name) ? 'page' : null }, words)));
  show(document.getElementById('question-home'), ['ask', 'sign-in'].includes(name) ? [] : questionBox({ open }).root);
}

function title(name, signal) {
  if (!signal.aborted) document.title = name ? `${name} · Rushlight` : 'Rushlight';
}

function report(fault) {
  const known = fault instanceof Trouble;
  document.title = 'Rushlight';
  show(main, el('h1', {}, known ? fault.title : 'This page could not be drawn'),
    el('p', { class: 'lead' }, known ? fault.message : 'That is a fault of the program. Load the page anew; if it stays, tell us what you did.'),
    el('p', {}, el('a', { href: '/' }, 'To the start')));
  if (!known) console.error(fault);
}

document.addEventListener('click', event => {
  const link = event.target instanceof Element ? event.target.closest('a[href]') : null;
  if (!link || event.defaultPrevented || !staysHere(link, event, location.origin)) return;
  if (link.pathname === location.pathname && link.search === location.search && link.hash) return;
  event.preventDefault();
  open(link.href);
});
addEventListener('popstate', () => enter());
addEventListener(SIGNED_OUT, () => { if (location.pathname !== '/sign-in') open(signInAddress(location.pathname + location.search + location.hash), { replace: true }); });
readyNotices();
listenForKeys(open);
listenForFolding();
enter().then(showWho);
