/** Two evaluators of the same games: how far they agree, and what they settle on. */
import { path, read, send } from '../wire/http.js';
import { columns } from '../wire/book.js';
import { labelsReady } from '../wire/labels.js';
import { capital, choice, counted, el, field, show } from '../parts/elements.js';
import { clock, repHref } from '../parts/reps.js';
import { pageKeys } from '../shell/keys.js';
import { notice } from '../shell/notices.js';
import { agreement, told } from './agreement.js';
import { choices, chosen, lead, repKey, step, watchedTwice } from './cross-check-state.js';

export async function mount(page, context) {
  const [{ logs }, film] = await Promise.all([read('/api/logs', {}, context), columns(), labelsReady()]);
  const names = new Map(film.columns.map(one => [one.name, one.label]));
  const players = watchedTwice(logs);
  const who = chosen(players, Object.fromEntries(context.query));
  context.title('Cross-check');
  if (!who) {
    page.append(el('h1', {}, 'Cross-check'), el('p', { class: 'lead' }, players.length
      ? 'Nobody else has read a game of this player. Choose one whom two have watched.' : 'No game has been read by two evaluators yet.'),
    players.length ? chooser(players, null, context) : el('p', {}, el('a', { href: '/import' }, 'Import a second evaluator’s log'), ' of a game that is here already.'));
    return;
  }
  await new Visit(page, context, players, who, column => names.get(column) ?? column).draw();
}

/** One pair of evaluators on the page. */
class Visit {
  constructor(page, context, players, who, columnName) {
    Object.assign(this, { page, context, players, who, columnName, made: new Map() });
  }

  async draw() {
    const { player, first, second } = this.who;
    const reps = evaluator => read('/api/reps', { prospect: player.id, evaluator, limit: 1000 }, this.context).then(found => new Map(found.reps.map(one => [repKey(one), one])));
    const [check, ...readings] = await Promise.all([
      read('/api/cross-check', { prospect: player.id, first: first.id, second: second.id }, this.context),
      reps(first.id), reps(second.id), reps('reconciled')]);
    Object.assign(this, { check, readings });
    show(this.page, el('h1', {}, `${check.first} and ${check.second} on ${player.name}`), el('p', { class: 'lead' }, lead(check, this.columnName)),
      chooser(this.players, this.who, this.context), this.proposals(), agreement(check, this.columnName), this.differences());
    pageKeys('Cross-check', [['j', 'next rep they read differently', 'j', () => this.go(1)], ['k', 'the one before', 'k', () => this.go(-1)],
      ['1', `this rep as ${check.first} read it`, '1', () => this.all('first')], ['2', `as ${check.second} read it`, '2', () => this.all('second')],
      ['s', 'settle on what is chosen', 's', () => this.settle(this.here())]]);
  }

  differences() {
    const { differences } = this.check;
    if (!differences.length) return el('p', {}, 'They read every rep alike.');
    const open = differences.filter(one => !this.settled(one)).length;
    return el('section', { 'aria-labelledby': 'reps' }, el('h2', { id: 'reps' }, 'Read differently'),
      el('p', { class: 'soft' }, `${counted(differences.length - open, 'rep')} settled, ${open} open. What you settle on counts before both readings; they stay as they are. `,
        el('span', { class: 'controls' }, el('kbd', {}, 'j'), ' ', el('kbd', {}, 'k'), ' go from rep to rep, ', el('kbd', {}, '1'), ' ', el('kbd', {}, '2'), ' choose, ', el('kbd', {}, 's'), ' settles.')),
      differences.map(one => this.rep(one)));
  }

  of = difference => [repKey(difference), `${difference.game}/${difference.secondRep}`.toLowerCase(), repKey(difference)].map((key, i) => this.readings[i].get(key));

  settled = difference => this.readings[2].get(repKey(difference));

  rep(difference) {
    const key = repKey(difference);
    const [first, second, settled] = this.of(difference);
    const made = choices(difference, [first, second, settled]);
    this.made.set(key, made);
    const film = first?.seconds ?? second?.seconds;
    return el('article', { class: 'parted', tabindex: -1, 'data-rep': key, 'aria-label': `Rep ${difference.rep}` },
      el('h3', {}, el('a', { href: repHref({ ...difference, evaluator: this.who.first.id }) }, difference.rep), ` ${first?.cells.game ?? difference.game}`,
        film ? el('span', { class: 'soft' }, ` ${clock(film.start)}`) : null, settled ? el('span', { class: 'settled' }, ' settled') : null),
      difference.cells.map(cell => this.cell(cell, key, made)),
      el('p', { class: 'row controls' }, el('button', { type: 'button', class: 'settle', onclick: () => this.settle(key) }, settled ? 'Settle anew' : 'Settle on this'),
        settled ? el('button', { type: 'button', class: 'plain small', onclick: () => this.reopen(key) }, 'Take the settled reading out') : null));
  }

