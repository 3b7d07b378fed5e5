package rushlight.report.book;

/**
 * A way to another page.
 *
 * @param href where, as seen from the page it stands on
 * @param label what it says
 */
public record Link(String href, String label) {}
