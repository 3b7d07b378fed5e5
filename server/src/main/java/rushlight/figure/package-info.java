/**
 * The drawings that carry the meaning, as SVG text: the front, the ladder, the relations of a technique, the flow of a
 * rush and the interval of a rate.
 *
 * <p>A drawing knows shapes, not football: what stands where and what it is called comes in as values. Each has a title, a
 * description and the table behind it. Colors come from the page by class and {@code currentColor}, so that a drawing
 * follows light, dark and print; nothing is styled inline and nothing runs, so that a strict content policy holds.
 */
@NullMarked
package rushlight.figure;

import org.jspecify.annotations.NullMarked;
