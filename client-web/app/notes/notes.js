/** Notes: what was spoken or typed while the film ran becomes proposed reps, and those a person accepts become a film log. */
import { columns } from '../wire/book.js';
import { path, read, send, sendForText, Trouble } from '../wire/http.js';
import { labelsReady } from '../wire/labels.js';
import { counted, el, field, show } from '../parts/elements.js';
import { tolerant } from '../parts/file-text.js';
import { clipDeck } from '../film/clip.js';
import { save } from '../import/report.js';
import { pageKeys } from '../shell/keys.js';
import { notice } from '../shell/notices.js';
import { learned } from './learned.js';
import { asKept, held, keeping, letGo, put } from './keeping.js';
import { begun, decided, outline, progress } from './notes-state.js';
import { review, told } from './review.js';

const TYPED = 'typed.txt';

export async function mount(page, context) {
  context.title('Notes');
  const [{ columns: known }, { prospects }] = await Promise.all([columns(), read('/api/prospects', {}, context), labelsReady()]);
  const phases = known.find(column => column.name === 'phase')?.oneOf ?? [];
  let file = null;
  let open = null;
  let inGeneral = [];
  let keeper = null;
  const below = el('div', { 'aria-live': 'off' });
  const trouble = el('div', { role: 'alert' });
  const far = el('span', {});
  const deck = clipDeck({});
  const film = el('details', { class: 'brief film-beside' }, el('summary', {}, 'The film beside it'), deck.root);
  const taught = learned({ context, again: () => file && readNotes() });
  const box = (id, words, attributes = {}) => field(words, el('input', { id, autocomplete: 'off', ...attributes }));
  const value = id => page.querySelector(`#${id}`).value.trim();

  const by = deed => event => { event.preventDefault(); deed(); };
  pageKeys('Notes', [
    ['j', 'to the next tag', 'j', () => open?.walk(1)], ['k', 'to the former tag', 'k', () => open?.walk(-1)],
    ['a', 'accept it and go on', 'a', () => open?.choose(true)], ['r', 'reject it and go on', 'r', () => open?.choose(false)],
    ['s', 'accept what is sure in this rep', 's', () => open?.chooseSure()], ['c', 'change it to another', 'c', by(() => open?.change())],
    ['t', 'add a tag, of the marked words where there are some', 't', by(() => open?.add())], ['b', 'a rep begins here', 'b', () => open?.split()],
    ['m', 'join the rep with the next', 'm', () => open?.merge()], ['u', 'take the last decision back', 'u', () => open?.undo()],
  ]);

  const typed = el('textarea', { id: 'typed', rows: 5, placeholder: '[0:12] wide 9, chops, dips, flattens, sack' });
  page.append(el('h1', {}, 'Notes become reps'),
    el('p', { class: 'lead' }, 'Speak or type while the film runs. Each tag is shown beside the words it came from; nothing is kept that you did not accept.'),
    dropZone(took),
    el('details', { class: 'brief' }, el('summary', {}, 'Or type them here'), field('A time and what you see, one line a rep', typed, { wide: true }),
      el('p', {}, el('button', { type: 'button', onclick: () => took(new File([typed.value], TYPED)) }, 'Read them'))),
    el('div', { class: 'fields controls whose' },
      box('prospect', 'Whose reps', { list: 'known-prospects', onchange: () => file && readNotes() }), box('game', 'Which game'), box('evaluator', 'Who speaks'),
      box('video', 'Film the times belong to', { onchange: () => turn(null) }),
      el('datalist', { id: 'known-prospects' }, prospects.map(one => el('option', { value: one.name })))),
    trouble, below, taught.root);

  async function took(chosen) {
    file = { name: chosen.name, bytes: await chosen.arrayBuffer() };
    await readNotes();
  }

  async function readNotes() {
    show(trouble);
    show(below, el('p', { class: 'loading' }, `Reading ${file.name} …`));
    try {
      await keeper?.flush();
      const sheet = await sheetOf(file);
      opened(await brought(sheet) ? await sheetOf(file) : sheet);
    } catch (fault) { show(below); failed(fault); }
  }

  const sheetOf = async ({ name, bytes }) => (await send('POST', '/api/notes', { parameters: { name, prospect: value('prospect') }, body: bytes, type: 'text/plain', signal: context.signal })).body;

  /** Brings decisions that only this browser has to the server, where nothing else stands there; whether it did. */
  async function brought({ kept: { id, version, decided: stored } }) {
    const mine = held(file.name);
    if (!mine) return false;
    const set = { file: file.name, decided: decided(begun(mine.decided)), outline: mine.outline };
    if (version === (mine.base ?? 0)) {
      await put(id, version, set);
      letGo(file.name);
      return true;
    }
    if (JSON.stringify(stored) === JSON.stringify(asKept(set.decided))) letGo(file.name);
    else {
      notice('This browser holds other decisions on this file, which the server never got. Those of the server are shown.', null,
        ['Take this browser\u2019s', async () => { await put(id, version, set); letGo(file.name); await readNotes(); }]);
    }
    return false;
  }

  function opened(sheet) {
    const { reps, statements } = sheet.notes;
    inGeneral = statements.map(one => one.key);
    const first = begun(sheet.kept.decided);
    const saved = el('span', { class: 'soft small' });
    const heading = el('h2', {});
    keeper = keeping({ file: file.name, kept: sheet.kept, outline: outline(sheet.notes), onkept: words => { saved.textContent = ` · ${words}`; taught.kept(); }, onstale: both });
    open = review({ sheet, state: first, phases, onchange: changed, onrep: turn, oncue: cue => { film.open = true; turn({ start: cue.start, end: cue.end }); } });
    show(below,
      heading,
      reps.length ? null : el('p', {}, 'Nothing in these notes speaks of a rep. One line a rep reads best, with its time in brackets.'),
      sheet.kept.version === 0 && sheet.kept.others ? el('p', { class: 'soft' }, `Decisions on ${counted(sheet.kept.others, 'other file')} of this name are kept apart; this one begins its own.`) : null,
      film, open.root,
      el('div', { class: 'save-bar controls' }, el('p', { class: 'far', role: 'status' }, far, saved),
        el('button', { type: 'button', class: 'first', onclick: take }, 'Take in what is accepted'),
        el('button', { type: 'button', onclick: download }, 'Download it as CSV')));

    function changed(state, left) {
      if (state !== first) { saved.textContent = ''; keeper.save(state); }
      heading.textContent = left.length ? `${counted(left.length, 'rep')} in ${file.name}` : `No rep in ${file.name}`;
      far.textContent = told(progress(left, state));
    }
  }

  /** Somebody else decided meanwhile: both versions, and a choice. */
  function both(current, mine) {
    const tell = set => `${counted(Object.keys(set.chosen).length, 'decision')}, ${counted(set.added.length + Object.keys(set.changed).length, 'tag')} added or changed`;
    show(trouble, el('div', { class: 'trouble' },
      el('p', {}, el('strong', {}, 'Somebody decided on these notes after you opened them.'), ' Nothing of yours is lost: choose which stands; the other can be brought back.'),
      el('ul', {}, el('li', {}, `Yours: ${tell(mine.decided)}.`), current ? el('li', {}, `Kept now: ${tell(current.decided)}.`) : null),
      el('p', { class: 'row' }, el('button', { type: 'button', onclick: async () => { show(trouble); await keeper.insist(current, mine); } }, 'Keep mine'),
        el('button', { type: 'button', onclick: async () => { letGo(file.name); keeper = null; await readNotes(); } }, 'Take what is kept'))));
    trouble.scrollIntoView({ block: 'nearest' });
  }

  const turn = rep => deck.turnTo({ video: value('video'), start: rep?.start ?? null, end: rep?.end ?? null });

  async function log() {
    const missing = [['prospect', 'whose reps these are'], ['game', 'which game it was']].find(([id]) => !value(id));
    if (missing) {
      page.querySelector(`#${missing[0]}`).focus();
      throw new Trouble({ title: 'One thing is missing', detail: `Say ${missing[1]}: a film log names the player and the game.` });
    }
    return sendForText('POST', '/api/notes/log', { body: all(), signal: context.signal });
  }

  const all = () => ({ name: file.name, text: tolerant(file.bytes), prospect: value('prospect'), game: value('game'), video: value('video'), evaluator: value('evaluator'), decided: decided(open.state()) });

  /** Keeps what was accepted of the player in general; gives the sentence that says so. */
  async function general() {
    const { chosen } = open.state();
    if (!inGeneral.some(key => chosen[key])) return '';
    const { body: { opinions } } = await send('POST', '/api/notes/opinions', { body: all(), signal: context.signal });
    return opinions.length ? ` ${counted(opinions.length, 'opinion')} of him stand${opinions.length === 1 ? 's' : ''} beside what his reps say.` : '';
  }

  async function download() {
    show(trouble);
    try { save(`${file.name.replace(/\.[^.]*$/, '')}.csv`, await log()); } catch (fault) { failed(fault); }
  }

  async function take() {
    show(trouble);
    try {
      const body = await log();
      const { body: report } = await send('POST', '/api/import', { parameters: { name: file.name, mode: 'add', evaluator: value('evaluator') }, body, type: 'text/csv', signal: context.signal });
      const more = await general();
      const revision = report.revision;
      notice(`Took in ${counted(report.came, 'rep')}.`, report.came ? async () => {
        notice((await send('POST', '/api/undo', { parameters: { revision } })).body.said);
      } : null);
      show(trouble, el('p', {}, `${counted(report.came, 'rep')} of ${file.name} came in: `, report.logs.map(one => el('a', { href: path('film', one.prospect) }, 'his film log')), more));
    } catch (fault) { failed(fault); }
  }

  function failed(fault) {
    if (!(fault instanceof Trouble)) throw fault;
    const { faults, reasons } = fault.problem;
    show(trouble, el('div', { class: 'trouble' }, el('p', {}, el('strong', {}, fault.title)), el('p', {}, fault.message),
      reasons?.length ? el('ul', {}, reasons.map(reason => el('li', {}, reason))) : null,
      faults?.length ? el('ul', {}, faults.slice(0, 20).map(one => el('li', {}, one.message))) : null));
    trouble.scrollIntoView({ block: 'nearest' });
  }
}

function dropZone(took) {
  const input = el('input', { id: 'notes-file', type: 'file', accept: '.vtt,.srt,.txt,text/vtt,text/plain', onchange: event => { if (event.target.files[0]) took(event.target.files[0]); } });
  const zone = el('div', { class: 'drop-zone' }, el('p', {}, el('label', { for: 'notes-file' }, 'Drop notes here (.vtt, .srt or lines with times), or pick a file')), input);
  for (const name of ['dragover', 'dragenter']) zone.addEventListener(name, event => { event.preventDefault(); zone.classList.add('over'); });
  zone.addEventListener('dragleave', () => zone.classList.remove('over'));
  zone.addEventListener('drop', event => {
    event.preventDefault();
    zone.classList.remove('over');
    if (event.dataTransfer.files[0]) took(event.dataTransfer.files[0]);
  });
  return zone;
}
