/** Which findings of a comparison are worth a row, and under which heading. */
const STANDS = ['confirmed', 'likely'];

/** Rows by heading: where the tape tells them apart first, then what stands for one of them; the rest says nothing. */
export function kinds(findings) {
  const stands = row => row.cells.some(cell => STANDS.includes(cell.verdict));
  const groups = [
    ['Where the tape tells them apart', row => row.apart],
    ['Leaning; it may be luck', row => row.standing === 'leaning'],
    ['What one of them lacks', row => row.polarity === 'gap' && stands(row)],
    ['What one of them does well', row => row.polarity === 'strength' && stands(row)],
    ['Worth knowing', row => stands(row)],
  ];
  const told = new Set();
  return groups.map(([title, fits]) => {
    const rows = findings.filter(row => !told.has(row) && fits(row));
    rows.forEach(row => told.add(row));
    return [title, rows];
  }).filter(([, rows]) => rows.length);
}

/** How honest the comparison is: how many were made, and what luck alone would do. */
export const honest = comparisons => (comparisons
  ? `${comparisons} comparisons were made. Looked at one by one, about ${Math.round(comparisons / 10)} would look like a difference by luck alone; so the tape is said to tell two men apart only where, of all that is so said, no more than 10 in 100 are expected to be luck. Likely ranges are of 90 %.`
  : 'Nothing could be compared: no finding has chances enough on both sides.');
