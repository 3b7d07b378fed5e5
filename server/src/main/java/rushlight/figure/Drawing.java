package rushlight.figure;

/**
 * A drawing and what it says in words and numbers.
 *
 * @param svg one {@code svg} element, to be set into a page or kept as a file
 * @param table the values behind it
 */
public record Drawing(String svg, Table table) {}
