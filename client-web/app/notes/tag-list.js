/** Tags beside the words they came from: each is accepted or rejected, by button or key. */
import { el } from '../parts/elements.js';
import { label } from '../wire/labels.js';

/** What a tag says beside its name. */
function said(tag) {
  return [
    tag.assertion === 'performed' ? null : tag.assertion.replaceAll('-', ' '),
    tag.actor === 'other' ? 'somebody else' : tag.actor === 'blocker' ? 'the blocker' : null,
    tag.hand ? `${tag.hand} hand` : null, tag.side, tag.opinion?.replaceAll('-', ' '),
    tag.band === 'weak' ? 'a guess' : tag.band === 'check' ? 'look at it' : null,
  ].filter(Boolean);
}

/**
 * One tag as a line.
 * @param {{decide: (key: string, value: boolean) => void, onlight: (key: string) => void}} wants
 */
export function tagLine(tag, { decide, onlight }) {
  const name = label(tag.concept);
  const press = (words, value) => el('button', { type: 'button', 'aria-pressed': 'false', 'aria-label': `${words} ${name}`, onclick: () => decide(tag.key, value) }, words);
  const accept = press('Accept', true);
  const reject = press('Reject', false);
  const root = el('li', { class: `tag tag-${tag.band}`, tabindex: -1, onpointerenter: () => onlight(tag.key), onfocusin: () => onlight(tag.key) },
    el('span', { class: 'tag-name' }, tag.order ? el('span', { class: 'soft' }, `${tag.order}. `) : null, name),
    el('span', { class: 'tag-said' }, `“${tag.text.replaceAll('\n', ' ')}”`, said(tag).map(words => el('span', { class: 'tag-mark' }, words))),
    tag.because.length ? el('details', { class: 'small' }, el('summary', {}, 'Why'), tag.because.join(' ')) : null,
    el('span', { class: 'tag-keys controls' }, accept, reject));
  const draw = (value, current) => {
    accept.setAttribute('aria-pressed', String(value === true));
    reject.setAttribute('aria-pressed', String(value === false));
    root.classList.toggle('rejected', value === false);
    root.classList.toggle('accepted', value === true);
    root.classList.toggle('lit', current);
    root.tabIndex = current ? 0 : -1;
  };
  return { root, draw };
}
