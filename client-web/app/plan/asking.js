/** What a plan is asked for with: the player, the weeks, the rules; and what was decided by hand so far. */
import { address, path } from '../wire/http.js';
import { label } from '../wire/labels.js';
import { choice, el, field } from '../parts/elements.js';
import { folded } from '../parts/folded.js';
import { asked, inAddress } from './plan-state.js';

/** The player, and the form where one is chosen. */
export function chooser({ prospects, choices, request = {}, context, plan }) {
  const id = context.parameters.id ?? '';
  const who = field('Player', choice('plan-player', [...(id ? [] : [['', 'choose']]), ...prospects.map(one => [one.id, one.name])], id,
    value => value && context.open(address(path('plan', value), inAddress(request)))));
  return choices && id ? form(who, choices, request, plan) : el('div', { class: 'who controls' }, who);
}

function form(who, choices, request, plan) {
  let next = request;
  const put = name => event => { next = asked(next, name, event.target.value); };
  const number = (name, words, most) => field(words, el('input', { id: `plan-${name}`, type: 'number', min: 1, max: most, value: request[name] ?? '', placeholder: 'as usual', oninput: put(name) }));
  const date = (name, words) => field(words, el('input', { id: `plan-${name}`, type: 'date', value: request[name] ?? '', oninput: put(name) }));
  const full = (name, options) => options.map(([value]) => value).find(value => value && (value === request[name] || value === `${name}-${request[name]}`)) ?? '';
  const pick = (name, words, options) => field(words, choice(`plan-${name}`, options, full(name, options), value => { next = asked(next, name, value); }));
  const usual = choices.presets.find(one => one.season === 'in-season') ?? choices.presets[0];
  const preset = choices.presets.find(one => one.preset === full('preset', choices.presets.map(each => [each.preset]))) ?? usual;
  const gear = request.equipment ?? null;
  const have = new Set(gear ?? choices.equipment.map(one => one.slug));
  const keepGear = () => {
    const { equipment: gone, ...rest } = next;
    next = have.size === choices.equipment.length ? rest : { ...rest, equipment: [...have] };
  };
  return el('form', { class: 'plan-form controls', onsubmit: event => { event.preventDefault(); plan(next); } },
    el('div', { class: 'fields' }, who,
      pick('preset', 'Weeks like', [['', usual.label], ...choices.presets.filter(one => one !== usual).map(one => [one.preset, one.label])]),
      number('weeks', 'Weeks', choices.mostWeeks), number('sessions', 'Sessions a week', preset?.days.length ?? 7), number('minutes', 'Minutes a session', 180), date('start', 'First day')),
    folded('Rules, contact and equipment', () => [
      el('p', { class: 'soft small' }, 'As long as nobody names the rules and says that they were checked, there is no full contact and nothing against another man.'),
      el('div', { class: 'fields' },
        pick('profile', 'Whose rules', [['', 'not said'], ...choices.profiles.map(one => [one.profile, one.label])]), date('checked', 'Checked against those in force on'),
        pick('approved', 'Highest contact that coach and medical staff approved', [['', 'without another man'], ...choices.levels.map(one => [one.level, one.label])]),
        number('contact', 'Minutes of full contact a week', 90), number('people', 'Men in a session', 99)),
      el('fieldset', { class: 'plan-gear' }, el('legend', {}, 'Equipment on hand'), el('p', { class: 'soft small' }, gear ? null : 'Left as it is, each day has what the weeks say.'),
        choices.equipment.map(one => el('label', { class: 'row' }, el('input', { type: 'checkbox', checked: have.has(one.slug), onchange: event => { have[event.target.checked ? 'add' : 'delete'](one.slug); keepGear(); } }), one.label)))],
    { class: 'small', open: Boolean(request.profile || request.approved || request.equipment || request.people) }),
    el('p', { class: 'row' }, el('button', { class: 'first' }, 'Plan')));
}

/** What was decided by hand, each with a way to take it back. */
export function wishes(request, { take, give, name }) {
  const words = one => ({
    pin: `${drill(one.exercise)} stays in ${name(one.session) || 'its session'}`, drop: `no ${drill(one.exercise)} in ${name(one.session) || 'its session'}`,
    leave: `no ${drill(one.exercise)} at all`, before: `${drill(one.exercise)} before ${drill(one.later)}`,
  })[one.wish];
  const chips = [
    ...(request.fixed ?? []).map(one => [words(one), () => take(one)]),
    ...[['workOn', 'first'], ['leaveOut', 'left out'], ['has', 'he has it']].flatMap(([list, says]) => (request[list] ?? []).map(slug => [`${label(slug)}: ${says}`, () => give(slug)])),
  ];
  if (!chips.length) return null;
  return el('div', { class: 'plan-wishes' }, el('h2', { class: 'hidden-text' }, 'Decided by hand'), el('ul', { class: 'chips' }, chips.map(([text, gone]) =>
    el('li', { class: 'chip' }, text, el('button', { type: 'button', class: 'plain controls', 'aria-label': `Take back: ${text}`, onclick: gone }, '×')))));
}

const drill = slug => (slug.startsWith('check-') ? `the check of ${label(slug.slice(6))}` : label(slug));
