/** Weeks of practice as they leave the program: into a calendar, and as a sheet of paper for the field. */
@NullMarked
package rushlight.report.practice;

import org.jspecify.annotations.NullMarked;
