/** Drawings that the server makes: read as XML, cleaned of anything that is not drawing, put in place. */
import { readText } from '../wire/http.js';
import { el } from './elements.js';

const KEPT = new Set(['svg', 'g', 'title', 'desc', 'path', 'circle', 'ellipse', 'rect', 'line', 'polyline', 'polygon', 'text', 'tspan', 'a', 'defs', 'marker']);

/**
 * A figure with its drawing and the table behind it; null where the server has none.
 * @param {string} href of the SVG
 * @param {{caption?: string, table?: Element, parameters?: Object, signal?: AbortSignal}} wants
 */
export async function drawing(href, { caption = '', table = null, parameters = {}, signal } = {}) {
  let text;
  try {
    text = await readText(href, parameters, { signal });
  } catch (fault) {
    if (fault.name === 'AbortError') throw fault;
    return table && el('figure', { class: 'drawn' }, table);
  }
  const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  if (root.localName !== 'svg') return null;
  clean(root);
  return el('figure', { class: 'drawn' },
    el('div', { class: 'canvas', tabindex: 0, role: 'group', 'aria-label': caption || 'Drawing' }, document.importNode(root, true)),
    caption ? el('figcaption', {}, caption) : null,
    table ? el('details', { class: 'behind' }, el('summary', {}, 'The same as a table'), table) : null);
}

function clean(element) {
  for (const { name, value } of [...element.attributes]) {
    const foreign = /href$/.test(name) && !/^[/#]/.test(value);
    if (/^on/i.test(name) || name === 'style' || foreign) element.removeAttribute(name);
  }
  for (const child of [...element.children]) {
    if (KEPT.has(child.localName)) clean(child);
    else child.remove();
  }
}
