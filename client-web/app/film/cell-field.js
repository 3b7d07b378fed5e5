/** One cell of a rep as a field: completion where a concept is typed, a choice where few words may stand. */
import { read } from '../wire/http.js';
import { isConcept, label } from '../wire/labels.js';
import { combobox } from '../parts/combobox.js';
import { choice, el } from '../parts/elements.js';
import { DIVIDER, helped, whose } from './exchange-state.js';

const LIST = /;/;

/**
 * @param {Object} column as the server describes it
 * @param {string} value
 * @param {{id: string, onchange: (value: string) => void, name?: string}} wants
 * @returns {{root: Element, input: HTMLElement}}
 */
export function cellField(column, value, { id, onchange, name }) {
  const attributes = { id, value, 'aria-label': name ?? null, oninput: event => onchange(event.target.value), onchange: event => onchange(event.target.value) };
  if (column.oneOf && !column.list) return words(column, value, { id, onchange, name });
  if (column.kind === 'exchange') return exchange(attributes);
  if (column.kind === 'concept') return concept(column, attributes);
  if (column.oneOf) return listed(column, attributes);
  if (column.name === 'note') {
    const area = el('textarea', { id, rows: 3, 'aria-label': name ?? null, oninput: event => onchange(event.target.value) }, value);
    return { root: area, input: area };
  }
  const numeric = column.kind === 'integer' ? 'numeric' : null;
  const input = el('input', { ...attributes, inputmode: numeric, type: column.kind === 'date' ? 'date' : 'text', placeholder: hint(column.kind), autocomplete: 'off' });
  return { root: input, input };
}

const hint = kind => ({ clock: 'm:ss', time: 'm:ss.s' })[kind] ?? null;

/** A word of a column as people read it. */
export const word = text => (isConcept(text) ? label(text) : text.replace(/[-_]/g, ' '));

function words(column, value, { id, onchange, name }) {
  const odd = value && !column.oneOf.includes(value) ? [[value, value]] : [];
  const input = choice(id, [['', ''], ...odd, ...column.oneOf.map(one => [one, word(one)])], value, onchange);
  if (name) input.setAttribute('aria-label', name);
  return { root: input, input };
}

const offered = answer => answer.completions.map(one => ({ value: one.slug, label: one.label, gloss: one.matched && one.matched !== one.label ? one.matched : '' }));

function concept(column, attributes) {
  return combobox({ attributes, eager: true, divider: column.list ? LIST : null, says: column.label, complete: async q => offered(await read('/api/complete', { q, column: column.name })) });
}

function listed(column, attributes) {
  return combobox({ attributes, eager: true, divider: LIST, says: column.label,
    complete: async q => column.oneOf.filter(one => one.includes(q.trim().toLowerCase().replaceAll(' ', '-'))).map(one => ({ value: one, label: word(one) })) });
}

function exchange(attributes) {
  const { root, input } = combobox({
    attributes: { ...attributes, placeholder: 'his step > [the blocker\'s] > his next' }, divider: DIVIDER, eager: true, says: 'Steps',
    complete: async q => offered(await read('/api/complete', { q, column: 'exchange', by: whose(input.value, input.selectionStart) })),
  });
  input.addEventListener('keydown', event => {
    if (event.ctrlKey || event.metaKey || event.altKey || input.selectionStart !== input.selectionEnd) return;
    const next = helped(input.value, input.selectionStart, event.key);
    if (!next) return;
    event.preventDefault();
    input.value = next.text;
    input.setSelectionRange(next.caret, next.caret);
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
  return { root, input };
}
