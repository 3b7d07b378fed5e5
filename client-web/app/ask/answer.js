/** One answer: what is said on the left, the count and the reps on the right. */
import { path } from '../wire/http.js';
import { label } from '../wire/labels.js';
import { claim } from '../parts/claim.js';
import { capital, counted, el, listed, percent } from '../parts/elements.js';
import { intervalBar } from '../parts/interval.js';
import { repHref, repList } from '../parts/reps.js';
import { commas, term } from '../parts/term.js';
import { verdictMark } from '../parts/verdict.js';
import { marked } from './ask-state.js';

const TIMINGS = { read: 'off the look before contact', 'in-rep': 'in the rep', 'next-rep': 'on the next rep' };

/** An answer in its place among the others. */
export function answer(one, place) {
  const counts = Number.isInteger(one.opportunities) && one.opportunities > 0;
  const reps = one.kind === 'rep' ? [] : one.reps.map(sight);
  const hits = one.highlight?.length > 0;
  const repeats = one.text === one.sentence;
  return claim({
    tag: 'article',
    summary: counts ? `${one.events} of ${counted(one.opportunities, 'chance')}: the reps` : one.rows ? 'The counts' : counted(reps.length, 'rep'),
    claim: [
      el('h3', { class: 'answer-title' }, el('span', { class: 'place', 'aria-hidden': 'true' }, `${place}`), el('a', { href: where(one) }, capital(one.label))),
      one.verdict ? el('p', { class: 'standing' }, verdictMark(one.verdict, one.polarity), one.finding && one.kind !== 'finding' ? term(one.finding) : null, one.severity && one.severity !== 'none' ? el('span', { class: 'soft' }, `${one.severity} severity`) : null) : null,
      one.sentence && !(repeats && hits) ? el('p', {}, one.sentence) : null,
      one.kind === 'counter' && counts ? el('p', {}, `On your film he won ${one.events} of ${counted(one.opportunities, 'rep')} with it${one.thin ? ': thin tape' : ''}.`) : null,
      one.text && (hits || !repeats) ? el('p', { class: one.kind === 'rep' ? 'note' : null }, marked(one.text, one.highlight).map(part => part.mark ? el('mark', {}, part.text) : part.text)) : null,
      facts(one),
      one.cautions?.length ? el('div', { class: 'caution' }, one.cautions.map(text => el('p', {}, text))) : null,
    ],
    evidence: evidence(one, counts, reps),
  });
}

function evidence(one, counts, reps) {
  if (one.kind === 'rep') return one.reps[0]?.seconds ? el('p', { class: 'soft' }, `${one.reps[0].seconds.video}`) : null;
  const drawn = [
    counts && !one.rows ? [intervalBar({ line: null, ...one }), one.thin && one.kind !== 'counter' ? el('p', { class: 'soft' }, 'Thin tape: only a few chances.') : null] : null,
    one.rows?.map(row => el('div', {}, el('h4', {}, capital(row.name)), el('p', {}, said(row)), intervalBar({ line: null, ...row }))),
    one.difference ? el('p', {}, `Apart by ${points(one.difference.value)} (likely range ${points(one.difference.low)} to ${points(one.difference.high)}); about ${Math.round(one.difference.probability * 100)} in 100 that the first is higher.`) : null,
    reps.length ? repList(reps) : null,
  ].filter(Boolean);
  return drawn.length ? drawn : null;
}

const said = ({ events, opportunities, low, high, thin }) => `${events} of ${opportunities}, likely range ${percent(low)} to ${percent(high)}${thin ? '; thin tape' : ''}`;

const points = share => `${Math.round(share * 100)} points`;

function facts(one) {
  const lines = [
    one.trigger ? ['Against', term(one.trigger)] : null,
    one.timing?.length ? ['When', listed(one.timing.map(when => TIMINGS[when] ?? when), 'or')] : null,
    one.side && one.side !== 'either' && one.side !== 'none' ? ['Goes', one.side] : null,
    one.requires?.length ? ['Needs first', commas(one.requires.map(term))] : null,
    one.trains?.length ? ['Trains', commas(one.trains.map(term))] : null,
    one.apart?.length ? ['Apart in', listed(one.apart.map(label))] : null,
    one.support ? ['Support', one.support.replaceAll('-', ' ')] : null,
  ].filter(Boolean);
  return lines.length ? el('dl', { class: 'facts' }, lines.map(([name, value]) => el('div', {}, el('dt', {}, name), el('dd', {}, value)))) : null;
}

function where(one) {
  if (one.kind === 'rep') return repHref({ prospect: one.prospect, game: one.game, rep: one.rep });
  if (one.prospect) return path('prospect', one.prospect) + (one.finding ? `#${one.finding}` : '');
  return path('technique', one.concept ?? one.id);
}

const sight = rep => ({ prospect: rep.prospect, game: rep.gameId, gameName: rep.game, rep: rep.rep, event: rep.event, seconds: rep.seconds });
