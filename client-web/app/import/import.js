/** Import: a CSV is checked, mended beside its faults, and taken in. Nothing is kept before one says so. */
import { columns } from '../wire/book.js';
import { read, send, Trouble } from '../wire/http.js';
import { labelsReady } from '../wire/labels.js';
import { oddities, summary } from './said.js';
import { choice, counted, el, field, show } from '../parts/elements.js';
import { utf8 } from '../parts/file-text.js';
import { notice } from '../shell/notices.js';
import { pageKeys } from '../shell/keys.js';
import { parse, renumbered, write } from './csv.js';
import { faultTable } from './faults.js';
import { finish, save } from './report.js';

const WAIT = 400;

export async function mount(page, context) {
  context.title('Import');
  pageKeys('Import', [['Tab', 'from fault to fault'], ['Enter', 'in a cell: check again']]);
  const [{ numbering, defaultNumbering }] = await Promise.all([columns(), labelsReady()]);
  const below = el('div', { 'aria-live': 'polite' });
  let wants = { mode: 'replace', evaluator: '', numbering: '' };
  let file = null;

  const zone = dropZone(took);
  const settings = el('div', { class: 'row filters controls' },
    field('A log that is here already', choice('mode', [['replace', 'is replaced whole'], ['add', 'keeps reps the file does not name']], wants.mode, mode => set({ mode }))),
    field('Who read rows that name nobody', el('input', { id: 'evaluator', placeholder: 'unnamed', onchange: event => set({ evaluator: event.target.value }) })),
    field('Numbering of bare alignment numbers', choice('numbering', [['', defaultNumbering ? `as set: system ${defaultNumbering}` : 'none: they stay ambiguous'], ...numbering.map(one => [one.system, one.label])], '', value => set({ numbering: value }))));
  page.append(el('h1', {}, 'Import a film log'),
    el('p', { class: 'lead' }, 'A CSV with one row a rep, or a list of prospects. It is checked first; what cannot be read comes back beside its row.'),
    zone, el('details', { class: 'brief' }, el('summary', {}, 'Which columns, and how rows are taken in'), settings, columnHelp((await columns()).columns)), below);

  function set(change) {
    wants = { ...wants, ...change };
    if (file) check();
  }

  async function took(chosen) {
    const bytes = await chosen.arrayBuffer();
    const text = utf8(bytes);
    file = { name: chosen.name, body: bytes, readable: text !== null, rows: text === null ? [] : parse(text) };
    await check();
  }

  async function check() {
    show(below, el('p', { class: 'loading' }, `Reading ${file.name} …`));
    try {
      const { body: report } = await send('POST', '/api/import/check', { parameters: { name: file.name, evaluator: wants.evaluator, numbering: wants.numbering }, body: file.body, type: 'text/csv', signal: context.signal });
      checked(report);
    } catch (fault) { failed(fault); }
  }

  function checked(report) {
    const faults = report.faults.length;
    show(below,
      el('h2', {}, faults ? `${counted(faults, 'fault')} in ${file.name}` : `${file.name} can be taken in`),
      el('p', {}, summary(report)),
      report.reasons.length ? el('div', { class: 'trouble' }, report.reasons.map(reason => el('p', {}, reason))) : null,
      faults ? [
        el('p', { class: 'soft' }, file.readable ? 'Mend a value where it stands, or take what may have been meant. Then check again; the file on your disk stays as it is.'
          : 'Nothing can be mended here, because the letters of this file cannot be told for sure. Save it anew as told below and pick it again; nothing of it was kept.'),
        faultTable({ faults: report.faults, rows: file.rows, header: report.header, onchange: mended, oncheck: check })] : null,
      buttons(report, faults),
      report.warnings.length ? el('details', { class: 'brief' }, el('summary', {}, oddities(report.warnings.length)), el('ul', {}, report.warnings.slice(0, 200).map(one => el('li', {}, one.line ? `Line ${one.line}: ` : '', one.message)))) : null);
  }

  /** Cells were mended; lines are counted anew, as they stand in the file then. */
  function mended(rows) {
    file.rows = rows;
    file.body = write(rows);
    file.touched = true;
  }

  function buttons(report, faults) {
    const good = report.kind === 'film-log' ? report.readings : report.prospects;
    const what = report.kind === 'film-log' ? 'rep' : 'prospect';
    return el('p', { class: 'row controls' },
      faults && file.readable ? el('button', { type: 'button', class: 'first', onclick: again }, 'Check again') : null,
      good && file.readable && !report.reasons.length ? el('button', { type: 'button', class: faults ? '' : 'first', onclick: () => take(faults > 0) }, faults ? `Take in the ${counted(good, `good ${what}`)}` : `Take in ${counted(good, what)}`) : null,
      report.badCsv ? el('button', { type: 'button', onclick: () => save(`faulty-${file.name}`, report.badCsv) }, 'Download the faulty rows') : null,
      file.touched ? el('button', { type: 'button', onclick: () => save(file.name, file.body) }, 'Download the mended file') : null);
  }

  function again() {
    if (file.touched) file.rows = renumbered(file.rows);
    return check();
  }

  async function take(keepGood) {
    try {
      const answer = await send('POST', '/api/import', { parameters: { name: file.name, ...wants, keepGood }, body: file.body, type: 'text/csv', wait: false, signal: context.signal });
      const report = answer.body.job ? await waited(answer.body) : answer.body;
      if (!report) return;
      if (!report.imported) { checked(report); return; }
      show(below, finish(report));
      const revision = report.revision;
      notice(`Took in ${counted(report.came, 'rep')}.`, report.kind === 'film-log' && report.came ? async () => {
        notice((await send('POST', '/api/undo', { parameters: { revision } })).body.said);
        check();
      } : null);
    } catch (fault) { failed(fault); }
  }

  async function waited(job) {
    const bar = el('progress', { max: 1, value: 0, 'aria-label': 'How far it is' });
    const step = el('p', {}, job.step);
    show(below, el('h2', {}, `Taking in ${file.name}`), step, bar);
    let now = job;
    while (now.state === 'running' && !context.signal.aborted) {
      await new Promise(resolve => { setTimeout(resolve, WAIT); });
      now = await read(`/api/jobs/${encodeURIComponent(job.job)}`, {}, context);
      step.textContent = now.step;
      bar.value = now.done;
    }
    if (now.problem) throw new Trouble(now.problem);
    return now.report;
  }

  function failed(fault) {
    if (!(fault instanceof Trouble)) throw fault;
    const { faults, reasons } = fault.problem;
    show(below, el('div', { class: 'trouble', role: 'alert' }, el('p', {}, el('strong', {}, fault.title)), el('p', {}, fault.message),
      reasons?.length ? el('ul', {}, reasons.map(reason => el('li', {}, reason))) : null,
      faults?.length ? el('ul', {}, faults.slice(0, 20).map(one => el('li', {}, one.message))) : null));
  }
}

