package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import rushlight.notes.Diagnostic;
import rushlight.notes.Hidden;
import rushlight.notes.Mention;
import rushlight.notes.Notes;
import rushlight.notes.ProposedRep;
import rushlight.notes.Segment;
import rushlight.notes.TagKeys;

/**
 * What notes say, as programs read it. Places are UTF-16 units in the words of the cues, one line break between two.
 *
 * @param source name of the file
 * @param diagnostics what was wrong in it
 * @param segments the text in stretches
 * @param reps the reps it speaks of
 * @param statements what it says of the player in general
 * @param hidden what names a concept and was left out
 */
public record NotesAnswer(
        String source,
        List<Diagnostic> diagnostics,
        List<Stretch> segments,
        List<Rep> reps,
        List<Tag> statements,
        List<Hidden> hidden) {
    /** A stretch of the text; the rep is 0 where it belongs to none. */
    public record Stretch(String kind, int rep, int from, int to) {}

    /** A place in the text. */
    public record Place(int from, int to) {}

    /** A rep that is proposed; times in seconds. */
    public record Rep(
            int ordinal,
            OptionalDouble start,
            OptionalDouble end,
            int from,
            int to,
            Optional<String> phase,
            List<Place> replays,
            List<Tag> tags) {}

    /** What was said of it; the key stays the same where the notes are read again. */
    public record Tag(
            String key,
            String concept,
            String assertion,
            String actor,
            Optional<String> side,
            Optional<String> hand,
            Optional<String> target,
            Optional<Integer> order,
            Optional<String> opinion,
            String text,
            int from,
            int to,
            String band,
            List<String> because) {}

    /** The answer of these notes. */
    public static NotesAnswer of(Notes notes) {
        return of(notes, TagKeys.begun(), TagKeys.begun());
    }

    /** The same of a piece of longer notes, with what gave the keys of the pieces before. */
    static NotesAnswer of(Notes notes, TagKeys keysOfReps, TagKeys keysOfStatements) {
        return new NotesAnswer(
                notes.source(),
                notes.diagnostics(),
                notes.segments().stream()
                        .map(s -> new Stretch(s.kind().slug(), s.rep(), s.from(), s.to()))
                        .toList(),
                reps(notes, keysOfReps.of(notes.reps())),
                tags(notes.statements(), keysOfStatements.inGeneral(notes.statements())),
                notes.hidden());
    }

    private static List<Rep> reps(Notes notes, List<List<String>> keys) {
        return IntStream.range(0, keys.size())
                .mapToObj(i -> rep(notes.reps().get(i), keys.get(i)))
                .toList();
    }

    private static List<Tag> tags(List<Mention> said, List<String> keys) {
        return IntStream.range(0, keys.size())
                .mapToObj(i -> tag(said.get(i), keys.get(i)))
                .toList();
    }

    private static Rep rep(ProposedRep rep, List<String> keys) {
        return new Rep(
                rep.ordinal(),
                rep.start(),
                rep.end(),
                rep.from(),
                rep.to(),
                rep.phase(),
                rep.replays().stream().map(NotesAnswer::place).toList(),
                tags(rep.tags(), keys));
    }

    private static Place place(Segment segment) {
        return new Place(segment.from(), segment.to());
    }

    private static Tag tag(Mention said, String key) {
        return new Tag(
                key,
                said.concept(),
                said.assertion().slug(),
                said.actor().slug(),
                said.side(),
                said.hand(),
                said.target(),
                said.order() == 0 ? Optional.empty() : Optional.of(said.order()),
                opinion(said.opinion()),
                said.text(),
                said.from(),
                said.to(),
                said.band().slug(),
                said.because());
    }

    private static Optional<String> opinion(int value) {
        return switch (value) {
            case -2 -> Optional.of("strongly-negative");
            case -1 -> Optional.of("negative");
            case 1 -> Optional.of("positive");
            case 2 -> Optional.of("strongly-positive");
            default -> Optional.empty();
        };
    }
}
