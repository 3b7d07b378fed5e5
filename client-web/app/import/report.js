/** What came of an import, and files to keep. */
import { path } from '../wire/http.js';
import { counted, el } from '../parts/elements.js';

/** The sentence and the logs of a finished import. */
export function finish(report) {
  const told = report.kind === 'prospects' ? `${counted(report.prospects, 'prospect')} told of.`
    : `${counted(report.came, 'rep')} came${report.went ? `, ${report.went.toLocaleString('en-US')} went` : ''}${report.faults.length ? `, ${counted(report.faults.length, 'fault')} stayed out` : ''}.`;
  return [
    el('h2', {}, `${report.file} is in`), el('p', {}, told),
    report.badCsv ? el('p', {}, el('button', { type: 'button', onclick: () => save(`faulty-${report.file}`, report.badCsv) }, 'Download the faulty rows')) : null,
    report.logs.length ? el('ul', {}, report.logs.slice(0, 50).map(log => el('li', {}, el('a', { href: path('film', log.prospect) }, log.prospect.replaceAll('-', ' ')), `, ${log.game.replaceAll('-', ' ')}: ${counted(log.after, 'rep')}${log.before ? `, before ${log.before}` : ''}`))) : null,
    el('p', {}, el('a', { href: '/board' }, 'To the board')),
  ];
}

/** Hands a text to the browser as a download. */
export function save(name, text) {
  const href = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
  const link = el('a', { href, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(href), 10000);
}
