package rushlight.web;

import java.util.List;
import rushlight.archive.NotesDecisions;
import rushlight.notes.Decisions;

/**
 * Kept decisions on a file of notes.
 *
 * @param id where they are kept
 * @param file name of the file
 * @param version counts from 1; 0 where nothing is kept yet
 * @param when when they were kept, UTC; empty where nothing is
 * @param decided what was decided
 * @param outline the tags they were made on
 * @param before former versions, the newest first
 */
public record DecisionsAnswer(
        String id,
        String file,
        long version,
        String when,
        Decisions decided,
        List<List<String>> outline,
        List<Before> before) {
    /** A version that was before. */
    public record Before(long version, String when, int decisions) {}

    /** The answer of a set. */
    public static DecisionsAnswer of(NotesDecisions.Kept kept, List<NotesDecisions.Kept> before) {
        return new DecisionsAnswer(
                kept.id(),
                kept.file(),
                kept.version(),
                kept.when().toString(),
                kept.review().decided(),
                kept.review().outline(),
                before.stream()
                        .map(one -> new Before(
                                one.version(),
                                one.when().toString(),
                                one.review().decided().count()))
                        .toList());
    }

    /** The tag that names a version. */
    public static String etag(long version) {
        return "\"d" + version + "\"";
    }
}
