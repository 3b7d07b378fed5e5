package rushlight.agreement;

import java.util.List;

/**
 * A rep that the two read differently.
 *
 * @param pair both readings
 * @param cells the columns in which they differ, in the order of the header
 */
public record Difference(Pair pair, List<Cell> cells) {
    /**
     * One column read differently; a column that one of them did not see is no difference.
     *
     * @param column header of the column
     * @param first what the first said, as the film log writes it
     * @param second what the second said
     */
    public record Cell(String column, String first, String second) {}

    public Difference {
        cells = List.copyOf(cells);
    }
}
