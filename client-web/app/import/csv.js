/** CSV as of RFC 4180, read and written so that what nobody touched stays as it was. */

/**
 * Rows of a file, each with the line it starts on.
 * @param {string} text
 * @returns {Array<{line: number, cells: string[]}>} lines without anything in them are left out, but counted
 */
export function parse(text) {
  const rows = [];
  let cells = [];
  let cell = '';
  let quoted = false;
  let line = 1;
  let started = 1;
  const source = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const end = () => {
    cells.push(cell);
    if (cells.length > 1 || cell !== '') rows.push({ line: started, cells });
    cells = [];
    cell = '';
  };
  for (let i = 0; i < source.length; i++) {
    const c = source[i];
    const breaks = c === '\n' || (c === '\r' && source[i + 1] !== '\n');
    if (breaks) line++;
    if (quoted) {
      if (c !== '"') cell += c;
      else if (source[i + 1] === '"') { cell += '"'; i++; } else quoted = false;
    } else if (c === '"' && cell === '') quoted = true;
    else if (c === ',') { cells.push(cell); cell = ''; } else if (breaks) { end(); started = line; } else if (c !== '\r') cell += c;
  }
  if (cell !== '' || cells.length) end();
  return rows;
}

/** Rows as text, quoted where they must be. */
export const write = rows => rows.map(({ cells }) => cells.map(quote).join(',')).join('\r\n') + '\r\n';

const quote = cell => (/[",\r\n]/.test(cell) || cell !== cell.trim() ? `"${cell.replaceAll('"', '""')}"` : cell);

/** The file with one cell changed; the row is found by the line it starts on. */
export function changed(rows, line, column, value) {
  const at = rows[0].cells.findIndex(name => name.trim() === column);
  if (at < 0) return rows;
  return rows.map(row => {
    if (row.line !== line) return row;
    const cells = [...row.cells];
    while (cells.length <= at) cells.push('');
    cells[at] = value;
    return { ...row, cells };
  });
}

/** The file without some rows. */
export const without = (rows, lines) => rows.filter(row => !lines.has(row.line));

/** A row as one reads it: its filled cells with their columns. */
export const told = (header, cells) => cells.map((cell, i) => (cell ? `${header[i] ?? '?'}: ${cell}` : '')).filter(Boolean).join(' · ');

/** Rows as they stand after they were written anew: each on the line it then starts on. */
export function renumbered(rows) {
  let line = 1;
  return rows.map(row => {
    const now = { ...row, line };
    line += 1 + row.cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return now;
  });
}
