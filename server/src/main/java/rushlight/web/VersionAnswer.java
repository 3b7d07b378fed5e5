package rushlight.web;

/**
 * What answers, and over which film.
 *
 * @param book fingerprint of the book, the folder's own terms included
 * @param revision number of the last change of the film
 * @param demo whether this is the invented league
 * @param ask whether questions can be asked
 */
public record VersionAnswer(
        String name,
        String version,
        String book,
        long revision,
        int concepts,
        int prospects,
        int readings,
        boolean demo,
        boolean ask) {}
