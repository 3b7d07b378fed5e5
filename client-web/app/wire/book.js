/** What the book and the film log look like; each is read once a visit. */
import { read } from './http.js';

const kept = new Map();

function once(path) {
  if (!kept.has(path)) kept.set(path, read(path).catch(fault => { kept.delete(path); throw fault; }));
  return kept.get(path);
}

/** Columns of the film log. */
export const columns = () => once('/api/columns');

/** Every finding by its slug. */
export const findings = async () => new Map((await once('/api/findings')).findings.map(one => [one.finding, one]));

/** Clips that the program itself has, by file name. */
export const clips = async () => new Map((await once('/api/clips')).clips.map(one => [one.name, one.href]));
