package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three games of the invented league, spoken over: what the notes propose is what the logs of those games hold. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class DemoNotesTest {
    private static final List<String> COLUMNS =
            List.of("phase", "alignment", "stance", "exchange", "faults", "results");

    @ParameterizedTest
    @CsvSource({
        "lark-hollow-at-harrow-vale, bram-aldersey, Bram Aldersey, Lark Hollow at Harrow Vale, 11",
        "lark-hollow-v-thornmere, bram-aldersey, Bram Aldersey, Lark Hollow v Thornmere, 11",
        "merrow-bay-at-calder-mill, teo-maravale, Teo Maravale, Merrow Bay at Calder Mill, 20"
    })
    void a_narrated_game_proposes_the_rows_of_its_log(String notes, String log, String prospect, String game, int reps)
            throws IOException {
        Notes read = DevelopmentSetTest.READER.read(
                Narrations.read(notes + ".vtt", bytes("notes/" + notes + ".vtt")), prospect);
        List<List<String>> rows =
                ProposedLog.of(DevelopmentSetTest.TAXONOMY).rows(read, new ProposedLog.Heading(prospect, game, "", ""));
        List<Map<String, Object>> proposed = new ArrayList<>();
        rows.forEach(row -> proposed.add(cells(column -> row.get(ProposedLog.HEADER.indexOf(column)))));
        List<Map<String, Object>> charted = new ArrayList<>();
        try (var in = new InputStreamReader(stream("logs/" + log + ".csv"), StandardCharsets.UTF_8)) {
            for (CSVRecord record : CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(in)) {
                if (record.get("game").equals(game)) {
                    charted.add(cells(record::get));
                }
            }
        }
        assertThat(charted).hasSize(reps);
        assertThat(proposed).containsExactlyElementsOf(charted);
    }

    private static Map<String, Object> cells(java.util.function.UnaryOperator<String> cell) {
        Map<String, Object> found = new HashMap<>();
        for (String column : COLUMNS) {
            String value = cell.apply(column);
            found.put(column, value.contains(">") ? value : new TreeSet<>(Arrays.asList(value.split(";", -1))));
        }
        return found;
    }

    private static byte[] bytes(String file) throws IOException {
        try (InputStream in = stream(file)) {
            return in.readAllBytes();
        }
    }

    private static InputStream stream(String file) {
        return Objects.requireNonNull(DemoNotesTest.class.getResourceAsStream("/rushlight/demo/" + file));
    }
}
