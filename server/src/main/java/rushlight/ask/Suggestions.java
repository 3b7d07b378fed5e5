package rushlight.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rushlight.index.Footage;
import rushlight.index.Suggester;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;

/** What a person may be about to ask: names of players, terms of the book, and questions others asked. */
public final class Suggestions {
    /** The kind of a player's name, and that of a whole question; a term's kinds are the classes of the book. */
    public static final String PROSPECT = "prospect";

    public static final String QUESTION = "question";

    private static final int FIRST = 100;
    private static final int NAMED = 50;
    private static final int OTHERWISE_NAMED = 20;
    private static final int SPOKEN = 5;

    private final Taxonomy taxonomy;
    private final Suggester book;

    /** Whoever is on film; made anew when the film changes. */
    private record Names(Suggester suggester) {
        static Names of(Footage footage) {
            return new Names(Suggester.of(footage.prospects().stream()
                    .map(prospect -> new Suggester.Entry(prospect.name(), prospect.id(), Set.of(PROSPECT), FIRST))
                    .toList()));
        }
    }

    /**
     * Something to type.
     *
     * @param text what to type
     * @param kind {@link #PROSPECT}, {@link #QUESTION}, or the first class of a term, such as {@code RushMove}
     * @param id of the player or the term; the question itself
     * @param about what it is, in a sentence; may be empty
     */
    public record Suggestion(String text, String kind, String id, String about) {}

    private Suggestions(Taxonomy taxonomy, Suggester book) {
        this.taxonomy = taxonomy;
        this.book = book;
    }

    /**
     * Suggests the terms of a book.
     *
     * @param questions whole questions to suggest beside them
     */
    public static Suggestions of(Taxonomy taxonomy, List<String> questions) {
        List<Suggester.Entry> entries = new ArrayList<>();
        for (Concept concept : taxonomy.concepts()) {
            add(entries, concept, List.of(concept.label()), NAMED);
            add(entries, concept, concept.altLabels(), OTHERWISE_NAMED);
            add(entries, concept, concept.hiddenLabels(), SPOKEN);
        }
        questions.forEach(
                question -> entries.add(new Suggester.Entry(question, question, Set.of(QUESTION), OTHERWISE_NAMED)));
        return new Suggestions(taxonomy, Suggester.of(entries));
    }

    private static void add(List<Suggester.Entry> entries, Concept concept, List<String> labels, int weight) {
        labels.forEach(label -> entries.add(new Suggester.Entry(label, concept.slug(), concept.classes(), weight)));
    }

    /** For the question box: players first, then terms and questions. */
    public List<Suggestion> toAsk(Footage footage, String text, int most) {
        List<Suggestion> all = new ArrayList<>();
        footage.once(Names.class, Names::of)
                .suggester()
                .to(text, Set.of(), most)
                .forEach(found -> all.add(new Suggestion(found.text(), PROSPECT, found.id(), "")));
        all.addAll(terms(text, Set.of(), most));
        return all.stream().limit(most).toList();
    }

    /** Terms alone: for a cell that takes concepts of these classes; none named means all. */
    public List<Suggestion> terms(String text, Set<String> classes, int most) {
        List<Suggestion> all = new ArrayList<>();
        Set<String> once = new HashSet<>();
        for (Suggester.Suggestion found : book.to(text, classes, 2 * most)) {
            if (once.add(found.id()) && all.size() < most) {
                all.add(suggestion(found));
            }
        }
        return all;
    }

    private Suggestion suggestion(Suggester.Suggestion found) {
        return taxonomy.concept(found.id())
                .map(concept -> new Suggestion(
                        found.text(),
                        concept.classes().stream().sorted().findFirst().orElse(""),
                        concept.slug(),
                        concept.definition()))
                .orElseGet(() -> new Suggestion(found.text(), QUESTION, found.id(), ""));
    }
}
