/** What kept decisions teach: words to take as a name, or to leave. */
import { read, send, Trouble } from '../wire/http.js';
import { label } from '../wire/labels.js';
import { counted, el, show } from '../parts/elements.js';
import { notice } from '../shell/notices.js';
import { places, sentence, sorted } from './learned-state.js';

/**
 * @param {{context: object, again: () => void}} wants `again` reads the notes once more, where some are open
 */
export function learned({ context, again }) {
  const list = el('div', {});
  const trouble = el('div', { role: 'alert' });
  const summary = el('summary', {}, 'What your decisions teach');
  const root = el('details', { class: 'brief learned', ontoggle: () => root.open && look() }, summary, trouble, list);
  root.hidden = true;

  async function look() {
    try { draw((await read('/api/notes/learned', {}, context)).suggestions); } catch (fault) {
      if (!(fault instanceof Trouble)) throw fault;
      failed(fault);
    }
  }

  function draw(suggestions) {
    const { often, once, settled } = sorted(suggestions);
    root.hidden = !suggestions.length;
    show(summary, `What your decisions teach${often.length ? ` (${often.length})` : ''}`);
    show(list,
      el('p', { class: 'soft' }, 'Words that were tagged by hand may become a name of the term, in the staff’s own overlay.ttl: notes know it at once, questions and film logs when the program starts again.'),
      often.length ? el('ul', { class: 'bare' }, often.map(line)) : null,
      more(once, counted(once.length, 'more was', 'more were') + ' tagged once'),
      more(settled, `${counted(settled.length, 'one')} taken or ignored`));
  }

  const more = (some, words) => (some.length ? el('details', {}, el('summary', {}, words), el('ul', { class: 'bare' }, some.map(line))) : null);

  function line(one) {
    const act = (words, says, deed) => el('button', { type: 'button', 'aria-label': `${says}: ${one.words}`, onclick: () => wish(one, deed) }, words);
    return el('li', { class: 'learned-line' },
      el('span', {}, sentence(one, label), ' ', el('span', { class: 'soft small' }, places(one)),
        one.state === 'open' ? null : el('span', { class: 'tag-mark small' }, one.state)),
      el('span', { class: 'controls row' },
        one.state === 'open' && one.kind === 'name' ? act('Take', `Take as a name of ${label(one.concept)}`, 'take') : null,
        one.state === 'open' ? act('Ignore', 'Ignore', 'ignore') : act('Bring back', 'Bring back', 'bring-back')));
  }

  async function wish(one, deed) {
    show(trouble);
    try {
      const { body } = await send('POST', `/api/notes/learned/${deed}`, { body: { key: one.key }, signal: context.signal });
      draw(body.suggestions);
      notice([body.said, ...body.notes].join(' '), deed === 'bring-back' ? null : () => wish(one, 'bring-back'), deed === 'ignore' ? null : ['Read the notes again', again]);
      summary.focus();
    } catch (fault) {
      if (!(fault instanceof Trouble)) throw fault;
      failed(fault);
    }
  }

  const failed = fault => show(trouble, el('div', { class: 'trouble' }, el('p', {}, el('strong', {}, fault.title)), el('p', {}, fault.message)));

  look();
  return { root, look };
}
