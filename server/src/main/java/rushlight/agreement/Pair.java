package rushlight.agreement;

import rushlight.film.Reading;

/**
 * One rep that both have read.
 *
 * @param first what the first evaluator read
 * @param second what the second read
 */
public record Pair(Reading first, Reading second) {}
