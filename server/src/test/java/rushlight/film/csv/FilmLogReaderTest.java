package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FilmLogReaderTest {
    private static final Taxonomy BOOK = Taxonomy.of(Ontology.packaged());
    private static final ReadResult TWO_GAMES = read("two-games.csv");

    @Test
    void makes_one_log_of_each_evaluator_prospect_and_game() {
        List<Log> logs = ((ReadResult.Accepted) TWO_GAMES).logs();

        assertThat(logs)
                .extracting(Log::game)
                .containsExactly(
                        new Game(
                                "mill-night-2025-10-03",
                                "Mill Night",
                                Optional.of(LocalDate.of(2025, 10, 3)),
                                "Castor Bay",
                                "college"),
                        new Game(
                                "quarry-game-2025-10-10",
                                "Quarry Game",
                                Optional.of(LocalDate.of(2025, 10, 10)),
                                "Old Ferris",
                                "college"));
        assertThat(logs).extracting(Log::evaluator).containsOnly("north-room");
        assertThat(logs).extracting(Log::prospect).containsOnly(Prospect.named("oren-halloway", "Oren Halloway"));
        assertThat(logs)
                .extracting(Log::charted)
                .containsOnly(Set.of("direction", "help", "faults", "chances", "results"));
        assertThat(logs.get(0).source().file()).isEqualTo("two-games.csv");
        assertThat(logs.get(0).source().sha256()).matches("[0-9a-f]{64}");
    }

    @Test
    void keeps_slugs_whatever_label_was_written() {
        assertThat(reading("a2"))
                .isEqualTo(new Reading(
                        new RepId("oren-halloway", "mill-night-2025-10-03", "a2"),
                        "north-room",
                        Map.ofEntries(
                                tag("quarter", "1"),
                                tag("clock", "9:05"),
                                tag("down", "2"),
                                tag("distance", "7"),
                                tag("snap", "12"),
                                tag("video", "mill.webm"),
                                tag("start", "0:40"),
                                tag("end", "0:47"),
                                tag("phase", "pass-rush"),
                                tag("play", "dropback"),
                                tag("over", "right"),
                                tag("alignment", "technique-5"),
                                tag("stance", "two-point-stance"),
                                tag("surface", "open-side"),
                                tag("gap", "outside"),
                                tag("hash", "left-hash"),
                                tag("get_off", "first"),
                                tag("assignment", "free-rush-assignment"),
                                tag("assignment_source", "stated"),
                                tag("blocker", "right-tackle"),
                                tag("second_move_time", "yes"),
                                tag("hand_cleared", "yes"),
                                tag("hip_cleared", "yes"),
                                tag("how_won", "counter"),
                                tag("movement", "no"),
                                tag("first_contact", "won"),
                                tag("chances", "opp-finish"),
                                tag("results", "sack"),
                                tag("result", "won"),
                                tag("confidence", "high")),
                        List.of(
                                new Step(Step.By.HIM, "bull-rush", Optional.empty()),
                                new Step(Step.By.BLOCKER, "anchor-hop", Optional.empty()),
                                new Step(Step.By.HIM, "push-pull", Optional.of("inside")))));
    }

    @Test
    void keeps_the_order_of_a_list() {
        assertThat(reading("b1").all("direction")).containsExactly("run-away", "cutback-to-him");
        assertThat(reading("a3").all("not_seen")).containsExactly("feet", "pads");
    }

    @Test
    void writes_times_in_one_form() {
        assertThat(reading("a3").one("start")).contains("1:15");
        assertThat(reading("a3").one("end")).contains("1:22.25");
        assertThat(reading("b1").one("start")).contains("1:02:03.5");
    }

    @Test
    void knows_that_nobody_knows_a_duty_that_is_not_given() {
        assertThat(reading("b2").one("assignment_source")).contains("unknown");
    }

    private static Map.Entry<String, List<String>> tag(String column, String value) {
        return Map.entry(column, List.of(value));
    }

    private static Reading reading(String rep) {
        return ((ReadResult.Accepted) TWO_GAMES)
                .logs().stream()
                        .flatMap(log -> log.readings().stream())
                        .filter(reading -> reading.rep().rep().equals(rep))
                        .findFirst()
                        .orElseThrow();
    }

    private static ReadResult read(String file) {
        InputStream in =
                Objects.requireNonNull(FilmLogReaderTest.class.getResourceAsStream("/rushlight/film/" + file), file);
        return FilmLogReader.of(BOOK).read(file, in, FilmLogReader.Options.none());
    }
}
