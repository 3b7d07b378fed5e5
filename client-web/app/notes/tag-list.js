/** Tags beside the words they came from: each is accepted, rejected, changed, or begins a rep of its own, by button or key. */
import { el, show } from '../parts/elements.js';
import { label } from '../wire/labels.js';

/** What a tag says beside its name. */
function said(tag) {
  return [
    tag.added === undefined ? null : 'added by you',
    tag.was ? `read as ${label(tag.was)}` : null,
    tag.assertion === 'performed' ? null : tag.assertion.replaceAll('-', ' '),
    tag.actor === 'other' ? 'somebody else' : tag.actor === 'blocker' && !tag.was ? 'the blocker' : null,
    tag.hand ? `${tag.hand} hand` : null, tag.target ? `on his ${tag.target} hand` : null, tag.side, tag.opinion?.startsWith('strongly') ? tag.opinion.replaceAll('-', ' ') : null,
    tag.band === 'weak' ? 'a guess' : tag.band === 'check' ? 'look at it' : null,
  ].filter(Boolean);
}

/**
 * One tag as a line.
 * @param {{decide: (key: string, value: boolean) => void, onlight: (key: string) => void, change: (tag: object) => void,
 *   remove: (tag: object) => void, split: ((tag: object) => void) | null}} wants
 */
export function tagLine(tag, { decide, onlight, change, remove, split }) {
  const name = label(tag.concept);
  const button = (words, says, deed, more = {}) => el('button', { type: 'button', 'aria-label': says, onclick: deed, ...more }, words);
  const own = tag.added !== undefined;
  const general = !change;
  const press = (words, value) => button(words, `${words} ${name}`, () => decide(tag.key, value), { 'aria-pressed': 'false' });
  const accept = own ? null : press('Accept', true);
  const reject = own ? button('Take out', `Take out ${name}`, () => remove(tag)) : press('Reject', false);
  const more = el('span', { class: 'tag-more controls' });
  const editor = el('div', { class: 'tag-editor' });
  const root = el('li', { class: `tag tag-${tag.band}`, tabindex: -1, onpointerenter: () => onlight(tag.key), onfocusin: () => onlight(tag.key) },
    el('span', { class: 'tag-name' }, tag.order ? el('span', { class: 'soft' }, `${tag.order}. `) : null, name),
    el('span', { class: 'tag-said' }, tag.text ? `“${tag.text.replaceAll('\n', ' ')}”` : null, said(tag).map(words => el('span', { class: 'tag-mark' }, words))),
    tag.because.length ? el('details', { class: 'small' }, el('summary', {}, 'Why'), tag.because.join(' ')) : null,
    more, editor,
    el('span', { class: 'tag-keys controls' }, accept, reject));
  const draw = (value, current) => {
    accept?.setAttribute('aria-pressed', String(value === true));
    if (!own) reject.setAttribute('aria-pressed', String(value === false));
    root.classList.toggle('rejected', value === false);
    root.classList.toggle('accepted', own || value === true);
    root.classList.toggle('lit', current);
    root.tabIndex = current ? 0 : -1;
    if (current && !general && !more.childElementCount) {
      show(more, button('Change …', `Change ${name} to another`, () => change(tag)), split ? button('New rep here', `A rep begins at ${name}`, () => split(tag)) : null);
    }
  };
  return { root, draw, editor };
}
