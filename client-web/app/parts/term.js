/** A term of the book, leading to its page. */
import { path } from '../wire/http.js';
import { isConcept, label } from '../wire/labels.js';
import { el } from './elements.js';

export const term = slug => (isConcept(slug) ? el('a', { href: path('technique', slug) }, label(slug)) : label(slug));

/** Parts with commas between them. */
export const commas = parts => parts.flatMap((part, i) => (i ? [', ', part] : [part]));
