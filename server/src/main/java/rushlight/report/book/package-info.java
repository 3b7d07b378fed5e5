/**
 * The whole book as a folder that needs no program and no network: Turtle, JSON-LD and one page a concept.
 *
 * <p>{@link rushlight.report.book.BookPublisher} is the way in. The same book gives the same bytes.
 */
@NullMarked
package rushlight.report.book;

import org.jspecify.annotations.NullMarked;
