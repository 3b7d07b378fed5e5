/** One concept of the book: what it is, how it is told, what goes with it, what it needs, what your film shows of it. */
import { path, read, Trouble } from '../wire/http.js';
import { findings } from '../wire/book.js';
import { label, labelsReady } from '../wire/labels.js';
import { claim } from '../parts/claim.js';
import { drawing } from '../parts/drawing.js';
import { capital, el, listed } from '../parts/elements.js';
import { commas, term } from '../parts/term.js';
import { counterList, fitTable, ladderTable, pairedList } from './tables.js';
import { onFilm, whoShows } from './on-film.js';
import { cited, numbered } from './technique-state.js';

const DECIDE = 'Certified coaches, licensed medical staff and the local rules decide before anybody trains this.';

export async function mount(page, context) {
  const { parameters: { slug }, signal } = context;
  const home = `/api${path('concepts', slug)}`;
  const perhaps = address => read(address, {}, { signal }).catch(fault => { if (fault instanceof Trouble && [0, 404].includes(fault.status)) return null; throw fault; });
  const [one, counters, film, teach, book] = await Promise.all([
    read(home, {}, { signal }), perhaps(`${home}/counters`), perhaps(`${home}/film`), perhaps(`${home}/teach`), findings(), labelsReady()]);
  context.title(capital(one.label));
  const isFinding = book.has(slug);
  const [front, ladder, shows] = await Promise.all([
    hasSpot(one) ? drawing(`${home}/front.svg`, { caption: `Where ${one.label} lines up`, signal }) : null,
    teach?.ladder?.length > 1 ? drawing(`${home}/ladder.svg`, { caption: `What ${one.label} needs`, table: ladderTable(teach.ladder), signal }) : null,
    isFinding ? read('/api/board', { finding: slug }, { signal }) : null]);
  const parts = one.parts ?? [];
  const notes = numbered([...parts.flatMap(part => part.statements), ...(one.cautions ?? [])]);
  page.append(...[
    claim({ claim: head(one, book.get(slug)), evidence: front, summary: 'Where it lines up' }),
    warned(one, parts, notes),
    section('How it is taught', parts.length ? lesson(parts, notes) : null,
      isFinding ? whoShows(shows.prospects, slug) : film?.reps ? onFilm(film) : el('p', { class: 'soft' }, 'Nothing of it on your film yet.'), 'On your film'),
    answered(one, counters?.counters ?? []),
    section('Right and wrong, by his duty', one.fits?.length ? fitTable(one.fits) : null),
    section('Before it', ladder ?? (teach?.ladder?.length > 1 ? ladderTable(teach.ladder) : null)),
    section('What goes wrong', one.faults?.length ? el('dl', { class: 'terms' }, one.faults.map(fault => el('div', {}, el('dt', {}, term(fault.fault)), el('dd', {}, fault.looksLike ?? '')))) : null),
    section('How it hangs together', one.relations?.length ? relations(one.relations) : null),
    sources(one, notes),
    el('p', { class: 'small soft controls' }, el('a', { href: path('id', slug), 'data-plain': true }, 'As Turtle or JSON-LD'), ' · ', el('a', { href: `/?q=${encodeURIComponent(`reps with ${one.label}`)}` }, 'Ask for its reps')),
  ].filter(Boolean));
}

/** Whether it may lie somewhere along the line. */
const hasSpot = one => one.kinds.some(kind => ['alignment', 'position'].includes(kind));

function head(one, finding) {
  const also = one.altLabels ?? one.also ?? [];
  return [
    el('h1', {}, capital(one.label)),
    el('p', { class: 'eyebrow' }, listed([...new Set(one.kinds ?? [])].map(kindWords)), also.length ? `; also ${listed(also, 'or')}` : ''),
    el('p', { class: 'lead' }, one.definition),
    (one.notes ?? []).map(note => el('p', {}, note)),
    one.because ? el('p', {}, el('span', { class: 'soft' }, 'Why it matters: '), one.because) : null,
    one.ruleOutFirst ? el('p', {}, el('span', { class: 'soft' }, 'Rule out first: '), one.ruleOutFirst) : null,
    one.facts?.length ? el('dl', { class: 'facts' }, one.facts.map(fact => el('div', {}, el('dt', {}, fact.title), el('dd', {}, fact.value)))) : null,
    finding && finding.line !== null ? el('p', { class: 'soft' }, `Line: ${Math.round(finding.line * 100)} %${finding.houseLine !== finding.line ? ` (house line ${Math.round(finding.houseLine * 100)} %)` : ''}, from ${finding.minimum} chances on. A house proposal; yours goes into overlay.ttl.`) : null,
    one.oneOf?.length ? one.oneOf.map(some => el('p', {}, el('span', { class: 'soft' }, 'Needs one of: '), commas(some.map(term)))) : null,
    one.local ? el('p', { class: 'soft' }, 'Yours: from overlay.ttl.') : null,
  ];
}