function dropZone(took) {
  const input = el('input', { id: 'csv', type: 'file', accept: '.csv,text/csv', onchange: event => { if (event.target.files[0]) took(event.target.files[0]); } });
  const zone = el('div', { class: 'drop-zone' }, el('p', {}, el('label', { for: 'csv' }, 'Drop a CSV here, or pick one')), input);
  for (const name of ['dragover', 'dragenter']) zone.addEventListener(name, event => { event.preventDefault(); zone.classList.add('over'); });
  zone.addEventListener('dragleave', () => zone.classList.remove('over'));
  zone.addEventListener('drop', event => {
    event.preventDefault();
    zone.classList.remove('over');
    if (event.dataTransfer.files[0]) took(event.dataTransfer.files[0]);
  });
  return zone;
}

const columnHelp = known => el('div', { class: 'scroller', tabindex: 0, role: 'group', 'aria-label': 'Columns of a film log' }, el('table', {}, el('caption', {}, 'Columns of a film log. Any name of a term will do, or its slug; lists are parted by ";".'),
  el('tbody', {}, known.map(column => el('tr', {}, el('th', { scope: 'row' }, column.name, column.required ? ' *' : ''), el('td', {}, column.help, column.oneOf ? el('span', { class: 'soft' }, ` ${column.oneOf.join(', ')}`) : null))))));
