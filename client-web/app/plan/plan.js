/** Weeks of practice for one player: what is worked on and why, session by session, moved by hand and held against the limits. */
import { address, path, read, send, Trouble } from '../wire/http.js';
import { label, labelsReady } from '../wire/labels.js';
import { counted, el, show } from '../parts/elements.js';
import { notice } from '../shell/notices.js';
import { pageKeys } from '../shell/keys.js';
import { chooser, wishes } from './asking.js';
import { searched } from './searching.js';
import { left, look, work } from './work.js';
import { weeks } from './weeks.js';
import { limits, list, nothing, refusal, safety, versions } from './around.js';
import { aroundMoves, bare, begun, byPlace, change, chosen, inAddress, isMoved, isPinned, moved, ofAddress, proofWords, reordered, sessionName, sessionsOf, stands, stepped, toggled, undone, verdict } from './plan-state.js';

export async function mount(page, context) {
  const { parameters: { id }, query, signal } = context;
  const [{ prospects }, choices] = await Promise.all([read('/api/prospects', {}, { signal }), read('/api/plan/choices', {}, { signal }), labelsReady()]);
  context.title('Plan');
  if (!id) {
    page.append(el('h1', {}, 'Plan'), el('p', { class: 'lead' }, prospects.length ? 'Weeks of practice from what the film shows. Choose a player.' : 'No film yet.'),
      prospects.length ? chooser({ prospects, context }) : el('p', {}, el('a', { href: '/import' }, 'Import a film log')));
    return;
  }
  const visit = new Visit(page, context, prospects, choices);
  await visit.begin(ofAddress(query), query.size > 0);
}

/** One plan on the page. */
class Visit {
  constructor(page, context, prospects, choices) {
    Object.assign(this, { page, context, prospects, choices, home: `/api${path('prospects', context.parameters.id)}/plan` });
  }

  async begin(request, isAsked) {
    this.kept = await read(this.home, {}, this.context);
    if (!isAsked && this.kept.sheet && !this.kept.takenBack) {
      this.visit = begun({ request: bare(this.kept.request), sheet: this.kept.sheet, sessions: sessionsOf(this.kept.sheet.weeks) });
      this.checked = null;
      this.draw();
      return;
    }
    await this.plan(request);
  }

  get now() { return this.visit.now; }

  get isChanged() { return isMoved(this.now.sheet, this.now.sessions); }

  get weeks() { return this.checked?.weeks ?? this.now.sheet.weeks; }

  /** Asks for a plan; what stands stays until another is there. */
  async plan(request, focus = null) {
    const { context: { signal } } = this;
    const said = el('p', { class: 'loading', role: 'status' }, 'Looking for the best weeks …');
    if (this.visit) this.tell(said); else show(this.page, el('h1', {}, 'Practice plan'), said);
    try {
      const sheet = await searched(this.home, request, said, signal);
      if (signal.aborted) return;
      const state = { request, sheet, sessions: sessionsOf(sheet.weeks) };
      this.visit = this.visit ? stepped(this.visit, state) : begun(state);
      this.checked = null;
      history.replaceState({}, '', address(location.pathname, inAddress(request)));
      this.draw(focus);
    } catch (fault) {
      if (fault.name === 'AbortError' || signal.aborted) return;
      if (!(fault instanceof Trouble)) throw fault;
      if (!this.visit) {
        if (!Object.keys(request).length) throw fault;
        this.visit = begun({ request, sheet: null, sessions: [] });
        this.draw();
      }
      this.tell(refusal(fault));
    }
  }

