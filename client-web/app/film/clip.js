/** The film beside a rep sheet: from a file of yours, which stays on this machine, or from the demo. */
import { clips } from '../wire/book.js';
import { choice, el, show } from '../parts/elements.js';
import { clock } from '../parts/reps.js';
import { filmTime } from './sheet-state.js';

/** Files picked in this visit, by name: object URLs, never sent anywhere. */
const picked = new Map();
const FRAME = 1 / 30;
const STEP = 2;

/**
 * @param {{onmark?: (column: 'start' | 'end', time: string) => void}} wants without it no start or end can be set
 */
export function clipDeck({ onmark }) {
  const root = el('section', { class: 'clip controls', 'aria-label': 'Film' });
  const video = el('video', { preload: 'metadata', playsinline: true, muted: true, tabindex: -1, 'aria-label': 'The rep on film' });
  const time = el('span', { class: 'time', role: 'timer', 'aria-live': 'off' });
  let range = { video: '', start: 0, end: null };
  let loop = true;
  let source = '';
  let frame = FRAME;
  let last = null;

  const deeds = {
    play: () => { if (video.paused) video.play(); else video.pause(); },
    back: () => { video.currentTime = Math.max(0, video.currentTime - STEP); },
    on: () => { video.currentTime = Math.min(video.duration || Infinity, video.currentTime + STEP); },
    frameBack: () => nudge(-1),
    frameOn: () => nudge(1),
    start: () => { video.currentTime = range.start; },
    loop: () => { loop = !loop; draw(); },
    slow: () => { speed(video.playbackRate === 1 ? 0.5 : video.playbackRate === 0.5 ? 0.25 : 1); },
    markStart: () => onmark('start', filmTime(video.currentTime)),
    markEnd: () => onmark('end', filmTime(video.currentTime)),
  };

  function nudge(by) {
    video.pause();
    video.currentTime = Math.max(0, video.currentTime + by * frame);
  }

  function speed(rate) {
    video.playbackRate = rate;
    draw();
  }

  video.addEventListener('timeupdate', () => {
    time.textContent = `${filmTime(video.currentTime)}${range.end === null ? '' : ` of ${clock(range.end)}`}`;
    if (range.end !== null && video.currentTime >= range.end && !video.paused) {
      if (loop) video.currentTime = range.start;
      else video.pause();
    }
  });
  video.addEventListener('loadedmetadata', () => { video.currentTime = range.start; });
  video.addEventListener('play', () => draw());
  video.addEventListener('pause', () => draw());
  video.requestVideoFrameCallback?.(function measured(_, { mediaTime }) {
    if (last !== null && mediaTime > last && mediaTime - last < 1 && !video.paused) frame = Math.min(frame === FRAME ? 1 : frame, mediaTime - last);
    last = mediaTime;
    video.requestVideoFrameCallback(measured);
  });

  function pick(files) {
    for (const file of files) picked.set(file.name, URL.createObjectURL(file));
    const fits = picked.get(fileName(range.video)) ?? (files[0] && picked.get(files[0].name));
    if (fits) play(fits);
  }

  function play(href) {
    if (source !== href) { source = href; last = null; frame = FRAME; video.src = href; }
    draw();
  }

  const button = (words, deed, pressable = false) => el('button', { type: 'button', onclick: deed, 'aria-pressed': pressable ? 'true' : null }, words);
  const playing = button('Play', deeds.play);
  const looping = button('Loop', deeds.loop, true);
  const speeds = choice('film-speed', [['1', '1×'], ['0.5', '½×'], ['0.25', '¼×']], '1', rate => speed(Number(rate)));
  const missing = el('p', {});
  const none = el('div', { class: 'none' }, missing, el('p', { class: 'small soft' }, 'Pick the file below: it is played from your disk and sent nowhere.'));
  const stage = el('div', { hidden: true }, video, el('div', { class: 'deck' },
    playing, button('− 2 s', deeds.back), button('+ 2 s', deeds.on), button('‹ frame', deeds.frameBack), button('frame ›', deeds.frameOn),
    button('To its start', deeds.start), looping, el('label', { class: 'row' }, 'Speed ', speeds),
    onmark ? [button('Start here', deeds.markStart), button('End here', deeds.markEnd)] : null, time));
  const file = el('input', { type: 'file', id: 'film-file', accept: 'video/*,.webm,.mp4,.mkv,.mov', multiple: true, onchange: event => pick(event.target.files) });
  root.append(none, stage, el('div', { class: 'deck file' }, el('label', { for: 'film-file' }, 'Film from your disk'), file));

  function draw() {
    none.hidden = Boolean(source);
    stage.hidden = !source;
    show(missing, range.video ? ['This rep is on ', el('strong', {}, fileName(range.video)), range.start ? ` at ${clock(range.start)}` : '', '.'] : 'No film is named on this rep.');
    playing.textContent = video.paused ? 'Play' : 'Pause';
    looping.setAttribute('aria-pressed', String(loop));
    speeds.value = String(video.playbackRate);
  }

  /** Turns to the film of a rep. */
  async function turnTo({ video: name = '', start = null, end = null }) {
    const moved = range.start !== (start ?? 0) || range.video !== name;
    range = { video: name, start: start ?? 0, end };
    const known = picked.get(fileName(name)) ?? (await clips().catch(() => new Map())).get(fileName(name));
    if (known) {
      const again = source === known;
      play(known);
      if (again && moved) video.currentTime = range.start;
    } else { source = ''; video.removeAttribute('src'); draw(); }
  }

  draw();
  return { root, video, deeds, turnTo };
}

const fileName = address => address.split(/[\\/]/).at(-1).split('?')[0];
