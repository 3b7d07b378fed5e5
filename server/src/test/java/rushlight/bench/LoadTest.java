package rushlight.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;
import rushlight.archive.DemoLeague;

/** A staff of eight tags, imports and asks at the same time; nobody's work gets lost under another's. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LoadTest {
    @Test
    void nothing_that_was_acknowledged_is_lost_and_nobody_is_turned_away(@TempDir Path folder) throws Exception {
        try (Archive archive = Archive.open(folder)) {
            DemoLeague.into(archive);

            Load.Result result = new Load(archive, Duration.ofMillis(20)).run(8, Duration.ofSeconds(5));

            assertThat(result.errors()).isEmpty();
            assertThat(result.lost()).isEmpty();
            assertThat(Load.Work.values())
                    .allSatisfy(work ->
                            assertThat(result.done(work)).as(work.name()).isPositive());
        }
    }
}
