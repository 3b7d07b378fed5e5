/** Geometry and words of the bar that holds a rate against its line. */

const LEFT = 6;
const WIDTH = 300;

/** Where a share lies on the bar. */
export const at = share => LEFT + Math.min(1, Math.max(0, share)) * WIDTH;

/**
 * What is drawn and said of a count; null where there is nothing to draw.
 * @param {{opportunities: number, events: number, rate: ?number, low: ?number, high: ?number, line: ?number, houseLine?: ?number, measure?: string}} count
 */
export function bar(count) {
  if (count.low === null || count.low === undefined || count.high === null || count.measure === 'difference') return null;
  const percent = share => `${Math.round(share * 100)} %`;
  const own = count.houseLine !== undefined && count.houseLine !== null && count.houseLine !== count.line;
  const line = count.line === null || count.line === undefined ? null : count.line;
  return {
    low: at(count.low),
    high: at(count.high),
    rate: count.rate === null || count.rate === undefined ? null : at(count.rate),
    line: line === null ? null : at(line),
    houseLine: own ? at(count.houseLine) : null,
    lineSide: line === null ? 'middle' : line > 0.8 ? 'end' : line < 0.2 ? 'start' : 'middle',
    title: `${count.events} of ${count.opportunities}`,
    words: `${count.events} of ${count.opportunities}, likely range ${percent(count.low)} to ${percent(count.high)}`
      + (line === null ? '; no line.' : `; the line is at ${percent(line)}${own ? ` (house line ${percent(count.houseLine)})` : ''}.`),
    lineWords: line === null ? '' : own ? `your line ${percent(line)}` : `line ${percent(line)}`,
  };
}
