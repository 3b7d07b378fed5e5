package rushlight.film.csv;

/**
 * Keeps a spreadsheet from running a cell: an apostrophe goes before a value that starts with a sign of a formula, with or
 * without apostrophes of its own before it, and reading takes exactly one such apostrophe away.
 */
final class SafeCell {
    private static final String SIGNS = "=+-@\t";

    private SafeCell() {}

    static String written(String value) {
        return startsFormula(value, 0) ? "'" + value : value;
    }

    static String read(String cell) {
        return !cell.isEmpty() && cell.charAt(0) == '\'' && startsFormula(cell, 1) ? cell.substring(1) : cell;
    }

    private static boolean startsFormula(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == '\'') {
            at++;
        }
        return at < text.length() && SIGNS.indexOf(text.charAt(at)) >= 0;
    }
}