  draw(focus = null) {
    const { sheet, request } = this.now;
    const name = sheet?.prospect ?? this.prospects.find(one => one.id === this.context.parameters.id)?.name ?? '';
    this.context.title(`Plan for ${name}`);
    this.told = el('div', { class: 'plan-told', role: 'status', 'aria-live': 'polite' });
    show(this.page,
      el('header', { class: 'title' }, el('h1', {}, `Practice plan for ${name}`),
        sheet ? el('p', { class: 'plan-decides' }, sheet.decides) : null,
        sheet?.frame ? el('p', { class: 'lead' }, `${counted(sheet.weeks.length, 'week')} from “${sheet.frame.label}”. Rules: ${sheet.frame.profile}. Highest contact: ${sheet.frame.approved}.`) : null,
        el('p', { class: 'links controls' }, el('a', { href: path('prospect', this.context.parameters.id) }, 'What his film says'))),
      chooser({ prospects: this.prospects, choices: this.choices, request, context: this.context, plan: next => this.plan(next) }),
      wishes(request, { take: wish => this.plan(toggled(request, wish)), name: place => sessionName(sheet?.weeks ?? [], place), give: slug => this.plan(chosen(request, slug, null)) }),
      this.bar = el('div', { class: 'plan-bar' }),
      sheet ? (sheet.none ? this.none(sheet.none) : this.whole(sheet)) : null);
    this.drawBar();
    this.focus(focus);
    pageKeys('Plan', [['← →', 'on a block: to the session before or after'], ['p', 'on a block: pin it'], ['u', 'undo the last step', 'u', () => this.undo()]]);
  }

  none(why) {
    const { sheet } = this.now;
    return [nothing(why), work(sheet, [], this.doing()), left(sheet, this.doing())];
  }

  whole(sheet) {
    return [
      work(sheet, this.weeks, this.doing()),
      look(sheet),
      this.grid = el('section', { class: 'plan-weeks', 'aria-labelledby': 'weeks' }),
      this.drawWeeks(),
      list('What the next games must show', sheet.retest.map(one => [el('a', { href: `${path('prospect', sheet.id)}#${one.finding}` }, label(one.finding)), `: ${one.sentence}`])),
      safety(sheet),
      left(sheet, this.doing()),
      limits(sheet.frame),
    ];
  }

  drawWeeks() {
    const { sheet, request, sessions } = this.now;
    show(this.grid, ...weeks(this.weeks, {
      sheet, levels: this.choices.levels, breaches: byPlace(this.checked?.breaches ?? [], this.weeks), last: sessions.length - 1,
      isPinned: (exercise, place) => isPinned(request, exercise, place),
      move: (exercise, from, to) => this.move(exercise, from, to),
      pin: (exercise, place) => this.pin(exercise, place),
      drop: (exercise, session) => this.plan(toggled(request, { wish: 'drop', exercise, session })),
      leave: exercise => this.plan(toggled(request, { wish: 'leave', exercise })),
    }));
    return null;
  }

  doing() {
    const { request, sheet } = this.now;
    return {
      up: skill => this.plan(reordered(request, sheet, skill, -1), `up-${skill}`),
      down: skill => this.plan(reordered(request, sheet, skill, 1), `down-${skill}`),
      leaveOut: slug => this.plan(chosen(request, slug, 'leaveOut')),
      has: slug => this.plan(chosen(request, slug, 'has')),
      workOn: slug => this.plan(chosen(request, slug, 'workOn')),
    };
  }

  /** Puts a block into another session and asks at once what that breaks. */
  async move(exercise, from, to) {
    const sessions = moved(this.now.sessions, exercise, from, to);
    if (sessions === this.now.sessions) return;
    this.visit = stepped(this.visit, { ...this.now, sessions });
    await this.check(`Moved to ${sessionName(this.now.sheet.weeks, to)}. `);
    this.focus(`move-${exercise}-${to}`);
  }

  async check(words = '') {
    const { request, sheet, sessions } = this.now;
    const ticket = this.ticket = (this.ticket ?? 0) + 1;
    try {
      const { body } = await send('POST', `${this.home}/check`, { body: change(request, sheet, sessions), signal: this.context.signal });
      if (ticket !== this.ticket) return;
      this.checked = body;
      this.drawWeeks();
      this.drawBar();
      this.tell(body.kept ? words + verdict(body, this.isChanged) : [el('strong', {}, words + verdict(body, this.isChanged)),
        el('ul', {}, body.breaches.map(one => el('li', {}, one.sentence))),
        el('button', { type: 'button', class: 'around controls', onclick: () => this.plan(aroundMoves(request, sheet, sessions)) }, 'Plan again around this')]);
    } catch (fault) {
      if (fault.name === 'AbortError') return;
      this.visit = undone(this.visit);
      this.tell(refusal(fault));
    }
  }

