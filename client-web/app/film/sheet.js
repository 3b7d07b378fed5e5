/** The sheet of one rep: tagged from the keyboard, classified while it is typed, its film beside it. */
import { columns } from '../wire/book.js';
import { path, read, readTagged, send, Trouble } from '../wire/http.js';
import { labelsReady } from '../wire/labels.js';
import { el, show } from '../parts/elements.js';
import { repHref } from '../parts/reps.js';
import { pageKeys } from '../shell/keys.js';
import { notice } from '../shell/notices.js';
import { clipDeck } from './clip.js';
import { conflict } from './conflict.js';
import { sheetFields } from './sheet-fields.js';
import { rulesSay } from './rules-say.js';
import { carried, nextName, same, seconds, tidy } from './sheet-state.js';

const PAUSE = 250;
const ALL = 1000;
const UNSAVED = 'Not saved yet.';

export async function mount(page, context) {
  const { parameters, query, signal } = context;
  const { columns: known } = await columns();
  await labelsReady();
  const rep = parameters.rep ? await stored(parameters, query, signal) : null;
  const log = rep ? { prospect: rep.prospect, game: rep.game, evaluator: rep.evaluator } : { prospect: parameters.prospect, game: query.get('game'), evaluator: query.get('evaluator') };
  const others = log.prospect ? (await read('/api/reps', { ...log, limit: ALL }, context)).reps : [];
  const who = rep || others.length || !log.prospect ? null : await playerOf(log.prospect, context);
  const before = rep ? rep.cells : start(others, who, query);
  let tag = rep?.etag ?? null;
  let kept = rep ? rep.cells : {};
  let cells = { ...before };
  let timer = 0;
  let asked = 0;
  let saving = false;

  const says = el('section', { class: 'says', 'aria-live': 'polite' });
  const trouble = el('div', { role: 'alert' });
  const deck = clipDeck({ onmark: (column, time) => { fields.put(column, time); changed(column, time); } });
  const fields = sheetFields(known, cells, { fresh: !rep, onchange: changed });
  const state = el('span', { class: 'soft', role: 'status' });

  function changed(column, value) {
    cells = { ...cells, [column]: value };
    if (!saving) state.textContent = same(cells, kept) ? '' : UNSAVED;
    if (['video', 'start', 'end'].includes(column)) turn();
    clearTimeout(timer);
    timer = setTimeout(classify, PAUSE);
  }

  async function classify() {
    const now = ++asked;
    const found = await send('POST', '/api/classify', { body: { cells: tidy(cells) }, signal }).catch(() => null);
    if (!found || now !== asked) return;
    const blank = column => !(cells[column] ?? '').trim();
    const empty = found.body.faults.map(one => one.column).filter(blank);
    fields.faults([...found.body.faults.filter(one => rep || !blank(one.column)), ...found.body.warnings]);
    show(says, rulesSay(found.body, rep ? [] : empty));
  }

  const turn = () => deck.turnTo({ video: cells.video ?? '', start: seconds(cells.start ?? ''), end: seconds(cells.end ?? '') });

  async function save(next = false) {
    if (saving) return;
    const sent = cells;
    const body = { cells: tidy(sent) };
    show(trouble);
    saving = true;
    state.textContent = 'Saving \u2026';
    try {
      const answer = tag
        ? await send('PUT', atServer(rep), { parameters: { by: rep.evaluator }, body, tag, signal })
        : await send('POST', '/api/reps', { body, signal });
      saving = false;
      done(answer, sent, next);
    } catch (fault) {
      saving = false;
      state.textContent = UNSAVED;
      refused(fault);
    }
  }

  function done({ body: change, tag: newTag }, sent, next) {
    kept = sent;
    tag = newTag ?? change.reading?.etag ?? tag;
    state.textContent = same(cells, kept) ? 'Saved.' : UNSAVED;
    const reading = change.reading;
    notice(change.said, change.undo ? async () => {
      state.textContent = 'Taking it back \u2026';
      const undone = await send('POST', '/api/undo', { parameters: { revision: change.revision } }).catch(fault => { state.textContent = 'Saved.'; refused(fault); });
      if (!undone) return;
      notice(undone.body.said);
      context.open(rep || !undone.body.reading ? (rep ? repHref(rep) : `/film/${encodeURIComponent(reading.prospect)}`) : repHref(undone.body.reading), { replace: true });
    } : null);
    if (next) goOn(reading ?? rep);
    else if (!rep && reading) context.open(repHref(reading), { replace: true });
  }

  function goOn(reading) {
    const following = neighbor(1);
    context.open(following ? repHref(following) : newHref(reading ?? { ...log }));
  }

  function refused(fault) {
    if (!(fault instanceof Trouble)) throw fault;
    const { faults, current, reasons } = fault.problem;
    if (fault.status === 412 && current) {
      show(trouble, conflict({ mine: tidy(cells), theirs: current, columns: known,
        keep: () => { tag = current.etag; save(); },
        take: () => context.open(repHref(current), { replace: true }) }));
    } else {
      show(trouble, el('div', { class: 'trouble' }, el('p', {}, el('strong', {}, fault.title), ' ', fault.message), reasons?.length ? el('ul', {}, reasons.map(reason => el('li', {}, reason))) : null));
      if (faults) { fields.faults(faults); fields.firstFault(); }
    }
    trouble.scrollIntoView({ block: 'nearest' });
  }

  async function takeOut() {
    try {
      const { body: change } = await send('DELETE', atServer(rep), { parameters: { by: rep.evaluator }, tag, signal });
      context.open(path('film', rep.prospect) + `?game=${encodeURIComponent(rep.game)}`);
      notice(change.said, change.undo ? async () => {
        notice((await send('POST', '/api/undo', { parameters: { revision: change.revision } })).body.said);
        context.open(repHref(rep));
      } : null);
    } catch (fault) { refused(fault); }
  }

  const neighbor = by => {
    const at = others.findIndex(one => rep && one.rep === rep.rep && one.evaluator === rep.evaluator);
    return at < 0 ? undefined : others[at + by];
  };
  const go = by => { const next = neighbor(by); if (next) context.open(repHref(next)); };

  const name = rep ? `${before.rep}` : 'New rep';
  context.title(rep ? `${name}, ${before.prospect}` : 'New rep');
  page.append(
    head({ name, before, rep, log, previous: neighbor(-1), next: neighbor(1) }),
    el('form', { class: 'sheet', novalidate: true, onsubmit: event => { event.preventDefault(); save(); }, onkeydown: onward },
      el('div', { class: 'on-sheet' }, trouble, fields.root,
        el('div', { class: 'save-bar controls writes' }, el('button', { class: 'first' }, 'Save'), el('button', { type: 'button', onclick: () => save(true) }, 'Save, and the next rep'),
          rep ? el('button', { type: 'button', onclick: takeOut }, 'Take this rep out') : null, state)),
      el('div', { class: 'beside' }, deck.root, says)));
  keys(page, { save, go, deck, signal });
  await Promise.all([turn(), classify()]);
}

