/** What the rules of the book make of a rep, and which of its tags say so. */
import { path } from '../wire/http.js';
import { isConcept, label } from '../wire/labels.js';
import { capital, el, listed } from '../parts/elements.js';
import { word } from './cell-field.js';

/** @param {{faults: Array, classes: Array}} classified @param {Array<string>} empty what a rep needs and nobody filled in yet */
export function rulesSay({ faults: all, classes }, empty = []) {
  const faults = all.filter(one => !empty.includes(one.column));
  return [
    el('h2', {}, 'What the rules make of it'),
    faults.length ? el('p', { class: 'soft' }, `${faults.length === 1 ? 'One cell' : `${faults.length} cells`} cannot be read yet; see the fields.`) : null,
    empty.length ? el('p', { class: 'soft' }, `Still needed: ${listed(empty.map(word))}.`) : null,
    classes.length ? el('ul', { class: 'bare' }, classes.map(said)) : el('p', { class: 'soft' }, 'Nothing so far. It grows as you tag: the exchange says most.'),
  ];
}

function said(one) {
  const from = one.tags.filter(tag => tag.value).map(tag => `${word(tag.column)}: ${tag.column === 'exchange' ? tag.value.replace(/[a-z0-9-]+/g, word) : word(tag.value)}`);
  return el('li', {},
    el('strong', {}, isConcept(one.repClass) ? el('a', { href: path('technique', one.repClass) }, capital(label(one.repClass))) : capital(word(one.repClass))),
    one.sentence ? el('div', {}, one.sentence) : null,
    from.length ? el('div', { class: 'soft' }, `From ${from.join('; ')}.`) : null,
    one.book.length ? el('div', { class: 'soft' }, `By the book: ${listed(one.book.map(rule => rule.split('--').map(word).join(', ')))}.`) : null,
    one.hangsOn.length ? el('div', { class: 'soft' }, `Hangs on ${listed(one.hangsOn)}.`) : null);
}
