package rushlight.web;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rushlight.notes.Decisions;

/** Decisions as a program sends them; what is left out is not decided. */
public record DecidedIn(
        @Nullable Map<String, Boolean> chosen,
        @Nullable Map<String, String> phases,
        @Nullable Map<String, String> changed,
        @Nullable List<Added> added,
        @Nullable Set<String> splits,
        @Nullable Set<String> merges) {
    /** A tag that was added. */
    public record Added(
            @Nullable String concept,
            @Nullable String text,
            int rep,
            @Nullable String after) {}

    /** The decisions; entries without a value are left out. */
    public Decisions decisions() {
        return new Decisions(
                filled(chosen),
                filled(phases),
                filled(changed),
                Objects.requireNonNullElse(added, List.<Added>of()).stream()
                        .map(one -> new Decisions.Added(word(one.concept), word(one.text), one.rep, word(one.after)))
                        .toList(),
                Objects.requireNonNullElse(splits, Set.of()),
                Objects.requireNonNullElse(merges, Set.of()));
    }

    /** Every concept they name. */
    public Stream<String> concepts() {
        Decisions decided = decisions();
        return Stream.concat(
                decided.changed().values().stream(), decided.added().stream().map(Decisions.Added::concept));
    }

    private static <T> Map<String, T> filled(@Nullable Map<String, T> map) {
        return Objects.requireNonNullElse(map, Map.<String, T>of()).entrySet().stream()
                .filter(entry -> entry.getValue() != null)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static String word(@Nullable String text) {
        return Objects.requireNonNullElse(text, "").strip();
    }
}
