/**
 * One prospect on two pages: composed once, written as HTML and as PDF.
 *
 * <p>{@link rushlight.report.prospect.ProspectReports} is the way in.
 */
@NullMarked
package rushlight.report.prospect;

import org.jspecify.annotations.NullMarked;