const kindWords = kind => kind.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/** What can hurt, and what is or easily becomes a foul: told first, and not again below. */
const grave = (part, statement) => part.part === 'caution' || statement.rulesRisk;

function warned(one, parts, notes) {
  const told = [...parts.flatMap(part => part.statements.filter(statement => grave(part, statement))), ...(one.cautions ?? [])];
  if (!told.length) return null;
  return el('aside', { class: 'trouble', 'aria-label': 'Cautions' },
    told.map(statement => el('p', {}, statement.rulesRisk ? el('strong', {}, 'A foul, or easily one: ') : null, statement.text, ' ', support(statement, notes))), el('p', { class: 'soft' }, DECIDE));
}

/** What is taught off it or against it, and where it is itself what is taught. */
function answered(one, counters) {
  const triggers = new Set((one.pairings ?? []).map(pair => pair.trigger ?? ''));
  const taught = counters.filter(entry => triggers.has(entry.trigger ?? ''));
  const isMove = (one.pairings ?? []).some(pair => pair.move);
  const list = one.counterTo?.length ? pairedList(one.counterTo) : null;
  if (!taught.length) return section('Where it is the counter', list);
  return section(isMove ? 'When the blocker has an answer' : 'What answers it', counterList(taught), list, 'Where it is itself the counter');
}

function section(title, said, evidence = null, summary = '') {
  if (!said && !evidence) return null;
  if (!said) return claim({ claim: [el('h2', {}, summary || title), evidence], evidence: null });
  return claim({ claim: [el('h2', {}, title), said], evidence: evidence && [el('h3', {}, summary), evidence], summary });
}

const lesson = (parts, notes) => el('dl', { class: 'lesson' }, parts.map(part => [part, part.statements.filter(statement => !grave(part, statement))])
  .filter(([, statements]) => statements.length).map(([part, statements]) => el('div', {}, el('dt', {}, capital(part.title)),
    statements.map(statement => el('dd', {}, statement.text, ' ', support(statement, notes))))));

function support(statement, notes) {
  const found = statement.sources.filter(source => notes.has(source.slug)).map(source => notes.get(source.slug).number);
  const words = [statement.code, statement.edition && `${statement.edition} rules`, statement.local ? 'yours' : null].filter(Boolean).join(', ');
  return el('span', { class: 'support' }, words ? `${words} ` : '', found.length ? found.map((number, i) => [i ? ' ' : '', el('a', { href: `#source-${number}`, 'aria-label': `Source ${number}` }, `[${number}]`)])
    : el('span', { title: 'What the trade takes for granted; no published source' }, statement.support === 'common-practice' ? 'common practice' : statement.support));
}

const relations = ones => el('dl', { class: 'lesson' }, ones.map(one => el('div', {}, el('dt', {}, one.title), el('dd', {}, commas(one.concepts.map(term))))));

function sources(one, notes) {
  const own = (one.ownSources ?? []).filter(source => source.printed && !notes.has(source.slug));
  if (!notes.size && !own.length) return one.support === 'common-practice' ? el('p', { class: 'soft small' }, 'Common practice: what the trade takes for granted.') : null;
  return el('section', {}, el('h2', {}, 'Sources'), el('ol', { class: 'small' }, [...notes.values()].map(({ number, source }) => el('li', { id: `source-${number}` }, `${cited(source)}. ${capital(source.howSeen ?? '')}`)),
    own.map(source => el('li', {}, `${cited(source)}. ${capital(source.howSeen ?? '')}`))));
}
