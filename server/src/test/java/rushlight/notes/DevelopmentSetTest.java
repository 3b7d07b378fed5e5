package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.web.Json;
import rushlight.web.NotesAnswer;

/** The forty annotated narrations on which the reader is tuned; what is measured is defined in {@link Score}. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class DevelopmentSetTest {
    static final Taxonomy TAXONOMY = Taxonomy.of(Ontology.packaged());
    static final NoteReader READER = NoteReader.of(TAXONOMY);
    private static final Score SCORE = Score.strict();

    private static Narration narration(Gold gold) {
        return Narrations.read(gold.id() + "." + gold.format(), gold.raw().getBytes(StandardCharsets.UTF_8));
    }

    @BeforeAll
    static void read() {
        Gold.development().forEach(gold -> SCORE.add(gold, READER.read(narration(gold), gold.prospect())));
    }

    @Test
    void the_readers_give_the_words_of_every_file() {
        assertThat(Gold.development())
                .allSatisfy(gold ->
                        assertThat(narration(gold).text()).isEqualTo(gold.text().stripTrailing()));
    }

    @Test
    void concepts_are_found_and_few_are_false(TestReporter report) {
        report.publishEntry("development set", SCORE.toString());
        assertThat(SCORE.concepts.precision()).isGreaterThanOrEqualTo(0.95);
        assertThat(SCORE.concepts.recall()).isGreaterThanOrEqualTo(0.94);
    }

    @Test
    void what_was_denied_wished_or_doubted_is_hardly_ever_taken_for_done() {
        assertThat(SCORE.assertionAccuracy()).isGreaterThanOrEqualTo(0.96);
        assertThat(SCORE.inverted).isLessThanOrEqualTo(3);
    }

    @Test
    void reps_begin_where_they_do_and_no_replay_opens_one() {
        assertThat(SCORE.repStarts.f1()).isGreaterThanOrEqualTo(0.95);
        assertThat(SCORE.replaysThatOpened).isZero();
        assertThat(SCORE.exactCounts).isGreaterThanOrEqualTo(37);
        assertThat(SCORE.windowDiff()).isLessThanOrEqualTo(0.05);
    }

    @Test
    void the_tags_of_a_rep_are_mostly_what_a_person_would_keep() {
        assertThat(SCORE.tags.f1()).isGreaterThanOrEqualTo(0.88);
        assertThat(SCORE.statements.f1()).isGreaterThanOrEqualTo(0.85);
    }

    @Test
    void the_same_notes_read_the_same() {
        NoteReader other = NoteReader.of(TAXONOMY);
        for (Gold gold : Gold.development()) {
            String once = Json.text(NotesAnswer.of(READER.read(narration(gold), gold.prospect())));
            assertThat(Json.text(NotesAnswer.of(other.read(narration(gold), gold.prospect()))))
                    .isEqualTo(once);
        }
    }

    /** Ten narrations by another hand; what they say of the reader is in the README beside them. */
    @Test
    void the_second_set_is_read_as_well_as_it_was(TestReporter report) {
        Score second = new Score(TAXONOMY::isA);
        Gold.of(Objects.requireNonNull(DevelopmentSetTest.class.getResourceAsStream("/notes/second-set.jsonl")))
                .forEach(gold -> second.add(gold, READER.read(narration(gold), gold.prospect())));
        report.publishEntry("second set", second.toString());
        assertThat(second.concepts.precision()).isGreaterThanOrEqualTo(0.90);
        assertThat(second.concepts.recall()).isGreaterThanOrEqualTo(0.82);
        assertThat(second.inverted).isLessThanOrEqualTo(second.denied / 10);
        assertThat(second.replaysThatOpened).isZero();
        assertThat(second.repStarts.f1()).isGreaterThanOrEqualTo(0.93);
        assertThat(second.tags.f1()).isGreaterThanOrEqualTo(0.72);
    }

    /** Scores a file of other narrations, where one is named: it is read once, and nothing is asked of it. */
    @Test
    void another_set_is_scored_where_one_is_named(TestReporter report) throws Exception {
        String file = System.getenv().getOrDefault("NARRATIONS", "");
        if (!file.isEmpty()) {
            List<Gold> all = Gold.of(Files.newInputStream(Path.of(file)));
            Score narrower = new Score(TAXONOMY::isA);
            all.forEach(gold -> narrower.add(gold, READER.read(narration(gold), gold.prospect())));
            report.publishEntry(file, narrower.toString());
            assertThat(narrower.narrations).isEqualTo(all.size());
        }
    }
}
