package rushlight.knowledge;

/**
 * How hard a drill may hit. The levels are data of the book: the rank alone puts them in order.
 *
 * @param slug the level, such as {@code bag}
 * @param label its name
 * @param rank its place, 0 for the lightest
 * @param fullContact whether its minutes count as full contact
 * @param planned whether a plan may put it on a day by itself
 */
public record ContactLevel(String slug, String label, int rank, boolean fullContact, boolean planned) {}