const atServer = ({ prospect, game, rep }) => `/api${path('reps', prospect, game, rep)}`;

async function stored(named, query, signal) {
  const { body, tag } = await readTagged(atServer(named), { by: query.get('by') }, { signal });
  return { ...body, etag: tag ?? body.etag };
}

/** The player of an id by his name; one whom nobody has told of yet is called by what stands in the address. */
async function playerOf(id, context) {
  try {
    return await read(`/api${path('prospects', id)}`, {}, context);
  } catch (fault) {
    if (!(fault instanceof Trouble) || fault.status !== 404) throw fault;
    return { name: id, games: [] };
  }
}

function start(others, who, query) {
  const last = others.at(-1);
  const game = query.get('game');
  const from = last ? carried(last.cells) : { ...(who ? { prospect: who.name } : {}), ...(game ? { game: who?.games.find(one => one.id === game)?.name ?? game } : {}) };
  return { ...from, rep: nextName(others.map(one => one.rep)) };
}

/** Enter goes to the next field, as in a table; Ctrl + Enter saves. */
function onward(event) {
  if (event.key !== 'Enter' || event.defaultPrevented || event.ctrlKey || !event.target.matches('input, select')) return;
  event.preventDefault();
  const all = [...event.currentTarget.querySelectorAll('.on-sheet :is(input, select, textarea, button)')].filter(one => one.offsetParent);
  all[all.indexOf(event.target) + (event.shiftKey ? -1 : 1)]?.focus();
}

