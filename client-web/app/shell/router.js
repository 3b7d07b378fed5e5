/** Which page an address means. */

/** @typedef {{name: string, parameters: Object<string, string>}} Place */

const PAGES = [
  ['ask', '/'],
  ['technique', '/technique/:slug'],
  ['book', '/technique'],
  ['prospect', '/prospect/:id'],
  ['report', '/report/:id'],
  ['film', '/film'],
  ['film', '/film/:prospect'],
  ['sheet', '/rep/:prospect/:game/:rep'],
  ['sheet', '/rep/:prospect'],
  ['sheet', '/rep'],
  ['notes', '/notes'],
  ['import', '/import'],
  ['compare', '/compare'],
  ['board', '/board'],
  ['cross-check', '/cross-check'],
  ['sign-in', '/sign-in'],
  ['programs', '/programs'],
  ['plan', '/plan'],
  ['plan', '/plan/:id'],
];

/**
 * The page of a path, or the page that says there is none.
 * @param {string} pathname
 * @returns {Place}
 */
export function place(pathname) {
  const wanted = parts(pathname);
  for (const [name, pattern] of PAGES) {
    const parameters = match(parts(pattern), wanted);
    if (parameters) return { name, parameters };
  }
  return { name: 'lost', parameters: {} };
}

/** Whether a click on a link stays in this program: same place, plain click, nothing the server answers itself. */
export function staysHere(link, event, origin) {
  const plain = event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;
  return plain && link.origin === origin && !link.hasAttribute('download') && !link.hasAttribute('data-plain') && !link.target
    && !/^\/(api|id|sparql|clips)(\/|$)/.test(link.pathname);
}

const parts = path => path.split('/').filter(Boolean);

function match(pattern, wanted) {
  if (pattern.length !== wanted.length) return null;
  const parameters = {};
  for (const [i, part] of pattern.entries()) {
    if (part.startsWith(':')) {
      try {
        parameters[part.slice(1)] = decodeURIComponent(wanted[i]);
      } catch {
        return null;
      }
    } else if (part !== wanted[i]) return null;
  }
  return parameters;
}
