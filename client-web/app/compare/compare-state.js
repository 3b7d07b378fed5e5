/** Which findings of a comparison are worth a row, and under which heading. */
const STANDS = ['confirmed', 'likely'];

/** Rows by heading: where the tape tells them apart first, then what stands for one of them; the rest says nothing. */
export function kinds(findings) {
  const stands = row => row.cells.some(cell => STANDS.includes(cell.verdict));
  const groups = [
    ['Where the tape tells them apart', row => row.apart],
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
