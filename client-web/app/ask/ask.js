/** The start page: a question, how it was read, and the answers with the reps behind them. */
import { read, send } from '../wire/http.js';
import { labelsReady } from '../wire/labels.js';
import { counted, el, show } from '../parts/elements.js';
import { notice } from '../shell/notices.js';
import { pageKeys } from '../shell/keys.js';
import { questionBox } from '../shell/question-box.js';
import { answer } from './answer.js';
import { examples } from './ask-state.js';
import { chips } from './chips.js';

const AT_ONCE = 20;

export async function mount(page, context) {
  const question = context.query.get('q') ?? '';
  context.title(question ? `${question.slice(0, 60)}` : '');
  const box = questionBox({ open: context.open, question, large: true });
  const below = el('div', { class: 'below', 'aria-live': 'polite' });
  page.append(el('h1', { class: question ? 'hidden-text' : 'ask-title' }, question ? 'Answers' : 'Ask the film, or the book'), box.root, below);
  pageKeys('Asking', [['↓ ↑', 'through the suggestions'], ['Enter', 'ask']]);
  if (question) {
    show(below, el('p', { class: 'loading' }, 'Reading the question …'));
    const [found] = await Promise.all([read('/api/ask', { q: question, limit: AT_ONCE }, context), labelsReady()]);
    show(below, answers(found, context));
  } else {
    const [version, names, saved] = await Promise.all([read('/api/version', {}, context), onFile(context), read('/api/questions', {}, context).catch(() => ({ questions: [] }))]);
    show(below, start(version, names, saved.questions, context));
    if (matchMedia('(hover: hover)').matches) queueMicrotask(() => box.input.focus({ preventScroll: true }));
  }
}

function start(version, names, saved, context) {
  return [
    el('p', { class: 'lead' }, version.readings
      ? [`${counted(version.readings, 'reading')} of ${counted(version.prospects, 'edge player')} on file, and a book of ${counted(version.concepts, 'term')}. Every answer opens on its reps.`,
        version.demo ? ' Everybody in this league is made up.' : '']
      : ['No film yet: ', el('a', { href: '/import' }, 'import a film log'), `. The book of ${counted(version.concepts, 'term')} answers already.`]),
    el('div', { class: 'examples' }, examples(names).map(([who, questions]) => el('section', {},
      el('h2', {}, who), el('ul', { class: 'bare' }, questions.map(asked))))),
    saved.length ? savedQuestions(saved, context) : null,
  ];
}

/** Names for the examples: in the demo those who were written by hand, else the first on file. */
async function onFile(context) {
  const names = (await read('/api/prospects', {}, context)).prospects.map(one => one.name);
  const known = ['Tavish Mordell', 'Keverne Toll'].filter(name => names.includes(name));
  return known.length === 2 ? known : names.slice(0, 2);
}

const asked = question => el('li', {}, el('a', { href: `/?q=${encodeURIComponent(question)}` }, question));

function savedQuestions(saved) {
  const root = el('section', { class: 'saved' });
  const draw = kept => show(root, el('h2', {}, 'Saved questions'), el('ul', { class: 'bare' }, kept.map(one => el('li', {},
    el('a', { href: `/?q=${encodeURIComponent(one.question)}` }, one.name), ' ', el('span', { class: 'soft' }, one.question), ' ',
    el('button', { type: 'button', class: 'plain soft', 'aria-label': `Forget ${one.name}`, onclick: () => forget(one, kept) }, 'forget')))));
  async function forget(one, kept) {
    await send('DELETE', `/api/questions/${encodeURIComponent(one.name)}`);
    draw(kept.filter(other => other !== one));
    notice(`Forgot "${one.name}".`, async () => { await save(one.name, one.question); draw(kept); });
  }
  draw(saved);
  return root;
}

const save = (name, question) => send('PUT', `/api/questions/${encodeURIComponent(name)}`, { body: { question } });

function answers(found, context) {
  const { reading } = found;
  const list = el('div', { class: 'answers' }, found.answers.map((one, i) => answer(one, i + 1)));
  const more = el('div', {});
  const grow = shown => show(more, shown < found.total ? el('button', { type: 'button', onclick: async () => {
    const next = await read('/api/ask', { q: found.question, limit: AT_ONCE, offset: shown });
    list.append(...next.answers.map((one, i) => answer(one, shown + i + 1)));
    grow(shown + next.answers.length);
  } }, `More of ${found.total.toLocaleString('en-US')}`) : null);
  grow(found.answers.length);
  return [
    el('section', { class: 'reading', 'aria-label': 'How it was read' },
      el('p', { class: 'read-as' }, el('span', { class: 'soft' }, 'Read as: '), reading.text),
      chips(found, context),
      reading.unread.length ? el('p', { class: 'soft' }, 'Not read: ', reading.unread.map((word, i) => [i ? ', ' : '', el('q', {}, word.word ?? word)]), '.') : null,
      saveForm(found.question)),
    el('h2', { class: 'hidden-text' }, 'Answers'),
    el('p', { class: 'total soft' }, total(found), found.leftOut ? ` ${counted(found.leftOut, 'rep')} read with low confidence ${found.leftOut === 1 ? 'is' : 'are'} left out of the counts.` : ''),
    found.tries?.length && !found.total ? el('div', {}, el('p', {}, 'What to try:'), el('ul', {}, found.tries.map(advice => el('li', {}, advice)))) : null,
    list, more,
    found.cautions?.length ? el('aside', { class: 'trouble', 'aria-label': 'Cautions' }, found.cautions.map(text => el('p', {}, text))) : null,
  ];
}

const KINDS = {
  prospects: ['player', 'players'], reps: ['rep', 'reps'], counters: ['counter', 'counters'], drills: ['drill', 'drills'],
  findings: ['finding', 'findings'], techniques: ['technique', 'techniques'], similar: ['player like him', 'players like him'], compare: ['row', 'rows'],
};

function total({ total: n, reading, why }) {
  const [one, many] = KINDS[reading.find] ?? ['answer', 'answers'];
  if (!n && why) return why;
  return n ? `${counted(n, one, many)}.` : `No ${many}. Leave out a chip, or ask in other words.`;
}

function saveForm(question) {
  const name = el('input', { id: 'save-name', required: true, maxlength: 60 });
  const form = el('form', { class: 'row save', hidden: true, onsubmit: async event => {
    event.preventDefault();
    await save(name.value.trim(), question);
    form.hidden = true;
    const kept = name.value.trim();
    notice(`Saved as "${kept}". It waits on the start page.`, () => send('DELETE', `/api/questions/${encodeURIComponent(kept)}`));
  } }, el('label', { for: 'save-name' }, 'Name'), name, el('button', {}, 'Save'));
  const show = el('button', { type: 'button', class: 'plain small', onclick: () => { form.hidden = !form.hidden; if (!form.hidden) name.focus(); } }, 'Save this question');
  return el('div', { class: 'controls' }, show, form);
}