  async pin(exercise, place) {
    const { request } = this.now;
    this.visit = stepped(this.visit, { ...this.now, request: toggled(request, { wish: 'pin', exercise, session: place }) });
    this.draw(`pin-${exercise}-${place}`);
    this.tell(isPinned(this.now.request, exercise, place) ? `Pinned to ${sessionName(this.now.sheet.weeks, place)}: a new plan keeps it there.` : 'Let go: a new plan may move it.');
    if (this.isChanged) await this.check();
  }

  undo() {
    if (!this.visit?.past.length) return;
    this.visit = undone(this.visit);
    this.checked = null;
    this.draw();
    this.tell('Took back the last step.');
    if (this.now.sheet && !this.now.sheet.none && this.isChanged) this.check();
  }

  drawBar() {
    const { sheet } = this.now;
    const made = sheet && !sheet.none;
    const sound = made && (!this.checked || this.checked.kept);
    const standing = made && this.kept.sheet && !this.kept.takenBack && stands(this.now, this.kept);
    const file = (ending, words, more = {}) => el('a', { class: 'button', href: address(`${this.home}.${ending}`, { version: this.kept.version }), 'data-plain': true, ...more }, words);
    show(this.bar,
      made ? el('p', { class: 'plan-proof' }, sound ? proofWords(this.checked?.proof ?? sheet.proof, this.isChanged) : 'Not a plan as it stands: it breaks a limit.') : null,
      this.told,
      el('div', { class: 'row controls' },
        this.visit.past.length ? el('button', { type: 'button', onclick: () => this.undo() }, 'Undo') : null,
        made && !standing ? el('button', { type: 'button', class: 'first keep', disabled: !sound, onclick: () => this.keep() }, 'Keep this plan') : null,
        made ? el('button', { type: 'button', onclick: () => print() }, 'Print') : null,
        standing ? [file('html', 'Sheet for the field', { target: '_blank' }), sheet.frame.start ? file('ics', 'Calendar', { download: true })
          : el('span', { class: 'soft small' }, 'A first day makes a calendar of it.')] : made ? el('span', { class: 'soft small' }, 'Keep it, and there is a sheet for the field and a calendar.') : null),
      this.kept.version ? this.versions() : null);
  }

  versions() {
    return versions(this.kept, {
      look: version => this.lookAt(version),
      bringBack: version => this.write('POST', '/restore', { parameters: { version } }, `Version ${version} stands again.`),
      takeBack: () => this.write('DELETE', '', {}, 'The kept plan was taken back.'),
    });
  }

  async lookAt(version) {
    const old = await read(this.home, { version }, this.context);
    this.visit = stepped(this.visit, { request: bare(old.request), sheet: old.sheet, sessions: sessionsOf(old.sheet.weeks) });
    this.checked = null;
    this.draw();
    this.tell(`This is version ${version}.`);
  }

  async keep() {
    const { request, sheet, sessions } = this.now;
    const before = this.kept;
    if (!await this.write('PUT', '', { body: change(request, sheet, sessions) }, null)) return;
    notice('Kept the plan.', () => (before.sheet && !before.takenBack
      ? this.write('POST', '/restore', { parameters: { version: before.version } }, 'The plan before stands again.') : this.write('DELETE', '', {}, 'The kept plan was taken back.')));
  }

  /** Changes what is kept, and shows what stands then. */
  async write(method, more, wants, words) {
    try {
      this.kept = (await send(method, this.home + more, { ...wants, tag: this.kept.etag, signal: this.context.signal })).body;
      if (!this.kept.takenBack) {
        this.visit = stepped(this.visit, { request: bare(this.kept.request), sheet: this.kept.sheet, sessions: sessionsOf(this.kept.sheet.weeks) });
        this.checked = null;
      }
      this.draw();
      if (words) this.tell(words);
      return true;
    } catch (fault) {
      if (fault.name === 'AbortError') return false;
      if (fault.status === 412) this.kept = await read(this.home, {}, this.context);
      this.drawBar();
      this.tell(refusal(fault));
      return false;
    }
  }

  tell(...words) { if (this.told) show(this.told, ...words); }

  focus(id) { if (id) document.getElementById(id)?.focus(); }
}
