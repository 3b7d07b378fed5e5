/** What there is for programs: where it is described, how it is asked, what comes back. */
import { address } from '../wire/http.js';
import { el } from '../parts/elements.js';

/** How bull rushes end: a question over film and book together. */
const EXAMPLE = `PREFIX rl: <https://rushlight.example/def#>
PREFIX kb: <https://rushlight.example/id/>
SELECT ?result (COUNT(*) AS ?reps)
{ ?r rl:hisStep/rl:does kb:bull-rush ; rl:outcome ?result }
GROUP BY ?result`;

const plain = (href, words) => el('a', { href, 'data-plain': true }, words);
const code = words => el('code', {}, words);
const block = (name, text) => el('pre', { class: 'code', tabindex: 0, role: 'group', 'aria-label': name }, text);

export function mount(page, context) {
  context.title('For programs');
  const here = location.origin;
  page.append(el('h1', {}, 'For programs'),
    el('p', { class: 'lead' }, 'What these pages show, a program can ask for. All they do goes over the same interface.'),

    el('section', { 'aria-labelledby': 'interface' }, el('h2', { id: 'interface' }, 'The interface'),
      el('p', {}, 'Every address, what it takes and what it answers stands in one description, as OpenAPI 3.1 has it: ', plain('/api/openapi.json', '/api/openapi.json'), '. A tool for OpenAPI can read it; as a page it is one long text.'),
      el('p', {}, 'Answers are JSON. Terms stand there by their slugs; ', plain('/api/labels', '/api/labels'), ' has their names. All players, as a start:'),
      block('How to ask for all players', `curl ${here}/api/prospects`)),

    el('section', { 'aria-labelledby': 'sparql' }, el('h2', { id: 'sparql' }, 'Questions in SPARQL'),
      el('p', {}, code('/sparql'), ' takes SPARQL 1.1 over film and book together. It only reads. Send the question as ', code('query'), ', in the address or as a form. How bull rushes end, counted:'),
      block('How to ask in SPARQL', `curl -H 'Accept: text/csv' --data-urlencode 'query=\n${EXAMPLE}' \\\n  ${here}/sparql`),
      el('p', {}, plain(address('/sparql', { query: EXAMPLE }), 'The same question, asked from here'), '.'),
      el('p', {}, 'Say with ', code('Accept'), ' what comes back: rows as ', code('application/sparql-results+json'), ' (where nothing is said), ', code('application/sparql-results+xml'), ', ', code('text/csv'), ' or ', code('text/tab-separated-values'),
        '; graphs as ', code('text/turtle'), ' or ', code('application/ld+json'), '.')),

    el('section', { 'aria-labelledby': 'terms' }, el('h2', { id: 'terms' }, 'Terms of the book'),
      el('p', {}, 'Each term has an address, such as ', el('a', { href: '/id/bull-rush', 'data-plain': true }, '/id/bull-rush'), '. A browser is led to its page, a program gets Turtle or JSON-LD.'),
      block('How to ask for a term', `curl -H 'Accept: text/turtle' ${here}/id/bull-rush`)),

    el('section', { 'aria-labelledby': 'refused' }, el('h2', { id: 'refused' }, 'When something is refused'),
      el('p', {}, 'A refusal is a problem as RFC 9457 has it, ', code('application/problem+json'), ': ', code('title'), ' names the kind, ', code('detail'), ' says what was wrong and what to do.'),
      el('p', {}, 'Where people sign in, a program sends a token of its own: ', code('Authorization: Bearer'), ' and the token. Whoever runs the server makes one with ', code('rushlight user token'), '.')));
}
