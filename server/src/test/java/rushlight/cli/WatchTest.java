package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;
import rushlight.archive.PlayedStore;
import rushlight.archive.SavedQuestions;

/** While film is served, what others change is fetched; what goes wrong is told once. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class WatchTest {
    private static final Duration OFTEN = Duration.ofMillis(50);
    private static final Duration LONG = Duration.ofMinutes(2);

    @TempDir
    private Path home;

    @AutoClose
    private final PlayedStore store = PlayedStore.start();

    @Test
    void what_another_folder_changes_comes_by_itself() {
        try (Archive mine = open("mine");
                Archive his = open("his");
                Watch watch = new Watch(new PrintWriter(new StringWriter()))) {
            watch.follow(mine.following(), OFTEN);

            SavedQuestions.of(his).save("Power", "bull rush", "");

            assertTimeoutPreemptively(LONG, () -> {
                while (SavedQuestions.of(mine).all().isEmpty()) {
                    Thread.onSpinWait();
                }
            });
        }
    }

    @Test
    void a_store_that_was_emptied_is_told_once_and_another_trouble_after_it() throws InterruptedException {
        BlockingQueue<String> said = new LinkedBlockingQueue<>();
        try (Archive mine = open("mine");
                Watch watch = new Watch(new Telling(said))) {
            watch.follow(mine.following(), OFTEN);
            store.loseEverything();
            assertThat(said.take()).contains("holds nothing any more");
            store.close();

            String then = said.take();
            while (!then.contains("cannot be reached")) {
                assertThat(then).doesNotContain("holds nothing any more");
                then = said.take();
            }
        }
    }

    private Archive open(String folder) {
        return Archive.open(home.resolve(folder), store.place());
    }

    /** Hands out every line that is said. */
    private static final class Telling extends PrintWriter {
        private final BlockingQueue<String> lines;

        Telling(BlockingQueue<String> lines) {
            super(new StringWriter());
            this.lines = lines;
        }

        @Override
        public void println(String line) {
            lines.add(line);
        }
    }
}
