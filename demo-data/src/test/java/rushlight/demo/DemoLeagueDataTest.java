package rushlight.demo;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DemoLeagueDataTest {
    private static final Set<String> VERDICTS = Set.of("not-enough-tape", "watch", "likely", "confirmed", "cleared");
    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private static List<Map<String, String>> reps = List.of();

    @BeforeAll
    static void readTheLogs() throws IOException {
        reps = DemoFiles.logs();
    }

    @Test
    void the_league_is_large_enough_to_show_something() {
        assertThat(reps.stream().map(DemoLeagueDataTest::rep).distinct()).hasSizeGreaterThan(2600);
        assertThat(prospects()).hasSizeGreaterThanOrEqualTo(15);
    }

    @Test
    void prospects_are_the_men_of_the_logs() {
        assertThat(prospects()).isEqualTo(names("prospects.csv", "name")).isEqualTo(names("intended.csv", "prospect"));
    }

    @Test
    void each_man_has_at_least_three_things_to_show() {
        Map<String, Long> shown = DemoFiles.rows(Path.of("intended.csv")).stream()
                .collect(groupingBy(row -> cell(row, "prospect"), counting()));
        assertThat(shown.values()).allSatisfy(count -> assertThat(count).isGreaterThanOrEqualTo(3));
        assertThat(DemoFiles.rows(Path.of("intended.csv")))
                .filteredOn(row -> !cell(row, "finding").equals("primary"))
                .allSatisfy(
                        row -> assertThat(cell(row, "verdict").split("\\|", -1)).isSubsetOf(VERDICTS));
    }

    @Test
    void every_man_has_a_paragraph_in_the_readme() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        assertThat(prospects()).allSatisfy(name -> assertThat(readme).contains("**" + name + "**"));
    }

    @Test
    void a_rep_is_read_once_by_one_evaluator() {
        assertThat(reps).extracting(row -> rep(row) + cell(row, "evaluator")).doesNotHaveDuplicates();
    }

    @Test
    void clips_snaps_and_the_clock_run_forward_through_a_game() {
        Map<String, double[]> before = new HashMap<>();
        for (Map<String, String> row : reps) {
            double start = seconds(cell(row, "start"));
            double end = seconds(cell(row, "end"));
            double gone = Integer.parseInt(cell(row, "quarter")) * 900.0 - seconds(cell(row, "clock"));
            double[] now = {start, Integer.parseInt(cell(row, "snap")), gone};
            double[] last = before.put(game(row), new double[] {end, now[1], gone});
            assertThat(end).as(rep(row)).isGreaterThan(start);
            for (int i = 0; last != null && i < now.length; i++) {
                assertThat(now[i]).as(rep(row)).isGreaterThanOrEqualTo(last[i]);
            }
        }
    }

    @Test
    void results_of_a_rep_do_not_contradict_each_other() {
        assertThat(reps).allSatisfy(row -> {
            Set<String> results = Set.of(cell(row, "results").split(";", -1));
            assertThat(results.containsAll(Set.of("edge-held", "edge-lost-outside")))
                    .isFalse();
            assertThat(results.contains("no-pressure") && (results.contains("sack") || results.contains("hurry")))
                    .isFalse();
            assertThat(cell(row, "how_won").isEmpty() || cell(row, "result").equals("won"))
                    .isTrue();
        });
    }

    @Test
    void a_duty_is_stated_or_inferred_and_none_is_unknown() {
        assertThat(reps)
                .allSatisfy(row -> assertThat(cell(row, "assignment").isEmpty())
                        .isEqualTo(cell(row, "assignment_source").equals("unknown")));
    }

    @Test
    void steps_are_written_as_slugs_and_the_blockers_stand_in_brackets() {
        assertThat(reps).allSatisfy(row -> {
            for (String step : cell(row, "exchange").split(" > ", -1)) {
                assertThat(step)
                        .matches(text -> text.isEmpty()
                                || SLUG.matcher(text).matches()
                                || SLUG.matcher(text.replaceAll("^\\[|]$", "")).matches());
            }
        });
    }

    @Test
    void notes_are_varied() {
        Map<String, Long> notes = reps.stream()
                .map(row -> cell(row, "note"))
                .filter(note -> !note.isEmpty())
                .collect(groupingBy(note -> note, counting()));
        assertThat(notes).hasSizeGreaterThan(500);
        assertThat(notes.values()).allSatisfy(count -> assertThat(count).isLessThanOrEqualTo(9));
        assertThat(notes.keySet()).anyMatch(note -> note.contains("\"")).anyMatch(note -> note.contains(","));
    }

    @Test
    void the_one_clip_is_small_and_a_game_refers_to_it() {
        Path clip = Path.of("clips", "calder-mill-at-harrow-vale.webm");
        assertThat(clip)
                .isRegularFile()
                .satisfies(file -> assertThat(Files.size(file)).isLessThan(60 * 1024));
        assertThat(reps).anyMatch(row -> cell(row, "video").equals("calder-mill-at-harrow-vale.webm"));
    }

    private static Set<String> prospects() {
        return reps.stream().map(row -> cell(row, "prospect")).collect(toSet());
    }

    private static Set<String> names(String file, String column) {
        return DemoFiles.rows(Path.of(file)).stream()
                .map(row -> cell(row, column))
                .collect(toSet());
    }

    private static String game(Map<String, String> row) {
        return cell(row, "prospect") + ", " + cell(row, "game") + ", " + cell(row, "evaluator");
    }

    private static String rep(Map<String, String> row) {
        return cell(row, "prospect") + ", " + cell(row, "game") + ", " + cell(row, "rep");
    }

    private static String cell(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }

    private static double seconds(String time) {
        double seconds = 0;
        for (String part : time.split(":", -1)) {
            seconds = seconds * 60 + Double.parseDouble(part);
        }
        return seconds;
    }
}
