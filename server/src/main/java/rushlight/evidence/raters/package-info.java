/**
 * How far raters agree beyond chance: Krippendorff's alpha, Cohen's and Fleiss' kappa, Gwet's AC1, and distances of sets.
 *
 * <p>The headline is alpha: it takes any number of raters, gaps, and distances between labels. Kappa is given because people
 * know it; AC1 because kappa and alpha fall where nearly all units carry one label. Nothing here knows what the labels mean.
 */
@NullMarked
package rushlight.evidence.raters;

import org.jspecify.annotations.NullMarked;
