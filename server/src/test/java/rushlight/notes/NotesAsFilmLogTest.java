package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.film.Reading;
import rushlight.film.Step;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.film.csv.RowsWriter;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;

/** Notes that were written as a film log and read again say of every rep what they said: nothing is lost, nothing comes in. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class NotesAsFilmLogTest {
    private static final Taxonomy TAXONOMY = DevelopmentSetTest.TAXONOMY;
    private static final NoteReader READER = DevelopmentSetTest.READER;
    private static final FilmLogReader LOGS = FilmLogReader.of(TAXONOMY);
    private static final List<String> PHASES = List.of("pass-rush", "run", "drop");
    private static final List<String> COLUMNS = List.of("help", "results", "faults", "alignment", "stance");
    private static final int DRAWS = 6;

    @Test
    void the_development_set_comes_back_as_it_was_read() throws IOException {
        for (Gold gold : Gold.development()) {
            Narration narration = NotesScore.narration(gold);
            Notes notes = READER.read(narration, gold.prospect());
            Map<String, String> phases = new HashMap<>();
            notes.reps()
                    .forEach(rep -> phases.put(
                            Integer.toString(rep.ordinal()), rep.phase().orElse("run")));
            var decided = new Decisions(Map.of(), phases, Map.of(), List.of(), Set.of(), Set.of());

            comesBack(gold.id(), READER.reviewed(narration, notes, decided, true));
        }
    }

    @Test
    void so_it_does_whatever_a_person_decided_on_it() throws IOException {
        Random random = new Random(47);
        for (Gold gold : Gold.development()) {
            Narration narration = NotesScore.narration(gold);
            Notes notes = READER.read(narration, gold.prospect());
            for (int draw = 0; draw < DRAWS; draw++) {
                Decisions decided = drawn(notes, random);

                comesBack(gold.id() + " " + decided, READER.reviewed(narration, notes, decided, random.nextBoolean()));
            }
        }
    }

    @Test
    void steps_stand_in_the_order_in_which_they_were_done() throws IOException {
        String notes = "[0:04] Wide 9, finishes with a rip, but before that a swipe. Sack.\n";
        Narration narration = Narrations.read("a.txt", notes.getBytes(StandardCharsets.UTF_8));

        List<Reading> read =
                imported("order", rows(READER.reviewed(narration, READER.read(narration), Decisions.NONE, true)));

        assertThat(read.get(0).exchange()).extracting(Step::concept).containsExactly("two-hand-swipe", "rip");
    }

    private static void comesBack(String what, List<ReviewedRep> reps) throws IOException {
        if (reps.isEmpty()) {
            return;
        }
        List<Reading> readings = imported(what, rows(reps));
        assertThat(readings).as(what).hasSameSizeAs(reps);
        for (int i = 0; i < reps.size(); i++) {
            ProposedRep rep = reps.get(i).rep();
            Reading reading = readings.get(i);
            String as = what + ", rep " + reading.rep().rep();
            List<Mention> done = rep.tags().stream()
                    .filter(tag -> tag.assertion() == Assertion.PERFORMED && tag.actor() != Actor.OTHER)
                    .toList();
            List<String> told = List.of(reading.one("note").orElse("").split("; ", -1));
            Set<String> charted = charted(reading);
            assertThat(reading.one("phase")).as(as).isEqualTo(rep.phase());
            assertThat(done.stream().map(Mention::concept)).as(as).containsAll(charted);
            assertThat(done.stream()
                            .filter(tag -> !charted.contains(tag.concept()))
                            .map(tag -> "said: " + TAXONOMY.label(tag.concept())))
                    .as(as)
                    .isSubsetOf(told);
            assertThat(rep.tags().stream()
                            .filter(tag -> !done.contains(tag))
                            .map(tag -> tag.assertion().slug() + ": " + TAXONOMY.label(tag.concept())))
                    .as(as)
                    .isSubsetOf(told);
            assertThat(told.stream().filter(line -> !line.isEmpty()).count())
                    .as(as)
                    .isLessThanOrEqualTo(rep.tags().size());
            steps(as, reading, done);
        }
    }

    /** Every step is one that was told, of the same man and with the same hand, and none stands more often than it was told. */
    private static void steps(String as, Reading reading, List<Mention> done) {
        List<String> told = new ArrayList<>(done.stream()
                .map(tag -> step(
                        tag.actor() == Actor.BLOCKER,
                        tag.concept(),
                        tag.actor() == Actor.BLOCKER
                                ? ""
                                : tag.hand()
                                        .filter(hand -> !hand.equals("both"))
                                        .orElse("")))
                .toList());
        for (Step step : reading.exchange()) {
            String own = step(
                    step.by() == Step.By.BLOCKER, step.concept(), step.hand().orElse(""));
            assertThat(told).as(as).contains(own);
            told.remove(own);
        }
    }

    private static String step(boolean blocker, String concept, String hand) {
        return (blocker ? "[" + concept + "]" : concept) + "@" + hand;
    }

    private static Set<String> charted(Reading reading) {
        return Stream.concat(
                        reading.exchange().stream().map(Step::concept),
                        COLUMNS.stream().flatMap(column -> reading.all(column).stream()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static List<List<String>> rows(List<ReviewedRep> reps) {
        return ProposedLog.of(TAXONOMY).rows(reps, new ProposedLog.Heading("Ari Vale", "Opener", "", "Dana"));
    }

    private static List<Reading> imported(String what, List<List<String>> rows) throws IOException {
        StringWriter csv = new StringWriter();
        RowsWriter.write(ProposedLog.HEADER, rows, csv);
        ReadResult read = LOGS.read(
                "notes.csv",
                new ByteArrayInputStream(csv.toString().getBytes(StandardCharsets.UTF_8)),
                FilmLogReader.Options.none());
        assertThat(read).as(what + "\n" + csv).isInstanceOf(ReadResult.Accepted.class);
        return ((ReadResult.Accepted) read).logs().get(0).readings();
    }

    /** What a person might decide: rejects, accepts, changes and adds here and there, splits and merges, and says every phase. */
    private static Decisions drawn(Notes notes, Random random) {
        List<String> terms = terms();
        Map<String, Boolean> chosen = new HashMap<>();
        Map<String, String> phases = new HashMap<>();
        Map<String, String> changed = new HashMap<>();
        List<Decisions.Added> added = new ArrayList<>();
        Set<String> splits = new TreeSet<>();
        Set<String> merges = new TreeSet<>();
        List<List<String>> keys = TagKeys.ofReps(notes);
        IntStream.range(0, keys.size()).forEach(i -> {
            int rep = i + 1;
            phases.put(Integer.toString(rep), PHASES.get(random.nextInt(PHASES.size())));
            for (String key : keys.get(i)) {
                String term = terms.get(random.nextInt(terms.size()));
                switch (random.nextInt(8)) {
                    case 0 -> chosen.put(key, false);
                    case 1 -> chosen.put(key, true);
                    case 2 -> {
                        chosen.put(key, true);
                        changed.put(key, term);
                    }
                    case 3 -> added.add(new Decisions.Added(term, random.nextBoolean() ? "some words" : "", rep, key));
                    case 4 -> {
                        splits.add(key);
                        phases.put(key, PHASES.get(random.nextInt(PHASES.size())));
                    }
                    default -> chosen.put(key, random.nextBoolean());
                }
            }
            if (!keys.get(i).isEmpty() && random.nextInt(6) == 0) {
                merges.add(keys.get(i).get(0));
            }
        });
        return new Decisions(chosen, phases, changed, added, splits, merges);
    }

    /** What the page offers: terms that some column of the log takes. */
    private static List<String> terms() {
        Set<String> classes = Stream.concat(
                        Stream.of(TAXONOMY.film().exchange()),
                        COLUMNS.stream().map(name -> TAXONOMY.film().named(name).orElseThrow()))
                .flatMap(column -> column.classes().stream())
                .collect(Collectors.toSet());
        return TAXONOMY.concepts().stream()
                .filter(concept -> concept.classes().stream().anyMatch(classes::contains))
                .map(Concept::slug)
                .toList();
    }
}
