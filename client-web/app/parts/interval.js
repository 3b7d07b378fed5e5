/** The bar that holds a rate against its line: rate, likely range, line. */
import { svg } from './elements.js';
import { at, bar } from './interval-state.js';

let made = 0;

/** A drawing of a count, or null where there is nothing to draw. */
export function intervalBar(count) {
  const drawn = bar(count);
  if (!drawn) return null;
  const id = `interval-${++made}`;
  const y = 24;
  return svg('svg', { class: 'interval', viewBox: '0 0 312 46', role: 'img', 'aria-labelledby': `${id}-t ${id}-d` },
    svg('title', { id: `${id}-t` }, drawn.title),
    svg('desc', { id: `${id}-d` }, drawn.words),
    svg('line', { class: 'axis', x1: at(0), x2: at(1), y1: y, y2: y }),
    [0, 0.25, 0.5, 0.75, 1].map(share => svg('line', { class: 'axis', x1: at(share), x2: at(share), y1: y - 3, y2: y + 3 })),
    [[0, 'start'], [0.5, 'middle'], [1, 'end']].map(([share, anchor]) =>
      svg('text', { class: 'scale', x: at(share), y: y + 17, 'text-anchor': anchor }, `${share * 100} %`)),
    svg('line', { class: 'range', x1: drawn.low, x2: drawn.high, y1: y, y2: y }),
    drawn.houseLine === null ? null : svg('line', { class: 'house-line', x1: drawn.houseLine, x2: drawn.houseLine, y1: y - 11, y2: y + 8 }),
    drawn.line === null ? null : [
      svg('line', { class: 'line', x1: drawn.line, x2: drawn.line, y1: y - 11, y2: y + 8 }),
      svg('text', { class: 'line-words', x: drawn.line, y: y - 14, 'text-anchor': drawn.lineSide }, drawn.lineWords),
    ],
    drawn.rate === null ? null : svg('circle', { class: 'rate', cx: drawn.rate, cy: y, r: 5 }));
}
