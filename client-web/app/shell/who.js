/** Says at the foot of every page who is signed in, where anybody has to be. */
import { read } from '../wire/http.js';
import { el, show } from '../parts/elements.js';
import { who } from '../sign-in/sign-in-state.js';

/** Asks once a visit; a server that does not answer says so on the page itself. */
export async function showWho() {
  try {
    const session = await read('/api/session');
    const name = who(session);
    if (!name) return;
    document.body.dataset.role = session.role ?? '';
    const { signOut } = await import('../sign-in/sign-in.js');
    show(document.getElementById('who'), el('a', { href: '/sign-in' }, name), ' · ', el('button', { type: 'button', class: 'plain', onclick: signOut }, 'Sign out'));
  } catch {
    show(document.getElementById('who'));
  }
}
