package rushlight.findings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.csv.Fault;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.rules.RepRules;
import rushlight.situation.LogFacts;
import rushlight.situation.Situations;
import rushlight.situation.Tape;
import rushlight.situation.Tapes;

/** The demo league as the program sees it: read, classified and assessed once. */
public final class DemoLeague {
    static final Path FOLDER = Path.of("..", "demo-data");

    private final List<Fault> warnings = new ArrayList<>();
    private final List<Log> logs = new ArrayList<>();
    private final List<LogFacts> facts = new ArrayList<>();
    private final Map<String, Assessment> assessments = new HashMap<>();

    private DemoLeague() {}

    static DemoLeague none() {
        return new DemoLeague();
    }

    /** Everybody read, classified and assessed: once, when it is first asked for. */
    public static DemoLeague assessed() {
        return Once.LEAGUE;
    }

    private static final class Once {
        static final DemoLeague LEAGUE = made();
    }

    private static DemoLeague made() {
        Ontology ontology = Ontology.packaged();
        Taxonomy taxonomy = Taxonomy.of(ontology);
        RepRules rules = RepRules.of(ontology, taxonomy);
        DemoLeague league = new DemoLeague();
        league.read(FilmLogReader.of(taxonomy));
        league.logs.forEach(log -> league.facts.add(new LogFacts(log, rules.factsOf(log))));
        Assessor assessor = Assessor.of(ontology, taxonomy, Situations.of(ontology, taxonomy));
        for (Tape tape : Tapes.of(league.facts)) {
            league.assessments.put(tape.prospect().name(), assessor.assess(tape));
        }
        return league;
    }

    Assessment of(String prospect) {
        return Optional.ofNullable(assessments.get(prospect)).orElseThrow();
    }

    /** Every log with its facts. */
    public List<LogFacts> facts() {
        return facts;
    }

    /** What was said of everybody. */
    public Collection<Assessment> assessments() {
        return assessments.values();
    }

    List<Fault> warnings() {
        return warnings;
    }

    /** How many reps of his were watched, by however many evaluators. */
    int repsOf(String prospect) {
        return (int) logs.stream()
                .filter(log -> log.prospect().name().equals(prospect))
                .flatMap(log -> log.readings().stream())
                .map(Reading::rep)
                .distinct()
                .count();
    }

    private void read(FilmLogReader reader) {
        for (Path file : files()) {
            ReadResult read = reader.read(file, FilmLogReader.Options.none());
            warnings.addAll(read.warnings());
            if (read instanceof ReadResult.Accepted accepted) {
                logs.addAll(accepted.logs());
            } else if (read instanceof ReadResult.Rejected rejected) {
                throw new IllegalStateException(file + ": " + rejected.faults());
            }
        }
    }

    private static List<Path> files() {
        try (Stream<Path> files = Files.list(FOLDER.resolve("logs"))) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
