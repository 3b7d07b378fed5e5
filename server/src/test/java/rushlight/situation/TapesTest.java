package rushlight.situation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.film.RepId;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TapesTest {
    private static final Prospect JORY = Prospect.named("jory-penwick", "Jory Penwick");
    private static final Game OPENER =
            new Game("z-opener", "Opener", Optional.of(LocalDate.of(2025, 9, 5)), "Port Ellery", "");
    private static final Game SECOND =
            new Game("a-second", "Second", Optional.of(LocalDate.of(2025, 9, 12)), "Harbor", "");
    private static final Game UNDATED = new Game("b-undated", "Undated", Optional.empty(), "", "");

    @Test
    void games_stand_in_the_order_they_were_played_and_undated_ones_last() {
        Tape tape = only(Tapes.of(List.of(
                log("ann", UNDATED, reading("ann", UNDATED, "u1", Map.of())),
                log("ann", SECOND, reading("ann", SECOND, "s1", Map.of()), reading("ann", SECOND, "s2", Map.of())),
                log("ann", OPENER, reading("ann", OPENER, "o1", Map.of())))));

        assertThat(tape.games())
                .containsExactly(
                        new TapedGame("z-opener", "Opener", OPENER.date(), "Port Ellery", bits(0)),
                        new TapedGame("a-second", "Second", SECOND.date(), "Harbor", bits(1, 2)),
                        new TapedGame("b-undated", "Undated", UNDATED.date(), "", bits(3)));
        assertThat(reps(tape)).containsExactly("o1", "s1", "s2", "u1");
    }

    @Test
    void of_two_readings_of_a_rep_the_one_believed_first_counts() {
        List<LogFacts> logs = List.of(
                log("Ann", OPENER, reading("Ann", OPENER, "r1", Map.of("snap", "1", "over", "left"))),
                log(
                        "Bea",
                        OPENER,
                        reading("Bea", OPENER, "r0", Map.of("snap", "0", "over", "right")),
                        reading("Bea", OPENER, "r1", Map.of("snap", "1", "over", "right"))));

        Tape annFirst = only(Tapes.of(logs));
        Tape beaFirst = only(Tapes.of(logs, List.of("bea")));

        assertThat(reps(annFirst)).containsExactly("r0", "r1");
        assertThat(annFirst.rows("over")).isEqualTo(Map.of("left", bits(1), "right", bits(0)));
        assertThat(beaFirst.rows("over")).isEqualTo(Map.of("right", bits(0, 1)));
    }

    @Test
    void two_readings_that_contradict_each_other_about_the_clock_are_two_reps() {
        Tape tape = only(Tapes.of(List.of(
                log("Ann", OPENER, reading("Ann", OPENER, "r1", Map.of("quarter", "1", "clock", "9:30"))),
                log("Bea", OPENER, reading("Bea", OPENER, "r1", Map.of("quarter", "1", "clock", "14:02"))),
                log("Cal", OPENER, reading("Cal", OPENER, "r1", Map.of("quarter", "1"))))));

        assertThat(IntStream.range(0, tape.size())
                        .mapToObj(i -> tape.sighting(i).clock().orElse("none")))
                .containsExactly("14:02", "9:30");
    }

    @Test
    void what_fits_is_found_rep_by_rep() {
        Tape tape = only(Tapes.of(List.of(log(
                "ann",
                OPENER,
                reading("ann", OPENER, "r1", Map.of("over", "left")),
                reading("ann", OPENER, "r2", Map.of()),
                reading("ann", OPENER, "r3", Map.of("over", "left"))))));

        assertThat(tape.fitting(Situation.has("over", "left"))).isEqualTo(bits(0, 2));
        assertThat(tape.fitting(Situation.not(Situation.has("over", "left")))).isEqualTo(bits(1));
    }

    @Test
    void each_prospect_has_a_tape_of_his_own() {
        Reading his = reading("ann", OPENER, "r1", Map.of());
        Log other = new Log(
                "ann", Prospect.named("abel-orr", "Abel Orr"), OPENER, Set.of(), List.of(), new Log.Source("", ""));

        assertThat(Tapes.of(List.of(log("ann", OPENER, his), new LogFacts(other, List.of()))))
                .extracting(tape -> tape.prospect().name() + " " + tape.size())
                .containsExactly("Abel Orr 0", "Jory Penwick 1");
    }

    private static Tape only(List<Tape> tapes) {
        assertThat(tapes).hasSize(1);
        return tapes.get(0);
    }

    private static List<String> reps(Tape tape) {
        return IntStream.range(0, tape.size())
                .mapToObj(i -> tape.sighting(i).rep())
                .toList();
    }

    private static BitSet bits(int... places) {
        BitSet bits = new BitSet();
        IntStream.of(places).forEach(bits::set);
        return bits;
    }

    private static LogFacts log(String evaluator, Game game, Reading... readings) {
        Log log = new Log(evaluator, JORY, game, Set.of(), List.of(readings), new Log.Source("log.csv", ""));
        return new LogFacts(log, log.readings().stream().map(TapesTest::facts).toList());
    }

    private static Reading reading(String evaluator, Game game, String rep, Map<String, String> cells) {
        Map<String, List<String>> tags =
                cells.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, e -> List.of(e.getValue())));
        return new Reading(new RepId(JORY.id(), game.id(), rep), evaluator, tags, List.of());
    }

    private static RepFacts facts(Reading reading) {
        Map<String, Set<String>> tagged =
                reading.one("over").map(over -> Map.of("over", Set.of(over))).orElse(Map.of());
        return new RepFacts(reading.rep(), reading.evaluator(), tagged, tagged, Map.of());
    }
}
