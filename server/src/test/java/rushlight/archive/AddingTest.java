package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
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

/** A second half of a game comes in a file of its own; what the first file said must stay as it was meant. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AddingTest {
    @Test
    void readings_the_new_file_does_not_name_stay_and_those_it_names_are_replaced() {
        Log both = Adding.to(
                log(Set.of("faults"), reading("r1", "first half"), reading("r2", "first half")),
                log(Set.of("faults"), reading("r2", "looked again"), reading("r3", "second half")));

        assertThat(both.readings())
                .extracting(r -> r.rep().rep() + ": " + r.one("note").orElse(""))
                .containsExactly("r1: first half", "r2: looked again", "r3: second half");
    }

    @Test
    void readings_of_both_files_stand_in_the_order_of_the_game() {
        Log both = Adding.to(
                log(Set.of(), snap("r1", "10"), snap("r3", "30")), log(Set.of(), snap("r2", "20"), snap("r4", "40")));

        assertThat(both.readings()).extracting(r -> r.rep().rep()).containsExactly("r1", "r2", "r3", "r4");
    }

    @Test
    void a_column_that_only_one_file_charted_is_not_seen_on_the_other_files_reps() {
        Log both = Adding.to(
                log(Set.of("faults", "results"), reading("r1", "")), log(Set.of("results", "help"), reading("r2", "")));

        assertThat(both.charted()).containsExactlyInAnyOrder("faults", "results", "help");
        assertThat(both.readings().get(0).all("not_seen")).containsExactly("help");
        assertThat(both.readings().get(1).all("not_seen")).containsExactly("faults");
    }

    private static Log log(Set<String> charted, Reading... readings) {
        return new Log(
                "First Eyes",
                Prospect.named("jory-penwick", "Jory Penwick"),
                new Game("opener", "Opener", Optional.empty(), "", ""),
                charted,
                Arrays.asList(readings),
                new Log.Source("opener.csv", "00"));
    }

    private static Reading snap(String rep, String snap) {
        return new Reading(
                new RepId("jory-penwick", "opener", rep), "First Eyes", Map.of("snap", List.of(snap)), List.of());
    }

    private static Reading reading(String rep, String note) {
        Map<String, List<String>> tags = note.isEmpty()
                ? Map.of("phase", List.of("run"))
                : Map.of("phase", List.of("run"), "note", List.of(note));
        return new Reading(new RepId("jory-penwick", "opener", rep), "First Eyes", tags, List.of());
    }
}
