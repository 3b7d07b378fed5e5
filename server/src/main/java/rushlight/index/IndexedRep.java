package rushlight.index;

import rushlight.film.Reading;
import rushlight.film.RepFacts;

/**
 * A reading as the index keeps it.
 *
 * @param reading as charted
 * @param facts what is counted of it
 */
public record IndexedRep(Reading reading, RepFacts facts) {}
