/** How a question was read, as chips; to change one is to ask again. */
import { read } from '../wire/http.js';
import { combobox } from '../parts/combobox.js';
import { el, show } from '../parts/elements.js';
import { changeable, reworded } from './ask-state.js';

/** The chips of an answer, each with what may be done about it. */
export function chips({ question, reading }, { open }) {
  const read = reading.chips ?? [];
  if (!read.length) return null;
  const editor = el('div', { class: 'chip-editor controls', hidden: true });
  const ask = (chip, words) => open(`/?q=${encodeURIComponent(reworded(question, chip, words))}`);
  let opened = null;
  const toggle = (chip, button) => {
    opened?.setAttribute('aria-expanded', 'false');
    if (opened === button) { opened = null; editor.hidden = true; return; }
    opened = button;
    button.setAttribute('aria-expanded', 'true');
    editor.hidden = false;
    show(editor, edit(chip, words => ask(chip, words)));
    editor.querySelector('input, button')?.focus();
  };
  const list = el('ul', { class: 'chips', 'aria-label': 'What was understood' }, read.map(chip => el('li', {}, changeable(chip)
    ? el('button', { type: 'button', class: 'chip', 'aria-expanded': 'false', onclick: event => toggle(chip, event.currentTarget) }, face(chip))
    : el('span', { class: 'chip told' }, face(chip)))));
  editor.addEventListener('keydown', event => {
    if (event.key === 'Escape' && !event.defaultPrevented && opened) { const back = opened; toggle(null, opened); back.focus(); }
  });
  return el('div', {}, list, editor);
}

const face = chip => [chip.role ? el('span', { class: 'role' }, chip.role.replaceAll('-', ' ')) : null, el('span', {}, chip.label), chip.guessed ? el('span', { class: 'role' }, 'spelling guessed') : null];

function edit(chip, ask) {
  const { root, input } = combobox({
    attributes: { id: 'chip-words', value: chip.text ?? '' },
    says: 'Terms of the book',
    complete: async words => (await read('/api/complete', { q: words })).completions.map(one => ({ value: one.label, label: one.label, gloss: one.kind.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase() })),
    onpick: (option, text) => ask(text),
  });
  return [
    el('label', { for: input.id }, 'In place of ', el('q', {}, chip.text ?? chip.label)),
    el('div', { class: 'row' }, root,
      el('button', { type: 'button', onclick: () => ask(input.value) }, 'Ask again'),
      el('button', { type: 'button', onclick: () => ask('') }, 'Leave it out')),
    chip.choices?.length ? el('p', { class: 'row small' }, el('span', { class: 'soft' }, 'Or was it:'),
      chip.choices.map(one => el('button', { type: 'button', onclick: () => ask(one.words) }, one.label))) : null,
  ];
}
