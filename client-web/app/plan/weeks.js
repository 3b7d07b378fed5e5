/** The weeks: a column a session, a card a block, moved by mouse or by the arrow keys. */
import { path } from '../wire/http.js';
import { capital, counted, el } from '../parts/elements.js';
import { folded } from '../parts/folded.js';
import { sessionName } from './plan-state.js';

const CARRIED = 'application/x-block';

/** @param {Array} all the weeks @param {Object} wants what can be done with a block, and what is broken where */
export function weeks(all, wants) {
  const broken = wants.breaches.get('all') ?? [];
  return [el('h2', { id: 'weeks' }, 'Week by week'),
    el('p', { class: 'soft small controls' }, 'Drag a block to another session, or press ', el('kbd', {}, '←'), ' ', el('kbd', {}, '→'), ' on its “Move”. What that breaks is told at once.'),
    broken.length ? el('ul', { class: 'plan-broken' }, broken.map(one => el('li', {}, one.sentence))) : null,
    all.map(week => el('section', { class: 'plan-week', 'aria-label': `Week ${week.week}` }, el('h3', {}, `Week ${week.week}`),
      el('div', { class: 'plan-sessions' }, week.sessions.map(one => session(one, all, wants)))))];
}

function session(one, all, wants) {
  const broken = wants.breaches.get(one.place) ?? [];
  const name = sessionName(all, one.place);
  const column = el('section', { class: `plan-session${broken.length ? ' broken' : ''}`, 'data-place': one.place, 'aria-label': capital(name),
    ondragover: event => { if (event.dataTransfer.types.includes(CARRIED)) { event.preventDefault(); column.classList.add('over'); } },
    ondragleave: () => column.classList.remove('over'),
    ondrop: event => {
      event.preventDefault();
      column.classList.remove('over');
      const { exercise, from } = JSON.parse(event.dataTransfer.getData(CARRIED));
      wants.move(exercise, from, one.place);
    } },
  el('h4', {}, one.day, one.date ? el('span', { class: 'soft' }, ` ${one.date}`) : null),
  el('p', { class: 'small soft' }, `${one.minutes} of ${one.free} min, ${one.contactMinutes ? `${one.contactMinutes} min full contact` : 'no full contact in it'}${one.teamContactMinutes ? `; the team has ${one.teamContactMinutes} min of it` : ''}. ${one.because}`),
  broken.length ? el('ul', { class: 'plan-broken' }, broken.map(each => el('li', {}, each.sentence))) : null,
  one.blocks.length ? el('ol', { class: 'bare' }, one.blocks.map(each => card(each, one, all, wants))) : el('p', { class: 'soft' }, 'Nothing: rest, or the team’s own work.'));
  return column;
}

function card(block, { place }, all, wants) {
  const { exercise } = block;
  const level = wants.levels.find(one => one.level === block.level);
  const name = capital(block.label);
  const pinned = wants.isPinned(exercise, place);
  const step = by => wants.move(exercise, place, place + by);
  const places = all.flatMap(week => week.sessions.map(one => one.place)).filter(one => one !== place);
  return el('li', { class: `plan-block${pinned ? ' pinned' : ''}`, draggable: 'true', 'data-exercise': exercise,
    ondragstart: event => { event.dataTransfer.setData(CARRIED, JSON.stringify({ exercise, from: place })); event.dataTransfer.effectAllowed = 'move'; } },
  el('h5', {}, el('a', { href: path('technique', block.drill), draggable: 'false' }, name)),
  el('p', { class: 'small' }, [`${block.minutes} min`, block.reps ? counted(block.reps, 'rep') : '', level?.label ?? block.level].filter(Boolean).join(', '), block.contactMinutes ? el('strong', {}, ', full contact') : null),
  el('p', { class: 'small soft' }, block.because),
  block.cautions.length && block.contactMinutes === 0 ? null : block.cautions.length ? el('p', { class: 'small' }, el('strong', {}, 'Read the cautions first.')) : null,
  folded(block.cautions.length ? `How, and ${counted(block.cautions.length, 'caution')}` : 'How', () => how(block, wants.sheet), { class: 'small how' }),
  el('div', { class: 'row controls' },
    el('button', { type: 'button', class: 'plain small', id: `move-${exercise}-${place}`, 'aria-keyshortcuts': 'ArrowLeft ArrowRight', 'aria-label': `Move ${name}: arrow keys, or choose`,
      onkeydown: event => {
        const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
        if (by) { event.preventDefault(); step(by); } else if (event.key === 'p') { event.preventDefault(); wants.pin(exercise, place); }
      },
      onclick: event => event.currentTarget.parentElement.classList.toggle('choosing') }, 'Move'),
    el('select', { class: 'plan-to', 'aria-label': `Move ${name} to`, onchange: event => wants.move(exercise, place, Number(event.target.value)) },
      el('option', { value: place }, 'to …'), places.map(one => el('option', { value: one }, capital(sessionName(all, one))))),
    el('button', { type: 'button', class: 'plain small', id: `pin-${exercise}-${place}`, 'aria-pressed': String(pinned), 'aria-label': `Pin ${name} here`, onclick: () => wants.pin(exercise, place) }, pinned ? 'Pinned' : 'Pin'),
    el('button', { type: 'button', class: 'plain small', 'aria-label': `Not ${name} here`, onclick: () => wants.drop(exercise, place) }, 'Not here'),
    el('button', { type: 'button', class: 'plain small', 'aria-label': `Never ${name}`, onclick: () => wants.leave(exercise) }, 'Never')));
}

function how(block, sheet) {
  const texts = new Map(sheet.cautions.filter(one => one.part === 'drill').map(one => [one.code, one.text]));
  return [
    block.success ? el('p', {}, el('strong', {}, 'Good when: '), block.success) : null,
    block.points.length ? [el('p', {}, el('strong', {}, 'Say:')), el('ul', {}, block.points.map(text => el('li', {}, text)))] : null,
    block.cautions.map(code => el('p', { class: 'caution' }, texts.get(code) ?? code)),
  ];
}
