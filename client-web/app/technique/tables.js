/** Lists and tables on a page of the book. */
import { capital, el, listed, scroller } from '../parts/elements.js';
import { listing } from '../parts/listing.js';
import { commas, term } from '../parts/term.js';
import { byTrigger, steps } from './technique-state.js';

const TIMINGS = { read: 'off his look', 'in-rep': 'in the rep', 'next-rep': 'on the next rep' };

/** What goes with a move, by the answer it is taught for. */
export const counterList = counters => byTrigger(counters).map(({ trigger, counters: ones }) => {
  const reasons = new Set(ones.map(one => one.because).filter(Boolean));
  return el('div', { class: 'pairing' },
    el('h3', {}, trigger ? ['Against ', term(trigger)] : 'Against any answer'),
    reasons.size === 1 ? el('p', {}, [...reasons][0]) : null,
    el('ol', {}, ones.map(one => counter(one, reasons.size > 1))));
});

function counter(one, withReason) {
  const how = [one.side === 'either' || one.side === 'none' ? '' : one.side, listed(one.timing.map(when => TIMINGS[when] ?? when), 'or')].filter(Boolean).join(', ');
  return el('li', {}, el('strong', {}, term(one.counter)), el('span', { class: 'soft' }, ` ${how}`),
    one.seen?.reps ? el('span', { class: 'seen' }, ` on your film ${one.seen.reps === 1 ? 'once' : `${one.seen.reps} times`}, ${one.seen.won} won`) : null,
    withReason && one.because ? el('div', {}, one.because) : null,
    one.requires.length ? el('div', { class: 'small' }, el('span', { class: 'soft' }, 'Needs first: '), commas(one.requires.map(term))) : null);
}

/** Where a move is taught as the counter. */
export const pairedList = pairs => listing(pairs, pair => el('li', {},
  pair.move ? ['off ', term(pair.move)] : 'off any move', pair.trigger ? [' against ', term(pair.trigger)] : null));

/** Right and wrong answers to a block, duty by duty. */
export const fitTable = fits => scroller('Right and wrong by duty', el('table', {}, el('caption', { class: 'hidden-text' }, 'Right and wrong by duty'),
  el('thead', {}, el('tr', {}, ['Duty', 'Right', 'Wrong', 'Hangs on'].map(head => el('th', { scope: 'col' }, head)))),
  el('tbody', {}, fits.map(fit => el('tr', {}, el('th', { scope: 'row' }, fit.assignment ? term(fit.assignment) : 'any', fit.wider ? el('div', { class: 'small soft' }, 'as against any ', term(fit.block)) : null),
    el('td', {}, commas((fit.right ?? []).map(term))), el('td', {}, commas((fit.wrong ?? []).map(term))),
    el('td', { class: 'small' }, [fit.onlyIf ?? [], fit.dependsOn ?? []].flat().map(text => el('div', {}, capital(String(text))))))))));

/** What a technique needs, in teaching order. */
export const ladderTable = ladder => el('ol', { class: 'ladder' }, steps(ladder).map(rungs => el('li', {}, rungs.map(rung => el('div', {}, term(rung.concept),
  rung.drills?.length ? el('span', { class: 'small soft' }, ' drills: ', commas(rung.drills.slice(0, 3).map(term))) : null)))));
