/** The report of one prospect: what the evaluator writes into it on the left, the two pages it makes on the right. */
import { path, readTagged, send } from '../wire/http.js';
import { choice, counted, el, field, show } from '../parts/elements.js';
import { pageKeys } from '../shell/keys.js';
import { notice } from '../shell/notices.js';
import { clash } from './clash.js';
import { held, hold, letGo } from './drafts.js';
import { preview } from './preview.js';
import { moved, room, same, sent, settle, sheetOf, switched, taken, trouble, withSentence } from './report-state.js';

const KEYS = 9;

export async function mount(page, context) {
  const { parameters: { id }, signal } = context;
  const { tag, body } = await readTagged(`/api${path('prospects', id, 'report')}`, {}, { signal });
  context.title(`Report of ${body.name}`);
  new Desk(page, context, body, tag).open();
}

/** One report on the page. */
class Desk {
  constructor(page, context, body, tag) {
    const id = context.parameters.id;
    Object.assign(this, { page, id, body, tag, home: `/api${path('prospects', id, 'report')}`, stored: sheetOf(body), sheet: sheetOf(body), paper: 'letter', clashes: [] });
    this.preview = preview({ href: `${this.home}/preview`, signal: context.signal,
      onlink: words => notice(`${words}: in the PDF and the saved page this opens the film that lies beside it.`) });
  }

  open() {
    const { body } = this;
    this.summary = el('textarea', { id: 'summary', rows: 8, 'aria-describedby': 'room', oninput: event => this.set({ summary: event.target.value }) });
    this.summary.addEventListener('keydown', event => { if (event.ctrlKey && event.key === 'Enter') { event.preventDefault(); this.keep(); } });
    this.author = el('input', { id: 'author', type: 'text', maxlength: 120, autocomplete: 'name', oninput: event => this.set({ author: event.target.value }) });
    this.room = el('p', { class: 'soft small', id: 'room' });
    this.suggested = el('ol', { class: 'bare suggested' });
    this.parts = el('ol', { class: 'bare parts' });
    this.trouble = el('div', {});
    this.state = el('span', { class: 'soft small', role: 'status' });
    show(this.page,
      el('header', { class: 'title' }, el('p', { class: 'eyebrow' }, el('a', { href: path('prospect', this.id) }, body.name)), el('h1', {}, `Report of ${body.name}`),
        el('p', { class: 'lead' }, 'Two pages to print. The counts fill themselves in; the summary is yours.')),
      el('div', { class: 'report-desk' }, el('div', { class: 'report-form' }, this.trouble, this.form()), this.beside()));
    pageKeys('Report', [...body.suggested.slice(0, KEYS).map((sentence, i) => [String(i + 1), `sentence ${i + 1} in or out`, String(i + 1), () => this.take(sentence)]),
      ['w', 'to the summary', 'w', event => { event.preventDefault(); this.summary.focus(); }], ['s', 'keep it', 's', () => this.keep()], ['Ctrl + Enter', 'keep it, from the summary']]);
    this.pickUp();
    this.write();
    this.draw({ now: true });
  }

  form() {
    return el('form', { onsubmit: event => { event.preventDefault(); this.keep(); } },
      field('Summary, in your words', this.summary), this.room,
      el('section', { 'aria-labelledby': 'suggested' }, el('h2', { id: 'suggested' }, 'Sentences the counts have earned'),
        this.body.suggested.length ? [el('p', { class: 'soft small' }, 'Click a sentence, or press its number, to put it where your cursor is; again to take it out.'), this.suggested]
          : el('p', { class: 'soft' }, 'None yet: nothing stands on this tape.')),
      field('Written by', this.author),
      el('section', { 'aria-labelledby': 'parts' }, el('h2', { id: 'parts' }, 'Parts'),
        el('p', { class: 'soft small' }, 'Safety, the limits of the tape and the cautions always print.'), this.parts),
      el('p', { class: 'row report-keep writes' }, el('button', { type: 'submit', class: 'first' }, 'Keep it'), this.state));
  }

  beside() {
    const paper = choice('paper', [['letter', 'Letter'], ['a4', 'A4']], this.paper, value => { this.paper = value; this.draw({ now: true }); });
    return el('section', { class: 'report-beside', 'aria-label': 'Preview' },
      el('div', { class: 'row controls' }, el('label', { for: 'paper' }, 'Paper'), paper, el('button', { type: 'button', onclick: () => this.preview.print() }, 'Print'),
        el('button', { type: 'button', onclick: () => this.download() }, 'PDF')),
      this.preview.root);
  }

  /** Words that this browser still holds from another visit. */
  pickUp() {
    const draft = held(this.id);
    if (!draft || same(draft.sheet, this.stored)) { letGo(this.id); return; }
    if (draft.tag === this.tag) {
      this.sheet = draft.sheet;
      notice('Here is what you wrote last time and had not kept yet.', () => { this.set(this.stored); this.write(); });
    } else this.meet(draft.base, draft.sheet, this.stored);
  }

  /** A change of one or more fields. */
  set(change) {
    this.sheet = { ...this.sheet, ...change };
    this.changed();
  }

