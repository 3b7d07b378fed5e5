package rushlight.web;

import java.util.List;
import java.util.Locale;
import rushlight.archive.LearnedWords;
import rushlight.notes.Learned;

/** What kept decisions on notes teach. */
public record LearnedAnswer(List<Suggestion> suggestions) {
    /**
     * A suggestion.
     *
     * @param key by which it is taken, ignored and brought back
     * @param kind {@code name} or {@code warning}
     * @param concept slug of the term
     * @param words as they were said
     * @param times how often it was decided so
     * @param accepted how often the same tag was accepted as it was read
     * @param state {@code open}, {@code taken} or {@code ignored}
     * @param readAs what the words alone are read as now
     * @param places where it was decided so
     */
    public record Suggestion(
            String key,
            String kind,
            String concept,
            String words,
            int times,
            int accepted,
            String state,
            List<String> readAs,
            List<Place> places) {}

    /** Where it was decided; the rep is 0 where it was said of the player in general. */
    public record Place(String id, String file, int rep) {}

    /** The answer of these. */
    public static LearnedAnswer of(List<LearnedWords.Suggestion> all) {
        return new LearnedAnswer(all.stream().map(LearnedAnswer::suggestion).toList());
    }

    private static Suggestion suggestion(LearnedWords.Suggestion one) {
        Learned learned = one.learned();
        return new Suggestion(
                learned.key(),
                learned.kind().name().toLowerCase(Locale.ROOT),
                learned.concept(),
                learned.words(),
                learned.times(),
                learned.held(),
                one.state().name().toLowerCase(Locale.ROOT),
                one.readAs(),
                learned.places().stream()
                        .map(place -> new Place(place.id(), place.file(), place.rep()))
                        .toList());
    }
}
