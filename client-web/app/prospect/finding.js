/** One finding: the claim in words on the left; bar, counts, rule and reps on the right. */
import { path } from '../wire/http.js';
import { label } from '../wire/labels.js';
import { claim } from '../parts/claim.js';
import { capital, counted, el, listed, percent } from '../parts/elements.js';
import { folded } from '../parts/folded.js';
import { intervalBar } from '../parts/interval.js';
import { repList } from '../parts/reps.js';
import { commas, term } from '../parts/term.js';
import { verdictMark } from '../parts/verdict.js';
import { saidOf } from './said.js';
import { ifThen } from './prospect-state.js';

const FREE = 'another';

/** @param {Object} one a finding of an assessment */
export function told(one, { who, book, peers }, group) {
  const id = one.finding;
  const gap = one.polarity === 'gap';
  return claim({
    tag: 'article', id, label: `${id}-title`,
    summary: evidenceTitle(one),
    claim: [
      el('h3', { id: `${id}-title` }, el('a', { href: path('technique', id) }, capital(label(id)))),
      el('p', { class: 'standing' }, verdictMark(one.verdict, one.polarity),
        gap && one.severity !== 'none' ? el('span', { class: 'soft' }, `${one.severity} severity`) : null,
        one.safety ? el('strong', {}, 'safety') : null),
      el('p', { class: 'sentence' }, one.sentence),
      besidePeers(id, peers),
      one.agreement?.common && group !== 'brief' ? el('p', { class: 'soft small' }, one.agreement.sentence) : null,
      group === 'duty' ? duties(one) : null,
      group === 'brief' ? null : [
        one.because ? el('p', {}, el('span', { class: 'soft' }, 'Why it matters: '), one.because) : null,
        gap && one.train.length ? el('p', {}, el('span', { class: 'soft' }, 'Train first: '), commas(one.train.map(term)), '.') : null,
        one.question ? el('p', {}, el('span', { class: 'soft' }, 'Ask his coach: '), one.question) : null,
        one.mixedWith ? el('p', { class: 'soft' }, `The same reps also speak for ${label(one.mixedWith)}: mixed evidence.`) : null,
        one.rootedIn.length ? el('p', { class: 'soft' }, `Rooted in ${listed(one.rootedIn.map(label))}.`) : null,
      ],
      saidOf(one.said),
      one.safety ? el('p', { class: 'caution' }, 'Before anybody trains this: certified coaches, licensed medical staff and the local rules decide.') : null,
    ],
    evidence: evidence(one, who, book.get(id)),
  });
}

/** What his rate looks like among those of his position group, as soon as that is known. */
function besidePeers(id, peers) {
  const line = el('p', { class: 'soft small', hidden: true });
  peers?.then(all => {
    if (!all.has(id)) return;
    line.textContent = all.get(id);
    line.hidden = false;
  });
  return line;
}

const evidenceTitle = one => one.opportunities ? `${one.events} of ${one.opportunities}, ${counted(one.games, 'game')}: the reps` : 'The rule';

function evidence(one, who, rule) {
  const games = new Map(who.games.map(game => [game.name, game.id]));
  const reps = one.reps.map(rep => ({ prospect: who.id, game: games.get(rep.game) ?? rep.game, gameName: rep.game, rep: rep.rep, event: rep.event, seconds: rep.seconds }))
    .sort((a, b) => Number(b.event) - Number(a.event));
  const happened = reps.filter(rep => rep.event);
  const not = reps.filter(rep => !rep.event);
  return [
    intervalBar(one),
    one.rows.length ? rowTable(one) : null,
    happened.length ? [el('h4', {}, `It happened: ${counted(happened.length, 'rep')}`), repList(happened)] : null,
    not.length ? folded(`It did not: ${counted(not.length, 'rep')}`, () => repList(not), { class: 'others' }) : null,
    folded('Rule and figures', () => figures(one, rule), { class: 'rule' }),
  ];
}

function figures(one, rule) {
  const share = value => typeof value === 'number' ? percent(value) : '–';
  const lines = [
    ['Chances', one.opportunities], ['Times', one.events], ['Games', one.games], ['Rate', share(one.rate)],
    ['Likely range', typeof one.low === 'number' ? `${percent(one.low)} to ${percent(one.high)}` : '–'],
    ['Line', one.line === null ? 'none' : one.houseLine !== null && one.houseLine !== one.line ? `${share(one.line)} (house line ${share(one.houseLine)})` : share(one.line)],
    ['Sure that it is beyond the line', share(one.probability)],
    rule ? ['Least chances', rule.minimum] : null,
    one.moreNeeded ? ['Chances that may settle it', one.moreNeeded] : null,
  ].filter(Boolean);
  return [
    rule?.definition ? el('p', {}, rule.definition) : null,
    el('table', {}, el('caption', { class: 'hidden-text' }, `Figures of ${label(one.finding)}`), el('tbody', {}, lines.map(([name, value]) => el('tr', {}, el('th', { scope: 'row' }, name), el('td', { class: 'number' }, value))))),
    el('p', { class: 'small soft' }, 'Lines and minimums are house proposals; yours go into overlay.ttl. Each rep tells by which rules it counts.'),
  ];
}

function rowTable(one) {
  const always = one.rows.every(row => row.events === row.opportunities);
  return el('table', { class: 'rows' }, el('caption', {}, 'By its parts'),
    el('thead', {}, el('tr', {}, el('th', { scope: 'col' }, 'What'), el('th', { scope: 'col', class: 'number' }, 'Times'), always ? null : el('th', { scope: 'col', class: 'number' }, 'Chances'))),
    el('tbody', {}, one.rows.slice(0, 6).map(row => el('tr', {}, el('th', { scope: 'row' }, label(row.value)),
      el('td', { class: 'number' }, row.events), always ? null : el('td', { class: 'number' }, row.opportunities)))));
}

function duties(one) {
  return el('ul', { class: 'if-then' }, ifThen(one.conditional).map(line => el('li', {},
    el('span', {}, 'If ', line.duties.includes(FREE) ? 'another duty' : listed(line.duties.map(label), 'or'), ': '),
    el('span', {}, line.opportunities ? `${line.events} of ${line.opportunities}, ` : 'nothing to count, '), verdictMark(line.verdict, one.polarity))));
}