const newHref = ({ prospect, game, evaluator }) => `${path('rep', prospect)}?game=${encodeURIComponent(game ?? '')}&evaluator=${encodeURIComponent(evaluator ?? '')}`;

function head({ name, before, rep, log, previous, next }) {
  const quarter = before.quarter ? `, quarter ${before.quarter}${before.clock ? ` at ${before.clock}` : ''}` : '';
  return el('header', { class: 'title' },
    el('nav', { class: 'sheet-nav', 'aria-label': 'Reps' },
      el('span', {}, log.prospect ? [el('a', { href: path('prospect', log.prospect) }, before.prospect ?? log.prospect), ' · ', el('a', { href: path('film', log.prospect) + (log.game ? `?game=${encodeURIComponent(log.game)}` : '') }, 'film log')] : el('a', { href: '/film' }, 'Film log')),
      el('span', {}, previous ? el('a', { href: repHref(previous) }, `‹ ${previous.rep}`) : null, previous ? ' · ' : '', next ? el('a', { href: repHref(next) }, `${next.rep} ›`) : rep ? el('a', { href: newHref(log) }, 'New rep') : null)),
    el('h1', {}, name),
    rep ? el('p', { class: 'eyebrow' }, `${before.game}${quarter}. Read by ${before.evaluator ?? 'somebody unnamed'}.`) : el('p', { class: 'eyebrow' }, before.game ? `After the last one of ${before.game}.` : 'Say whose rep it is, and in which game.'));
}

function keys(page, { save, go, deck, signal }) {
  const plain = { k: deck.deeds.play, j: deck.deeds.back, l: deck.deeds.on, ',': deck.deeds.frameBack, '.': deck.deeds.frameOn, i: deck.deeds.start, r: deck.deeds.loop, s: deck.deeds.slow, '[': deck.deeds.markStart, ']': deck.deeds.markEnd };
  const shown = [['k', 'play or pause'], ['j', '2 seconds back'], ['l', '2 seconds on'], [',', 'one frame back'], ['.', 'one frame on'], ['i', 'to the start of the rep'], ['r', 'loop the rep, or not'], ['s', 'slower'], ['[', 'the rep starts here'], [']', 'it ends here']];
  pageKeys('Rep sheet', [
    ['Ctrl + Enter', 'save'], ['Ctrl + Shift + Enter', 'save, and the next rep'],
    ...shown.map(([key, does]) => [`${key} or Alt + ${key}`, does, key, () => plain[key]()]),
    ['n', 'next rep', 'n', () => go(1)], ['p', 'rep before', 'p', () => go(-1)],
  ]);
  document.addEventListener('keydown', event => {
    if (event.key === 'Enter' && event.ctrlKey) { event.preventDefault(); event.stopPropagation(); save(event.shiftKey); return; }
    if (!event.altKey || event.ctrlKey || event.metaKey) return;
    const deed = plain[event.key] ?? ({ n: () => go(1), p: () => go(-1) })[event.key];
    if (deed) { event.preventDefault(); event.stopPropagation(); deed(); }
  }, { signal, capture: true });
}
