package rushlight.agreement;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rushlight.film.FactMaker;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.film.Step;
import rushlight.knowledge.Column;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/** The columns by which readings can be compared, and what a reading says in each. */
final class JudgedColumns {
    private static final String GRADE = "grade";
    private static final String SEEN = "seen";

    private final FactMaker maker;
    private final FilmColumns film;
    private final List<Column> columns;
    private final Set<String> grades;

    /** Where on him a tag is seen, for tags that ask for more than a look. */
    private final Map<String, String> views;

    private JudgedColumns(
            FactMaker maker, FilmColumns film, List<Column> columns, Set<String> grades, Map<String, String> views) {
        this.maker = maker;
        this.film = film;
        this.columns = columns;
        this.grades = grades;
        this.views = views;
    }

    static JudgedColumns of(Ontology ontology, Taxonomy taxonomy) {
        Facts facts = new Facts(ontology.graph());
        FilmColumns film = taxonomy.film();
        Map<String, String> judged = new TreeMap<>();
        facts.ofClass("Column")
                .forEach(node -> facts.text(node, "judged")
                        .ifPresent(
                                how -> judged.put(facts.text(node, "columnName").orElseThrow(), how)));
        List<Column> columns = film.all().stream()
                .filter(column -> judged.containsKey(column.name()))
                .sorted(Comparator.comparingInt(Column::position))
                .toList();
        Set<String> grades = judged.entrySet().stream()
                .filter(one -> one.getValue().equals(GRADE))
                .map(Map.Entry::getKey)
                .collect(Collectors.toUnmodifiableSet());
        Map<String, String> views = new TreeMap<>();
        facts.withProperty(Rl.term("seenIn"))
                .forEach(node -> facts.text(node, "seenIn").ifPresent(view -> views.put(Rl.slug(node), view)));
        return new JudgedColumns(new FactMaker(ontology, taxonomy), film, columns, grades, Map.copyOf(views));
    }

    List<Column> all() {
        return columns;
    }

    /** Whether the values of a column run from one end to the other. */
    boolean isGraded(Column column) {
        return grades.contains(column.name());
    }

    static boolean isSet(Column column) {
        return column.list() || column.kind() == Column.Kind.EXCHANGE;
    }

    /** What one reading says. */
    Said said(Log log, Reading reading) {
        RepFacts facts = maker.facts(reading, log.charted());
        return new Said(reading, facts.tagged(SEEN), this);
    }

    /** One reading with what its evaluator saw. */
    record Said(Reading reading, Set<String> seen, JudgedColumns book) {
        /**
         * What it says in a column; empty where he did not look, could not see, or said that nobody knows.
         *
         * @param seenByOther what the other evaluator saw: tags that one of the two could not see are left out of both sets
         */
        Optional<Set<String>> in(Column column, Set<String> seenByOther) {
            if (!seen.contains(column.name()) || !seenByOther.contains(column.name())) {
                return Optional.empty();
            }
            if (column.kind() == Column.Kind.EXCHANGE) {
                return Optional.of(steps());
            }
            Set<String> values = new TreeSet<>(reading.all(column.name()));
            book.film.unsaid(column.name()).ifPresent(values::remove);
            if (!column.list()) {
                return values.isEmpty() ? Optional.empty() : Optional.of(values);
            }
            values.removeIf(value -> !looked(value, seen) || !looked(value, seenByOther));
            return Optional.of(values);
        }

        /** Whether one who saw this much could have tagged it. */
        boolean looked(String tag, Set<String> by) {
            String view = book.views.get(tag);
            return view == null || by.contains(view);
        }

        private Set<String> steps() {
            return reading.exchange().stream()
                    .map(step -> step.by() == Step.By.BLOCKER ? "[" + step.concept() + "]" : step.concept())
                    .collect(Collectors.toCollection(TreeSet::new));
        }

        /** The cell as the film log writes it; the exchange in its order. */
        String written(Column column) {
            if (column.kind() != Column.Kind.EXCHANGE) {
                return String.join("; ", reading.all(column.name()));
            }
            return reading.exchange().stream().map(Said::written).collect(Collectors.joining(" > "));
        }

        private static String written(Step step) {
            String hand = step.hand().map(h -> "@" + h.toLowerCase(Locale.ROOT)).orElse("");
            return step.by() == Step.By.BLOCKER ? "[" + step.concept() + "]" : step.concept() + hand;
        }
    }
}
