package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.film.Projection;
import rushlight.store.KeptProjections.Kept;

/** Projections are kept version by version, for each evaluator his own, and stay when the folder is opened again. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ProjectionsTest {
    @TempDir
    private Path folder;

    @Test
    void every_version_stays_and_the_newest_stands() {
        try (Archive archive = Archive.open(folder)) {
            Projections kept = Projections.of(archive);
            long film = archive.store().revision();

            assertThat(kept.keep(said("Kim Orr", "third"), 0).done()).isTrue();
            assertThat(kept.keep(said("Kim Orr", "second"), 1).done()).isTrue();
            assertThat(kept.keep(said("Lena Fisk", "fifth"), 0).done()).isTrue();
            assertThat(kept.keep(new Projection("other", "Kim Orr", "", "now", "", "", "", "", "", ""), 0)
                            .done())
                    .isTrue();

            assertThat(archive.store().revision()).isEqualTo(film);
            assertThat(kept.revision()).isEqualTo(4);
        }
        try (Archive archive = Archive.open(folder)) {
            Projections kept = Projections.of(archive);
            assertThat(kept.of("he"))
                    .extracting(Kept::projection)
                    .containsExactly(said("Kim Orr", "second"), said("Lena Fisk", "fifth"));
            assertThat(tiers(kept.history("he", "kim-orr"))).containsExactly("second", "third");
            assertThat(kept.history("he", "nobody")).isEmpty();
        }
    }

    @Test
    void a_change_of_an_old_version_is_not_made_and_gives_the_newest() {
        try (Archive archive = Archive.open(folder)) {
            Projections kept = Projections.of(archive);
            kept.keep(said("Kim Orr", "third"), 0);

            Projections.Result stale = kept.keep(said("Kim Orr", "first"), 0);
            assertThat(stale.done()).isFalse();
            assertThat(stale.now().orElseThrow().projection().tier()).isEqualTo("third");
            assertThat(kept.keep(said("Kim Orr", "first"), 7).done()).isFalse();
            assertThat(kept.takeBack("he", "kim-orr", 2).done()).isFalse();
            assertThat(tiers(kept.of("he"))).containsExactly("third");
        }
    }

    @Test
    void what_is_taken_back_stays_in_its_history_and_can_stand_again() {
        try (Archive archive = Archive.open(folder)) {
            Projections kept = Projections.of(archive);
            kept.keep(said("Kim Orr", "third"), 0);

            assertThat(kept.takeBack("he", "kim-orr", 1).now().orElseThrow().takenBack())
                    .isTrue();
            assertThat(kept.of("he")).isEmpty();
            assertThat(kept.takeBack("he", "kim-orr", 2).done()).isFalse();

            kept.keep(said("Kim Orr", "third"), 2);
            assertThat(tiers(kept.of("he"))).containsExactly("third");
            assertThat(kept.history("he", "kim-orr"))
                    .extracting(Kept::takenBack)
                    .containsExactly(false, true, false);
        }
    }

    private static List<String> tiers(List<Kept> kept) {
        return kept.stream().map(one -> one.projection().tier()).toList();
    }

    private static Projection said(String evaluator, String tier) {
        return new Projection("he", evaluator, "big-end", "now", "high", "low", "knee", "All of it.", "rounds", tier);
    }
}
