/** Signing in and out, and another password. */
import { read, send, Trouble } from '../wire/http.js';
import { el, field, show } from '../parts/elements.js';
import { nextPath, passwordFault, who } from './sign-in-state.js';

export async function mount(page, { title, query, signal }) {
  title('Sign in');
  const session = await read('/api/session', {}, { signal });
  if (!session.accounts) page.append(...alone());
  else if (session.signedIn) page.append(...signedIn(session));
  else page.append(...form(nextPath(query.get('next'))));
}

const alone = () => [
  el('h1', {}, 'Nobody has to sign in here'),
  el('p', { class: 'lead' }, 'This server has no accounts and answers to this machine alone. ', el('a', { href: '/' }, 'To the start'), '.')];

function form(next) {
  const name = el('input', { id: 'sign-in-name', name: 'username', autocomplete: 'username', required: true, maxlength: 200, autocapitalize: 'none', spellcheck: 'false' });
  const password = secret('sign-in-password', 'current-password');
  const trouble = el('p', { class: 'fault', role: 'alert' });
  const button = el('button', { class: 'first' }, 'Sign in');
  async function enter(event) {
    event.preventDefault();
    if (await tried(button, trouble, () => send('POST', '/api/session', { body: { name: name.value, password: password.value } }))) {
      location.assign(next);
    } else {
      password.value = '';
      password.focus();
    }
  }
  return [
    el('h1', {}, 'Sign in'),
    el('p', { class: 'lead' }, 'The film here is for those with an account. Whoever runs this server makes them.'),
    el('form', { class: 'sign-in', onsubmit: enter }, field('Name', name), field('Password', password), trouble, el('p', { class: 'row controls' }, button))];
}

function signedIn(session) {
  const old = secret('password-old', 'current-password');
  const fresh = secret('password-new', 'new-password');
  const again = secret('password-again', 'new-password');
  const trouble = el('p', { class: 'fault', role: 'alert' });
  const done = el('p', { role: 'status' });
  const button = el('button', {}, 'Change the password');
  async function change(event) {
    event.preventDefault();
    show(done);
    const fault = passwordFault(fresh.value, again.value);
    show(trouble, fault);
    if (fault) { fresh.focus(); return; }
    if (await tried(button, trouble, () => send('PUT', '/api/session/password', { body: { old: old.value, password: fresh.value } }))) {
      event.target.reset();
      show(done, 'Your password is another one now; everywhere else you are signed out.');
    }
  }
  return [
    el('h1', {}, `Signed in as ${who(session)}`),
    el('p', { class: 'row controls' }, el('button', { type: 'button', class: 'first', onclick: signOut }, 'Sign out'), el('a', { class: 'button', href: '/' }, 'To the film')),
    el('h2', {}, 'Another password'),
    el('form', { class: 'sign-in', onsubmit: change }, field('The one you have', old), field('The new one', fresh), field('The new one once more', again), trouble, done, el('p', { class: 'row controls' }, button))];
}

/** Ends the session, and leaves no page of film behind. */
export async function signOut() {
  await send('DELETE', '/api/session');
  location.assign('/sign-in');
}

const secret = (id, autocomplete) => el('input', { id, name: id, type: 'password', autocomplete, required: true, maxlength: 200 });

/** Does it once; says what was wrong with it. */
async function tried(button, trouble, deed) {
  button.disabled = true;
  show(trouble);
  try {
    await deed();
    return true;
  } catch (fault) {
    show(trouble, fault instanceof Trouble ? fault.message : 'That did not work. Load the page anew and try again.');
    return false;
  } finally {
    button.disabled = false;
  }
}
