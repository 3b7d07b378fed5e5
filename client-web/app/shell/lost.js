/** Where an address leads nowhere. */
import { el } from '../parts/elements.js';

export function mount(page, { title }) {
  title('No such page');
  page.append(el('h1', {}, 'There is no such page'),
    el('p', { class: 'lead' }, 'The address may be misspelled, or what it named was renamed. Ask for it by name, or look on the ', el('a', { href: '/board' }, 'board'),
      ' and in the ', el('a', { href: '/technique' }, 'book'), '.'));
}
