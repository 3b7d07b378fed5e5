/** The report as it will print, in a frame beside the form: drawn by the server from what stands in the form, kept nowhere. */
import { el, show } from '../parts/elements.js';

const PAUSE = 500;
/** What is said where the browser shows a page of its own in place of an answer, which nobody may look into. */
const BROKEN = 'the server did not answer with a page. Is "rushlight serve" still running?';

/**
 * @param {{href: string, signal: AbortSignal, onlink: (words: string) => void}} wants where drafts are shown; what to do with a link in it
 */
export function preview({ href, signal, onlink }) {
  const stage = el('div', { class: 'report-stage' });
  const told = el('p', { class: 'soft small', role: 'status' });
  let timer = 0;
  let count = 0;
  let top = 0;
  signal.addEventListener('abort', () => clearTimeout(timer));

  /** Draws a draft a moment after the last change, or at once. */
  function draw(draft, { now = false } = {}) {
    clearTimeout(timer);
    show(told, 'Drawing it …');
    timer = setTimeout(() => load(draft), now ? 0 : PAUSE);
  }

  /** Says why there is no new drawing; the last one stays. */
  function refuse(why) {
    clearTimeout(timer);
    stage.querySelectorAll('iframe.coming').forEach(one => one.remove());
    show(told, `Not drawn: ${why}`);
  }

  /** A new frame for each draft, shown when it is whole: the old one stays until then, and the way back of the browser stays as it was. */
  function load(draft) {
    stage.querySelectorAll('iframe.coming').forEach(one => one.remove());
    const name = `report-preview-${++count}`;
    const frame = el('iframe', { name, class: 'coming', title: 'The report as it will print', 'aria-hidden': 'true', tabindex: -1 });
    frame.addEventListener('load', () => {
      if (!frame.isConnected || frame.contentDocument?.URL === 'about:blank') return;
      arrived(frame);
    });
    const fields = Object.entries(draft).flatMap(([field, value]) => [value].flat().map(one => el('input', { type: 'hidden', name: field, value: one })));
    const form = el('form', { method: 'post', action: href, target: name, hidden: true }, fields);
    stage.append(frame, form);
    form.submit();
    form.remove();
  }

  function arrived(frame) {
    const page = frame.contentDocument;
    if (page?.contentType !== 'text/html') {
      frame.remove();
      refuse(page ? problem(page) : BROKEN);
      return;
    }
    const old = stage.querySelector('iframe:not(.coming)');
    if (old) top = old.contentWindow.scrollY;
    frame.className = '';
    frame.removeAttribute('aria-hidden');
    frame.removeAttribute('tabindex');
    frame.contentWindow.scrollTo(0, top);
    page.addEventListener('click', event => {
      const link = event.target.closest?.('a[href]');
      if (link) { event.preventDefault(); onlink(link.textContent); }
    });
    old?.remove();
    const left = [...page.querySelectorAll('.more')].map(one => one.closest('section').querySelector('h2').textContent);
    show(told, left.length ? `Two pages. More than fits, left to the screen: ${left.join('; ')}.` : 'Everything fits on two pages.');
  }

  const print = () => {
    const frame = stage.querySelector('iframe:not(.coming)')?.contentWindow;
    frame?.focus();
    frame?.print();
  };

  return { root: el('div', { class: 'report-preview' }, stage, told), draw, refuse, print };
}

function problem(page) {
  try {
    return JSON.parse(page.body.textContent).detail;
  } catch { return BROKEN; }
}
