package rushlight.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class LeagueGeneratorTest {
    private static final Path LOGS = Path.of("logs");

    @Test
    void the_logs_in_the_folder_are_what_the_generator_writes() throws IOException {
        for (Map.Entry<String, String> log : new LeagueGenerator().logs().entrySet()) {
            assertThat(LOGS.resolve(log.getKey())).content().isEqualTo(log.getValue());
        }
    }

    @Test
    void two_logs_were_written_by_hand() throws IOException {
        assertThat(new LeagueGenerator().logs()).doesNotContainKeys("tavish-mordell.csv", "keverne-toll.csv");
        try (Stream<Path> files = Files.list(LOGS)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .contains("tavish-mordell.csv", "keverne-toll.csv")
                    .hasSize(Players.ALL.size() + 2);
        }
    }

    @Test
    void a_deck_deals_what_was_put_in_it_whatever_the_seed() {
        for (int seed = 0; seed < 20; seed++) {
            Deck deck = Deck.of("late 3, with 7", new Random(seed));
            assertThat(Stream.generate(deck::deal).limit(10).filter("late"::equals))
                    .hasSize(3);
        }
    }

    @Test
    void every_school_meets_every_other_once_and_both_name_the_same_day() {
        List<League.Game> season = League.season("Calder Mill");
        assertThat(season).hasSize(9).extracting(League.Game::opponent).doesNotHaveDuplicates();
        for (League.Game game : season) {
            assertThat(League.season(game.opponent()))
                    .filteredOn(other -> other.opponent().equals("Calder Mill"))
                    .singleElement()
                    .satisfies(other -> assertThat(other.date()).isEqualTo(game.date()))
                    .satisfies(other -> assertThat(other.name().contains(" at "))
                            .isNotEqualTo(game.name().contains(" at ")));
        }
    }
}
