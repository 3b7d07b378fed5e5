/** How far two evaluators agree: a line a column, with the tags behind it. */
import { label } from '../wire/labels.js';
import { capital, counted, el, svg } from '../parts/elements.js';
import { bar, judgedBy, trustWords, worstFirst } from './cross-check-state.js';

const TAGS = 12;
let made = 0;

/** @param {Object} check the answer of the server @param {(column: string) => string} columnName */
export const agreement = (check, columnName) => {
  const told = worstFirst(check.facets.filter(one => one.same < one.common));
  const alike = check.facets.filter(one => one.same === one.common);
  return el('section', { 'aria-labelledby': 'agreement' }, el('h2', { id: 'agreement' }, 'How far they agree'),
    told.length ? el('p', { class: 'soft small' }, 'Alpha is agreement beyond luck: chance alone gives 0, full agreement 1. The two marks are where tags bear tentative words, and where they bear firm ones. Kappa and MASI measure the same in other ways.') : null,
    told.length ? el('div', { class: 'agreement' }, told.map(one => line(one, check, columnName))) : null,
    alike.length ? el('p', { class: 'soft' }, `Always the same: ${alike.map(one => `${columnName(one.column)} (${one.common})`).join(', ')}.`) : null);
};

function line(facet, check, columnName) {
  const by = judgedBy(facet);
  return el('div', { class: 'agreement-line', 'data-column': facet.column },
    el('h3', {}, capital(columnName(facet.column))),
    el('div', {}, el('p', {}, `The same on ${facet.same} of ${counted(facet.common, 'rep')}: `, el('strong', { class: `trust trust-${facet.trust}` }, trustWords(facet.trust)), '.'),
      facet.tags.length ? tags(facet, check) : null),
    el('div', {}, drawing(facet), by ? el('p', { class: 'soft small' }, second(facet, by)) : null));
}

/** The figures beside the one that decides. */
function second(facet, by) {
  const others = [['alpha', by.name === 'AC1' ? facet.alpha?.value : null], ['MASI', facet.masi?.value], ['kappa', facet.kappa]]
    .filter(([, value]) => value !== null && value !== undefined).map(([name, value]) => `${name} ${value.toFixed(2)}`);
  return others.length ? `beside it ${others.join(', ')}` : '';
}

function tags(facet, check) {
  const parted = facet.tags.filter(one => one.firstOnly + one.secondOnly > 0);
  if (!parted.length) return null;
  return el('details', {}, el('summary', {}, `${counted(parted.length, 'tag')} they part on`),
    el('div', { class: 'scroller', tabindex: 0, role: 'group', 'aria-label': `Tags of ${facet.column}` }, el('table', {},
      el('thead', {}, el('tr', {}, ['Tag', 'Both', `Only ${check.first}`, `Only ${check.second}`].map(head => el('th', { scope: 'col' }, head)))),
      el('tbody', {}, parted.slice(0, TAGS).map(one => el('tr', {}, el('th', { scope: 'row' }, told(one.tag)), [one.both, one.firstOnly, one.secondOnly].map(n => el('td', { class: 'number' }, n))))))),
    parted.length > TAGS ? el('p', { class: 'soft small' }, `and ${parted.length - TAGS} more`) : null);
}

/** Slugs in a cell or a tag as words; the blocker's steps keep their brackets. */
export const told = cell => cell.replace(/[a-z0-9]+(?:-[a-z0-9]+)*/g, slug => label(slug));

function drawing(facet) {
  const drawn = bar(facet);
  if (!drawn) return null;
  const id = `agreement-${++made}`;
  const y = 18;
  return svg('svg', { class: 'interval', viewBox: '0 0 312 40', role: 'img', 'aria-labelledby': `${id}-t ${id}-d` },
    svg('title', { id: `${id}-t` }, drawn.short), svg('desc', { id: `${id}-d` }, drawn.words),
    svg('line', { class: 'axis', x1: 6, x2: 306, y1: y, y2: y }),
    [[0, 'chance', 'middle'], [1, 'full', 'end']].map(([value, words, anchor]) => {
      const x = 6 + ((value + 0.2) / 1.2) * 300;
      return [svg('line', { class: 'axis', x1: x, x2: x, y1: y - 3, y2: y + 3 }), svg('text', { class: 'scale', x, y: y + 17, 'text-anchor': anchor }, words)];
    }),
    drawn.low === null ? null : svg('line', { class: 'range', x1: drawn.low, x2: drawn.high, y1: y, y2: y }),
    drawn.lines.map(x => svg('line', { class: 'line', x1: x, x2: x, y1: y - 9, y2: y + 7 })),
    svg('circle', { class: 'rate', cx: drawn.value, cy: y, r: 5 }),
    svg('text', { class: 'scale', x: 190, y: y + 17, 'text-anchor': 'middle' }, drawn.short));
}
