/** What evaluators think he will be: written here, kept with every version, apart from all that is counted. */
import { path, read, send } from '../wire/http.js';
import { label } from '../wire/labels.js';
import { choice, el, field, show } from '../parts/elements.js';
import { folded } from '../parts/folded.js';
import { notice } from '../shell/notices.js';
import { FIELDS, lines, sent, slug, tagOf, trouble, wayBackTo } from './projection-state.js';

/** @param {{projections: Object[], roles: Object[]}} assessment  @param {{who: Object}} facts */
export function projectionsOf({ projections, roles }, { who }) {
  const home = by => `/api${path('prospects', who.id, 'projections', by)}`;
  const root = el('section', { class: 'projections', 'aria-label': 'What he will be' });
  const draw = all => show(root,
    el('h2', {}, 'What he will be'),
    el('p', { class: 'soft small' }, 'The evaluator\'s own judgement, with his name and the day. It is no part of any count.'),
    all.map(one => card(one)), el('div', { class: 'controls' }, open('Write a projection', null)));
  const again = async () => draw((await read(`/api${path('prospects', who.id, 'projections')}`)).projections);

  function card(one) {
    return el('article', { class: 'projection', 'aria-label': `Projection by ${one.evaluator}` },
      el('h3', {}, `${one.evaluator}, ${one.when.slice(0, 10)}`),
      el('dl', { class: 'projection-lines' }, lines(one, label).map(([name, text]) => el('div', {}, el('dt', {}, name), el('dd', {}, text)))),
      el('div', { class: 'row controls' }, open('Change it', one),
        el('button', { type: 'button', class: 'plain', onclick: () => takeBack(one) }, 'Take it back')),
      one.version > 1 ? folded(`Earlier versions: ${one.version - 1}`, () => history(one), { class: 'small' }) : null);
  }

  function history(one) {
    const list = el('ol', { class: 'bare' }, el('li', { class: 'soft' }, 'Reading them.'));
    read(home(one.by)).then(({ versions }) => show(list, versions.slice(1).map(past => el('li', {},
      el('strong', {}, `Version ${past.version}, ${past.when.slice(0, 10)}`), past.takenBack ? ': taken back.' : `: ${lines(past, label).map(line => line.join(': ')).join('; ')}. `,
      past.takenBack ? null : el('button', { type: 'button', class: 'plain controls', onclick: () => keep(past, one) }, 'Make it stand again')))));
    return list;
  }

  function open(words, one) {
    const button = el('button', { type: 'button', onclick: () => button.replaceWith(form(one, button)) }, words);
    return button;
  }

  function form(before, button) {
    const said = before ? { ...before } : { evaluator: who.logs[0]?.evaluator ?? '' };
    const fault = el('p', { class: 'fault', role: 'alert' });
    const id = name => `projection-${before?.by ?? 'new'}-${name}`;
    const write = name => event => { said[name] = event.target.value; };
    const input = (name, hint) => name === 'role'
      ? choice(id(name), [['', 'no job named'], ...[...roles].sort((a, b) => (a.label < b.label ? -1 : 1)).map(role => [role.role, role.label])], said.role, value => { said.role = value; })
      : name === 'words' ? el('textarea', { id: id(name), rows: 4, maxlength: 4000, oninput: write(name) }, said.words ?? '')
        : el('input', { id: id(name), type: 'text', maxlength: 400, value: said[name] ?? '', placeholder: hint || null, autocomplete: 'off', oninput: write(name) });
    const close = () => sheet.replaceWith(button);
    const sheet = el('form', { class: 'projection-form', onsubmit: async event => {
      event.preventDefault();
      const why = trouble(said);
      if (why) { show(fault, why); return; }
      try {
        await keep(said, before);
      } catch (trouble) {
        show(fault, trouble.message, trouble.status === 412 || trouble.status === 428 ? [' ', el('button', { type: 'button', class: 'plain', onclick: again }, 'Show what stands there')] : null);
      }
    } },
    el('div', { class: 'fields' },
      field('Evaluator', el('input', { id: id('evaluator'), type: 'text', maxlength: 400, value: said.evaluator, readonly: Boolean(before), autocomplete: 'name', oninput: write('evaluator') })),
      FIELDS.map(([name, title, hint]) => field(title, input(name, hint), { wide: name === 'words' }))),
    fault,
    el('div', { class: 'row' }, el('button', { type: 'submit', class: 'first' }, 'Keep it'), el('button', { type: 'button', onclick: close }, 'Leave it')));
    requestAnimationFrame(() => sheet.querySelector('input:not([readonly]), select')?.focus());
    return sheet;
  }

  /** Keeps what was said over the version that was looked at; it can be undone. */
  async function keep(said, before) {
    const by = before?.by ?? slug(said.evaluator);
    const { body } = await send('PUT', home(by), { body: sent(said), tag: before ? tagOf(before) : null });
    await again();
    notice(`Kept the projection of ${body.evaluator}.`, () => undo(by, body, before));
  }

  async function takeBack(one) {
    const { body } = await send('DELETE', home(one.by), { tag: tagOf(one) });
    await again();
    notice(`Took back the projection of ${one.evaluator}.`, () => undo(one.by, body, one));
  }

  async function undo(by, now, before) {
    const { method, body } = wayBackTo(before);
    await send(method, home(by), { body, tag: tagOf(now) });
    await again();
  }

  draw(projections);
  return root;
}
