package rushlight.archive;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.jena.graph.Node;
import rushlight.archive.Reconciling.Choice;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.Reconciled;
import rushlight.film.Step;
import rushlight.knowledge.Column;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Rl;

/**
 * Makes one reading of two. A column nobody chose in is the first's, or the second's where the first is silent; a column that
 * tells of another goes with it; what the chosen evaluator did not see stays unseen, whatever the other saw.
 */
final class Settling {
    private static final String NOT_SEEN = "not_seen";
    private static final String FAULT = "fault";
    private static final String NO_FILE = "0".repeat(64);

    private final FilmColumns film;

    /** Columns that say how another one is known, by name, with that other one. */
    private final Map<String, String> tellsOf;

    private Settling(FilmColumns film, Map<String, String> tellsOf) {
        this.film = film;
        this.tellsOf = tellsOf;
    }

    static Settling of(Book book) {
        Facts facts = new Facts(book.ontology().graph());
        Map<String, String> tellsOf = new TreeMap<>();
        for (Node column : facts.ofClass("Column")) {
            facts.slug(column, "tellsOf")
                    .flatMap(about -> facts.text(Rl.term(about), "columnName"))
                    .ifPresent(about ->
                            tellsOf.put(facts.text(column, "columnName").orElseThrow(), about));
        }
        return new Settling(book.taxonomy().film(), Map.copyOf(tellsOf));
    }

    boolean knows(String column) {
        return film.named(column).isPresent();
    }

    /**
     * A log that holds the one reconciled reading.
     *
     * @param before list columns that were looked at in reps reconciled before
     */
    Log log(KeptReading first, KeptReading second, Map<String, Choice> choices, Set<String> before) {
        Set<String> charted = new HashSet<>(before);
        charted.addAll(first.log().charted());
        charted.addAll(second.log().charted());
        String source = "reconciled from " + first.log().evaluator() + " and "
                + second.log().evaluator();
        return new Log(
                Reconciled.NAME,
                first.log().prospect(),
                first.log().game(),
                charted,
                List.of(reading(first, second, choices, charted)),
                new Log.Source(source, NO_FILE));
    }

    private Reading reading(KeptReading first, KeptReading second, Map<String, Choice> choices, Set<String> charted) {
        Map<String, List<String>> tags = new HashMap<>();
        Set<String> unseen = new TreeSet<>();
        List<Step> exchange = List.of();
        for (Column column : film.all()) {
            String name = column.name();
            if (name.equals(NOT_SEEN)) {
                continue;
            }
            KeptReading chosen = choice(column, first, choices) == Choice.FIRST ? first : second;
            if (column.kind() == Column.Kind.EXCHANGE) {
                exchange = chosen.reading().exchange();
            } else if (!chosen.reading().all(name).isEmpty()) {
                tags.put(name, chosen.reading().all(name));
            }
            if (hidden(chosen).contains(name)
                    || (charted.contains(name) && !chosen.log().charted().contains(name))) {
                unseen.add(name);
            }
            if (column.facet().equals(FAULT)) {
                hidden(chosen).stream().filter(one -> !knows(one)).forEach(unseen::add);
            }
        }
        if (!unseen.isEmpty()) {
            tags.put(NOT_SEEN, List.copyOf(unseen));
        }
        return new Reading(first.reading().rep(), Reconciled.NAME, tags, exchange);
    }

    private Choice choice(Column column, KeptReading first, Map<String, Choice> choices) {
        Optional<Choice> made = Optional.ofNullable(choices.get(column.name()));
        return made.or(() -> Optional.ofNullable(tellsOf.get(column.name()))
                        .flatMap(film::named)
                        .map(about -> choice(about, first, choices)))
                .orElseGet(() -> isSilent(first, column) ? Choice.SECOND : Choice.FIRST);
    }

    /** Whether he says nothing there: blank, hidden, not looked at, or nobody knows. */
    private boolean isSilent(KeptReading one, Column column) {
        String name = column.name();
        if (hidden(one).contains(name)) {
            return true;
        }
        if (column.kind() == Column.Kind.EXCHANGE) {
            return one.reading().exchange().isEmpty();
        }
        if (column.list()) {
            return !one.log().charted().contains(name);
        }
        Optional<String> value = one.reading().one(name);
        return value.isEmpty() || value.equals(film.unsaid(name));
    }

    private static Set<String> hidden(KeptReading one) {
        return Set.copyOf(one.reading().all(NOT_SEEN));
    }
}