  cell({ column, first, second }, key, made) {
    const option = (side, value, name) => {
      const id = `choice-${key}-${column}-${side}`.replace(/[^a-z0-9]+/g, '-');
      return el('div', { class: 'choice' }, el('input', { type: 'radio', id, name: `${key} ${column}`, value: side, checked: made[column] === side, onchange: () => { made[column] = side; } }),
        el('label', { for: id }, el('span', { class: 'soft small' }, name), el('span', { class: 'cell-words' }, value ? told(value) : 'nothing')));
    };
    return el('fieldset', { class: 'parted-cell' }, el('legend', {}, capital(this.columnName(column))), option('first', first, this.check.first), option('second', second, this.check.second));
  }

  proposals() {
    const all = this.check.games.flatMap(game => game.proposals.map(one => ({ ...one, game: game.game })));
    if (!all.length) return null;
    const why = { snap: 'the same snap', clip: 'the same stretch of film', clock: 'the same quarter and clock' };
    return el('section', {}, el('h2', {}, 'The same rep under two names?'), el('p', { class: 'soft' }, 'A rep is compared when both give it one name. Where you say it is one, the second reading takes the name of the first.'),
      el('ul', { class: 'bare' }, all.map(one => el('li', { class: 'row' }, `${one.first} and ${one.second}, ${one.game}: ${why[one.why] ?? one.why}`,
        el('button', { type: 'button', onclick: () => this.accept(one) }, 'It is one rep')))));
  }

  /** Gives the second evaluator's reading the name that the first has for the rep. */
  async accept({ game, first, second }) {
    const reading = [...this.readings[1].values()].find(one => one.rep === second && one.cells.game === game);
    await this.write(() => send('PUT', `/api${path('reps', reading.prospect, reading.game, reading.rep)}`,
      { parameters: { by: reading.evaluator }, body: { cells: { ...reading.cells, rep: first } }, tag: reading.etag }));
  }

  async settle(key) {
    const difference = this.check.differences.find(one => repKey(one) === key);
    if (!difference) return;
    const [first, second, settled] = this.of(difference);
    if (difference.secondRep.toLowerCase() !== difference.rep.toLowerCase()) return;
    await this.write(() => send('POST', '/api/cross-check/reconcile', { body: { prospect: difference.prospect, game: difference.game, rep: difference.rep,
      first: { evaluator: this.who.first.id, etag: first.etag }, second: { evaluator: this.who.second.id, etag: second.etag }, settled: settled?.etag ?? null, choices: this.made.get(key) } }), key);
  }

  async reopen(key) {
    const reading = this.readings[2].get(key);
    await this.write(() => send('DELETE', `/api${path('reps', reading.prospect, reading.game, reading.rep)}`, { parameters: { by: reading.evaluator }, tag: reading.etag }), key);
  }

  /** Writes, tells it with the way back, and draws the page anew; a refusal is told in the server's words. */
  async write(work, key = null) {
    try {
      const { body } = await work();
      const redraw = () => this.again(key);
      await redraw();
      notice(body.said, async () => { await send('POST', '/api/undo', { parameters: { revision: body.revision } }); await redraw(); });
    } catch (fault) {
      if (fault.status === 412) await this.again(key);
      notice(fault.status === 412 ? 'Somebody changed this rep meanwhile. You see it as it is now: choose again.' : fault.message);
    }
  }

  async again(key) {
    if (this.context.signal.aborted) return;
    const top = scrollY;
    await this.draw();
    scrollTo(0, top);
    this.focus(key);
  }

  here = () => document.activeElement?.closest?.('[data-rep]')?.dataset.rep;

  focus(key) {
    const card = key && [...this.page.querySelectorAll('[data-rep]')].find(one => one.dataset.rep === key);
    (card?.querySelector('input:checked') ?? card)?.focus({ preventScroll: false });
  }

  go(by) { this.focus(step(this.check.differences.map(repKey), this.here(), by)); }

  all(side) {
    const card = document.activeElement?.closest?.('[data-rep]');
    card?.querySelectorAll(`input[value="${side}"]`).forEach(one => { one.checked = true; one.dispatchEvent(new Event('change')); });
  }
}

function chooser(players, who, { open }) {
  const go = next => open(`/cross-check?${new URLSearchParams(next)}`);
  const ids = who ? { prospect: who.player.id, first: who.first.id, second: who.second.id } : {};
  const one = (id, words, side) => field(words, choice(id, who.player.evaluators.map(each => [each.id, each.name]), ids[side], value =>
    go(value === ids[side === 'first' ? 'second' : 'first'] ? { ...ids, first: ids.second, second: ids.first } : { ...ids, [side]: value })));
  return el('div', { class: 'who controls' }, field('Player', choice('cross-player', [...(who ? [] : [['', 'choose']]), ...players.map(each => [each.id, each.name])], ids.prospect, value => value && go({ prospect: value }))),
    who ? [one('cross-first', 'First evaluator', 'first'), one('cross-second', 'Second evaluator', 'second')] : null);
}
