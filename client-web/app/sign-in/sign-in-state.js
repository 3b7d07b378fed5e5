/** Where one goes after signing in, and what is said of who is signed in. */

/** @typedef {{accounts: boolean, signedIn: boolean, name: string, role: string|null, team: string}} Session */

/**
 * The page one wanted, if it is one of this program's; an address of another site is never followed.
 * @param {string|null} wanted
 * @returns {string}
 */
export function nextPath(wanted) {
  const good = typeof wanted === 'string' && /^\/(?![/\\])[^\\\u0000-\u0020]*$/.test(wanted) && !/^\/(sign-in|api|sparql)(\/|\?|#|$)/.test(wanted);
  return good ? wanted : '/';
}

/** The address of the page that asks who one is, and leads back afterwards. */
export function signInAddress(here) {
  const back = nextPath(here);
  return back === '/' ? '/sign-in' : `/sign-in?next=${encodeURIComponent(back)}`;
}

/**
 * "Kim Orr, evaluator of harrow-vale"; empty where nobody has to sign in, or nobody is.
 * @param {Session} session
 */
export function who({ accounts, signedIn, name, role, team }) {
  return accounts && signedIn ? `${name}, ${role}${team ? ` of ${team}` : ''}` : '';
}

/** Why a new password will not do, before it is sent; empty where it may. */
export function passwordFault(password, again) {
  if (password.length < 10) return 'A password has at least 10 characters. Four words in a row are easy to keep.';
  return password === again ? '' : 'That was not twice the same.';
}