  changed() {
    if (same(this.sheet, this.stored)) letGo(this.id);
    else hold(this.id, { sheet: this.sheet, base: this.stored, tag: this.tag });
    this.tell();
    this.draw();
  }

  take(sentence) {
    const { text, caret } = withSentence(this.sheet.summary, sentence, this.summary.selectionStart);
    this.set({ summary: text });
    this.summary.value = text;
    this.summary.setSelectionRange(caret, caret);
  }

  /** Puts the sheet into the form. */
  write() {
    this.summary.value = this.sheet.summary;
    this.author.value = this.sheet.author;
    this.list();
    this.tell();
  }

  tell() {
    const left = room(this.sheet.summary, this.body.longest);
    show(this.room, left < 0 ? trouble(this.sheet, this.body.longest) : `${counted(left, 'letter')} left. Each line is a paragraph.`);
    this.summary.setAttribute('aria-invalid', String(left < 0));
    show(this.state, same(this.sheet, this.stored) ? 'Nothing to keep.' : 'Not kept yet; this browser holds it.');
    show(this.suggested, this.body.suggested.map((sentence, i) => el('li', {}, el('button', { type: 'button', class: 'sentence-choice', 'aria-pressed': String(taken(this.sheet.summary, sentence)), onclick: event => this.taking(event, sentence) },
      i < KEYS ? el('kbd', {}, String(i + 1)) : null, el('span', {}, sentence)))));
  }

  /** The button that was pressed is drawn anew and keeps the keyboard. */
  taking(event, sentence) {
    const place = [...this.suggested.querySelectorAll('button')].indexOf(event.currentTarget);
    this.take(sentence);
    this.suggested.querySelectorAll('button')[place]?.focus({ preventScroll: true });
  }

  list() {
    const { parts } = this.sheet;
    show(this.parts, parts.map(({ part, title, wanted }, i) => el('li', {},
      el('input', { type: 'checkbox', id: `part-${part}`, checked: wanted, onchange: () => this.arrange(switched(parts, part), `#part-${part}`) }),
      el('label', { for: `part-${part}` }, title),
      ...[['up', -1, '↑', i > 0], ['down', 1, '↓', i < parts.length - 1]].map(([way, by, sign, can]) =>
        el('button', { type: 'button', class: `move-${way}`, 'aria-label': `${title}: one place ${way}`, disabled: !can, onclick: () => this.arrange(moved(parts, part, by), `#part-${part} ~ .move-${way}`) }, sign)))));
  }

  arrange(parts, focus) {
    if (parts === this.sheet.parts) notice('A report has one part at least.');
    this.set({ parts });
    this.list();
    const at = this.parts.querySelector(focus);
    (at?.disabled ? at.parentElement.querySelector('input') : at)?.focus();
  }

  /** What is known to be too long is not sent: the server would refuse it. */
  draw(when) {
    const why = trouble(this.sheet, this.body.longest);
    if (why) this.preview.refuse(why);
    else this.preview.draw({ ...sent(this.sheet), paper: this.paper }, when);
  }

  /** Keeps what stands in the form over the version it began from; true where it is kept. */
  async keep() {
    const why = trouble(this.sheet, this.body.longest) || (this.clashes.length ? 'First choose which version stands, above.' : '');
    if (why) { notice(why); return false; }
    if (same(this.sheet, this.stored)) return true;
    const before = this.stored;
    try {
      await this.put(this.sheet);
      notice('Kept the report.', async () => { await this.put(before); this.sheet = before; this.write(); this.draw({ now: true }); });
      return true;
    } catch (fault) {
      if (fault.status !== 412) { notice(`${fault.message} Your words stay in this browser.`); return false; }
      const { tag, body } = await readTagged(this.home);
      const base = this.stored;
      this.tag = tag;
      this.stored = sheetOf(body);
      return this.meet(base, this.sheet, this.stored);
    }
  }

  async put(sheet) {
    const { tag, body } = await send('PUT', this.home, { body: sent(sheet), tag: this.tag });
    this.tag = tag;
    this.stored = sheetOf(body);
    letGo(this.id);
    this.tell();
  }

  /** Mine and theirs, both begun from one base: what does not clash is put together, the rest is asked. */
  meet(base, mine, theirs) {
    const { sheet, clashes } = settle(base, mine, theirs);
    Object.assign(this, { sheet, clashes });
    const decide = (one, value) => {
      this.clashes = this.clashes.filter(each => each !== one);
      this.set({ [one]: value });
      this.write();
      this.ask(mine, theirs, decide);
    };
    this.ask(mine, theirs, decide);
    this.write();
    this.changed();
    if (!clashes.length) notice('Somebody changed other things of this report meanwhile: both changes are in the form. Keep it once more.');
    return false;
  }

  ask(mine, theirs, decide) {
    show(this.trouble, this.clashes.length ? clash({ clashes: this.clashes, mine, theirs, longest: this.body.longest, decide }) : null);
    this.trouble.querySelector('button')?.focus();
  }

  /** The PDF is of what is kept, so it is kept first. */
  async download() {
    if (!await this.keep()) return;
    const link = el('a', { href: `${this.home}.pdf?paper=${this.paper}`, download: `${this.id}-${this.paper}.pdf`, hidden: true });
    this.page.append(link);
    link.click();
    link.remove();
  }
}
