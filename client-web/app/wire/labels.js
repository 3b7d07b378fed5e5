/** Names of concepts, read once. Slugs are what the interface speaks; people read labels. */
import { read } from './http.js';

let coming = null;
let known = {};

/** Waits until the names are there. */
export async function labelsReady() {
  coming ??= read('/api/labels');
  try {
    known = await coming;
  } catch (fault) {
    coming = null;
    throw fault;
  }
}

/** What a slug is called; one without a name is spelled out. */
export const label = slug => known[slug] ?? String(slug ?? '').replaceAll('-', ' ');

/** Whether the book has this concept. */
export const isConcept = slug => Object.hasOwn(known, slug);
