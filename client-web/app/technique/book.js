/** The book: every term by its kind. */
import { path, read } from '../wire/http.js';
import { capital, choice, counted, el, field, show } from '../parts/elements.js';

const AT_ONCE = 60;
const PAUSE = 150;

export async function mount(page, context) {
  const { query } = context;
  const wants = { kind: query.get('kind') ?? '', q: query.get('q') ?? '' };
  context.title('Book');
  const list = el('div', { 'aria-live': 'polite' });
  const first = await read('/api/concepts', { ...wants, limit: AT_ONCE }, context);
  const kinds = first.kinds;
  let timer = 0;
  const again = () => {
    const address = new URLSearchParams(Object.entries(wants).filter(([, value]) => value));
    history.replaceState({}, '', `/technique${address.size ? `?${address}` : ''}`);
    clearTimeout(timer);
    timer = setTimeout(async () => draw(await read('/api/concepts', { ...wants, limit: AT_ONCE }, context)), PAUSE);
  };
  const words = el('input', { id: 'book-words', type: 'search', value: wants.q, placeholder: 'any name of it', oninput: event => { wants.q = event.target.value; again(); } });
  page.append(el('h1', {}, 'The book'),
    el('p', { class: 'lead' }, `The terms of edge play: what each is, what it needs, what beats it, and what your film shows of it.`),
    el('div', { class: 'row filters controls' }, field('Look up', words), field('Kind', choice('book-kind', [['', 'all kinds'], ...kinds.map(kind => [kind.kind, `${kind.label} (${kind.concepts})`])], wants.kind, value => { wants.kind = value; again(); }))),
    list);

  function draw(found) {
    const dl = el('dl', { class: 'terms' }, found.concepts.map(one => term(one, kinds)));
    const more = el('p', { class: 'controls' });
    const grow = have => show(more, have < found.total ? el('button', { type: 'button', onclick: async () => {
      const next = await read('/api/concepts', { ...wants, limit: AT_ONCE, offset: have });
      dl.append(...next.concepts.map(one => term(one, kinds)));
      grow(have + next.concepts.length);
    } }, `More of ${counted(found.total, 'term')}`) : null);
    grow(found.concepts.length);
    show(list, el('p', { class: 'soft' }, found.total ? `${counted(found.total, 'term')}.` : 'No term of that name. Try another word for it.'), dl, more);
  }
  draw(first);
}

const kind = (one, kinds) => kinds.find(each => one.kinds.includes(each.kind))?.label ?? '';

const term = (one, kinds) => el('div', {}, el('dt', {}, el('a', { href: path('technique', one.slug) }, capital(one.label)), el('span', { class: 'soft small about' }, ` ${kind(one, kinds)}`), one.also.length ? el('span', { class: 'soft small about' }, `, also ${one.also.slice(0, 3).join(', ')}`) : null), el('dd', {}, one.definition));
