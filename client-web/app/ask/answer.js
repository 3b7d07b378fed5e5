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
export function answer(one, place, { reading }) {
  const counts = Number.isInteger(one.opportunities) && one.opportunities > 0;
  const reps = (one.reps ?? []).map(rep => sight(rep, one));
  return claim({
    tag: 'article',
    summary: counts ? `${counted(one.opportunities, 'chance')}, ${counted(one.events, 'time')}` : `${counted(reps.length, 'rep')}`,
    claim: [
      el('h3', { class: 'answer-title' }, el('span', { class: 'place', 'aria-hidden': 'true' }, `${place}`), el('a', { href: where(one) }, capital(one.label))),
      one.verdict ? el('p', {}, verdictMark(one.verdict)) : null,
      one.sentence ? el('p', {}, one.sentence) : counts ? el('p', {}, spoken(one)) : null,
      one.because ? el('p', { class: 'soft' }, one.because) : null,
      one.text ? el('p', { class: 'note' }, marked(one.text, one.highlight).map(part => part.mark ? el('mark', {}, part.text) : part.text)) : null,
      one.thin ? el('p', { class: 'soft' }, 'Thin tape: only a few chances.') : null,
      facts(one),
      reading.find === 'compare' && one.rows ? rows(one.rows) : null,
    ],
    evidence: counts || reps.length ? [counts ? intervalBar({ line: null, ...one }) : null, reps.length ? repList(reps) : null] : null,
  });
}

function spoken({ events, opportunities, low, high }) {
  const range = typeof low === 'number' && typeof high === 'number' ? ` (likely range ${percent(low)} to ${percent(high)})` : '';
  return `${events} of ${opportunities}${range}.`;
}

function facts(one) {
  const lines = [
    one.trigger ? ['Against', term(one.trigger)] : null,
    one.timing?.length ? ['When', listed([one.timing].flat().map(when => TIMINGS[when] ?? when), 'or')] : null,
    one.side && one.side !== 'either' && one.side !== 'none' ? ['Goes', one.side] : null,
    one.requires?.length ? ['Needs first', commas(one.requires.map(term))] : null,
    one.seen?.reps ? ['On film', `${counted(one.seen.reps, 'rep')}, ${one.seen.won} won`] : null,
  ].filter(Boolean);
  return lines.length ? el('dl', { class: 'facts' }, lines.map(([name, value]) => el('div', {}, el('dt', {}, name), el('dd', {}, value)))) : null;
}

const rows = ones => el('ul', { class: 'bare' }, ones.map(row => el('li', {}, `${label(row.value ?? row.label)}: ${spoken(row)}`)));

function where(one) {
  if (one.kind === 'prospect') return path('prospect', one.id);
  if (one.kind === 'rep') return repHref({ prospect: one.prospect, game: one.gameId ?? one.game, rep: one.rep });
  return path('technique', one.counter ?? one.slug ?? one.id);
}

const sight = (rep, one) => ({
  prospect: rep.prospect ?? one.prospect ?? one.id, game: rep.gameId ?? rep.game, gameName: rep.gameName ?? rep.game, rep: rep.rep,
  event: rep.event, seconds: rep.seconds, words: rep.sentence,
});
