/** Builders of elements. Whatever a person wrote goes in as text; nothing here parses HTML. */

const SVG = 'http://www.w3.org/2000/svg';

/**
 * An HTML element.
 * @param {string} tag
 * @param {Object<string, any>} [attributes] a function is a listener (`onclick`), true is a bare attribute, false and null are left out
 * @param {...any} children elements, texts, arrays of them; null and false are left out
 */
export const el = (tag, attributes = {}, ...children) => fill(document.createElement(tag), attributes, children);

/** An SVG element, built the same way. */
export const svg = (tag, attributes = {}, ...children) => fill(document.createElementNS(SVG, tag), attributes, children);

/** Puts children in place of what an element holds. */
export function show(element, ...children) {
  element.replaceChildren(...flat(children));
  return element;
}

/** The text of a number as a person reads a share. */
export const percent = share => `${Math.round(share * 100)} %`;

/** One rep, two reps. */
export const counted = (n, one, many = `${one}s`) => `${n.toLocaleString('en-US')} ${n === 1 ? one : many}`;

/** First letter large. */
export const capital = text => (text ? text[0].toUpperCase() + text.slice(1) : text);

/** "a, b and c". */
export const listed = (words, last = 'and') =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

/** A table that scrolls by itself where the page is narrow, and that the keyboard can scroll too. */
export const scroller = (name, table) => el('div', { class: 'scroller', tabindex: 0, role: 'group', 'aria-label': name }, table);

/** A field with its label above it. */
export function field(label, input, { wide = false, id = input.id } = {}) {
  return el('div', { class: wide ? 'field wide' : 'field' }, el('label', { for: id }, label), input);
}

/** A choice among [value, words]. */
export function choice(id, options, chosen, onchange) {
  return el('select', { id, onchange: event => onchange(event.target.value) },
    options.map(([value, words]) => el('option', { value, selected: value === (chosen ?? '') }, words)));
}

function fill(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (typeof value === 'function') element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? '' : value);
  }
  // What is typed into stays as it was typed.
  element.append(...(element.tagName === 'TEXTAREA' ? children.flat(Infinity) : flat(children)));
  return element;
}

const flat = children => children.flat(Infinity).filter(child => child !== null && child !== undefined && child !== false).map(unbroken);

/** A number keeps its percent sign on its line. */
const unbroken = child => (typeof child === 'string' ? child.replaceAll(/(\d) %/g, '$1\u00a0%') : child);
