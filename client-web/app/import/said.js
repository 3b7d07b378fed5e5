/** What a check of a file came to, in sentences. */
const counted = (n, one, many = `${one}s`) => `${n.toLocaleString('en-US')} ${n === 1 ? one : many}`;

/** What of a file is good and what is here already. */
export function summary({ kind, readings, prospects, logs, faults }) {
  if (kind === 'prospects') return `A list of prospects: ${counted(prospects, 'man', 'men')} told of.`;
  if (!readings) return faults.length ? 'No rep can be taken in yet; what to mend is below.' : 'There is no rep in it.';
  const here = logs.filter(log => log.before > 0);
  return `${counted(readings, 'rep')} ${readings === 1 ? 'is' : 'are'} good${faults.length ? ', the rest is below' : ''}: ${counted(logs.length, 'log')}.`
    + (here.length ? ` ${counted(here.length, 'of these logs is', 'of these logs are')} here already.` : '');
}

/** That there are things to look at which stop nothing. */
export const oddities = n => `${counted(n, 'oddity', 'oddities')}, taken in as ${n === 1 ? 'it is' : 'they are'}`;
