/** The fields of a rep sheet, in the order one tags, each with its faults under it. */
import { capital, el, show } from '../parts/elements.js';
import { cellField, word } from './cell-field.js';
import { steps } from './exchange-state.js';
import { byColumn, grouped, NAMES } from './sheet-state.js';

/** @param {{fresh: boolean, onchange: (column: string, value: string) => void}} wants `fresh` lets one name the log too */
export function sheetFields(columns, cells, { fresh, onchange }) {
  const made = new Map();
  const place = column => {
    const id = `cell-${column.name}`;
    const fault = el('div', { id: `${id}-fault` });
    const preview = column.kind === 'exchange' ? el('div', { class: 'steps', 'aria-hidden': 'true' }) : null;
    const { root, input } = cellField(column, cells[column.name] ?? '', { id, onchange: value => { if (preview) draw(preview, value); onchange(column.name, value); } });
    if (preview) draw(preview, cells[column.name] ?? '');
    made.set(column.name, { input, fault });
    const wide = column.kind === 'exchange' || column.name === 'note';
    return el('div', { class: wide ? 'field wide' : 'field' },
      el('label', { for: id, title: column.help }, capital(column.label), column.required ? ' (needed)' : ''), root, preview, fault);
  };
  const group = (title, some) => el('fieldset', {}, el('legend', {}, title), el('div', { class: 'fields' }, some.map(place)));
  const names = columns.filter(column => NAMES.includes(column.name));
  const root = el('div', {}, fresh ? group('Whose, and where', names) : null, grouped(columns).map(([title, some]) => group(title, some)));
  const loose = el('div', {});
  root.prepend(loose);

  return {
    root,
    /** Sets a cell from outside. */
    put(name, value) { if (made.has(name)) made.get(name).input.value = value; },
    /** Shows faults and oddities under their fields. */
    faults(found) {
      const sorted = byColumn(found);
      for (const [name, { input, fault }] of made) {
        const ones = sorted.get(name) ?? [];
        show(fault, ones.map(one => el('p', { class: 'fault' }, one.message)));
        if (ones.length) { input.setAttribute('aria-invalid', 'true'); input.setAttribute('aria-describedby', fault.id); } else { input.removeAttribute('aria-invalid'); input.removeAttribute('aria-describedby'); }
      }
      show(loose, [...sorted].filter(([name]) => !made.has(name)).flatMap(([, ones]) => ones).map(one => el('p', { class: 'trouble' }, one.message)));
    },
    /** Goes to the first field with a fault. */
    firstFault() { root.querySelector('[aria-invalid="true"]')?.focus(); },
  };
}

const draw = (preview, text) => show(preview, steps(text).map((step, i) => [i ? ' › ' : '',
  el('span', { class: step.by === 'blocker' ? 'step blocker' : 'step' }, word(step.words), step.hand ? `, ${step.hand} hand` : '')]));
