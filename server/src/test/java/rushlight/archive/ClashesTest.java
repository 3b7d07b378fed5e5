package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepId;

/** What several files say against each other is told, and then nothing is kept of any of them. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ClashesTest {
    @TempDir
    Path folder = Path.of("");

    @Test
    void two_files_with_one_rep_of_one_log_are_refused() {
        try (Archive archive = Archive.open(folder)) {
            List<Log> logs = List.of(log("Jo Ann", "a.csv", "r1", "r2"), log("Jo Ann", "b.csv", "R1", "r3"));
            assertThat(archive.put(logs, false))
                    .isEqualTo(new PutResult.Refused(List.of("More than one file has M. Ordway's reading of Jo Ann,"
                            + " Opener, rep R1. Keep each rep in one file.")));
            assertThat(archive.logs()).isEmpty();
        }
    }

    @Test
    void two_files_with_other_reps_of_one_log_are_kept_together() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(List.of(log("Jo Ann", "a.csv", "r1"), log("Jo Ann", "b.csv", "r2")), false);
            assertThat(archive.logs())
                    .singleElement()
                    .satisfies(log -> assertThat(log.readings()).hasSize(2));
        }
    }

    @Test
    void two_spellings_with_one_address_are_refused() {
        try (Archive archive = Archive.open(folder)) {
            List<Log> logs = List.of(log("Jo Ann", "a.csv", "r1"), log("Jo-Ann", "b.csv", "r2"));
            assertThat(archive.put(logs, false))
                    .isEqualTo(new PutResult.Refused(List.of("The files write the prospect \"Jo Ann\" and \"Jo-Ann\","
                            + " which have one address, jo-ann. Write one of them everywhere.")));
        }
    }

    @Test
    void nothing_is_kept_of_prospects_whose_logs_are_refused() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(List.of(log("Jo Ann", "a.csv", "r1")), false);
            PutResult refused = archive.put(
                    List.of(log("Jo-Ann", "b.csv", "r1")), List.of(Prospect.named("moe-test", "Moe Test")), false);
            assertThat(refused).isInstanceOf(PutResult.Refused.class);
            assertThat(archive.prospects()).extracting(Prospect::name).containsExactly("Jo Ann");
        }
    }

    @Test
    void a_list_of_prospects_may_give_a_known_man_another_name() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(List.of(log("Jo Ann", "a.csv", "r1")), false);
            archive.put(List.of(log("Jo-Ann", "b.csv", "r1")), List.of(Prospect.named("jo-ann", "Jo-Ann")), false);
            assertThat(archive.assess())
                    .singleElement()
                    .satisfies(one -> assertThat(one.prospect().name()).isEqualTo("Jo-Ann"));
        }
    }

    private static Log log(String name, String file, String... reps) {
        Game game = new Game("opener", "Opener", Optional.empty(), "", "");
        List<Reading> readings = List.of(reps).stream()
                .map(rep -> new Reading(
                        new RepId("jo-ann", "opener", rep), "M. Ordway", Map.of("phase", List.of("run")), List.of()))
                .toList();
        return new Log(
                "M. Ordway",
                Prospect.named("jo-ann", name),
                game,
                Set.of("faults"),
                readings,
                new Log.Source(file, "0".repeat(64)));
    }
}
