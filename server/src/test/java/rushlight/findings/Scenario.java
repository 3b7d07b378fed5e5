package rushlight.findings;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.rules.RepRules;
import rushlight.situation.LogFacts;
import rushlight.situation.Situations;
import rushlight.situation.Tape;
import rushlight.situation.Tapes;

/**
 * One rep as an evaluator types it, and what it says for one finding of the shipped book. The rep goes the whole way: film
 * log, rules, counts.
 *
 * @param finding slug of the finding
 * @param says what the rep must be for it
 * @param why what a coach would say
 * @param cells the rep as {@code column=value, column=value}; lists with semicolons, as in a film log
 */
record Scenario(String finding, Says says, String why, String cells) {
    /** What one rep is for one finding. */
    enum Says {
        /** His chance, and it bears the finding out. */
        EVENT,
        /** His chance, and it does not. */
        CHANCE,
        /** Perhaps his chance, and then it bears the finding out: in the bounds only. */
        PERHAPS,
        /** Nothing: not counted in any way. */
        NOTHING
    }

    private static final List<String> LISTS = List.of("help", "faults", "results", "direction", "chances", "not_seen");

    /** Reads a table of lines {@code finding | says | why | cells}; a blank finding is that of the line before. */
    static List<Scenario> table(String phase, String text) {
        List<Scenario> all = new ArrayList<>();
        String finding = "";
        for (String line : text.lines().filter(one -> !one.isBlank()).toList()) {
            String[] parts = line.split("\\|", -1);
            finding = parts[0].isBlank() ? finding : parts[0].strip();
            Says says = Says.valueOf(parts[1].strip().toUpperCase(Locale.ROOT));
            all.add(new Scenario(finding, says, parts[2].strip(), "phase=" + phase + ", " + parts[3].strip()));
        }
        return all;
    }

    static Stream<Arguments> arguments(List<Scenario> table) {
        return table.stream().map(one -> Arguments.of(one.finding(), one.why(), one));
    }

    /** The shipped book, loaded once for a test class. */
    static final class Judge {
        private final Taxonomy taxonomy;
        private final RepRules rules;
        private final FindingBook book;

        Judge() {
            Ontology ontology = Ontology.packaged();
            taxonomy = Taxonomy.of(ontology);
            rules = RepRules.of(ontology, taxonomy);
            book = FindingBook.of(ontology, taxonomy, Situations.of(ontology, taxonomy));
        }

        Says says(Scenario scenario) {
            Counting.Scope scope = book.finding(scenario.finding())
                    .orElseThrow(() -> new IllegalArgumentException("no finding " + scenario.finding()))
                    .counting()
                    .scope()
                    .orElseThrow();
            Counts counts = new Counts(tape(scenario), book.conventions());
            Rated certain = rated(counts.certain(scope));
            Rated unknown = rated(counts.unknown(scope));
            if (certain.chance()) {
                return certain.event() ? Says.EVENT : Says.CHANCE;
            }
            return unknown.event() ? Says.PERHAPS : Says.NOTHING;
        }

        private static Rated rated(Sample sample) {
            return new Rated(!sample.opportunities().isEmpty(), !sample.events().isEmpty());
        }

        private Tape tape(Scenario scenario) {
            Map<String, String> row = new TreeMap<>();
            LISTS.forEach(column -> row.put(column, ""));
            row.putAll(Map.of("rep", "r1", "prospect", "Tam Orrin", "game", "Fen at Holm"));
            for (String cell : scenario.cells().split(", ", -1)) {
                int at = cell.indexOf('=');
                row.put(cell.substring(0, at).strip(), cell.substring(at + 1).strip());
            }
            String csv = String.join(",", row.keySet()) + "\n" + String.join(",", row.values()) + "\n";
            ReadResult read = FilmLogReader.of(taxonomy)
                    .read(
                            "rep",
                            new ByteArrayInputStream(csv.getBytes(StandardCharsets.UTF_8)),
                            FilmLogReader.Options.none());
            if (!(read instanceof ReadResult.Accepted accepted)) {
                throw new IllegalArgumentException(read.toString());
            }
            Log log = accepted.logs().get(0);
            return Tapes.of(List.of(new LogFacts(log, rules.factsOf(log)))).get(0);
        }
    }

    private record Rated(boolean chance, boolean event) {}
}
