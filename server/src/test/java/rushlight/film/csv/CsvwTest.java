package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.knowledge.Column;
import rushlight.knowledge.Rl;

/** The description of a film log by the W3C's "Metadata Vocabulary for Tabular Data" (CSVW). */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CsvwTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String CLOCK = "\\d{1,2}:[0-5]\\d";
    private static final String TIME = "((\\d+:)?\\d{1,2}:)?\\d+(\\.\\d+)?";

    @Test
    void describes_every_column_as_the_book_does() throws IOException {
        ArrayNode expected = JSON.createArrayNode();
        SmallLog.BOOK.film().all().forEach(column -> expected.add(described(column)));

        JsonNode columns = metadata().at("/tableSchema/columns");

        assertThat(columns.toPrettyString())
                .as("demo-data/log.csv-metadata.json, tableSchema/columns")
                .isEqualTo(expected.toPrettyString());
    }

    @Test
    void says_what_makes_a_row_unlike_every_other() throws IOException {
        assertThat(metadata().at("/tableSchema/primaryKey"))
                .extracting(JsonNode::asText)
                .containsExactly("prospect", "game", "rep", "evaluator");
        assertThat(metadata().at("/@context/0").asText()).isEqualTo("http://www.w3.org/ns/csvw");
    }

    @Test
    void holds_for_what_the_program_writes() throws IOException {
        Map<String, JsonNode> columns = StreamSupport.stream(
                        metadata().at("/tableSchema/columns").spliterator(), false)
                .collect(Collectors.toMap(column -> column.get("name").asText(), column -> column));
        for (long seed = 0; seed < 10; seed++) {
            StringBuilder text = new StringBuilder();
            FilmLogWriter.of(SmallLog.BOOK.film()).write(new RandomLogs(SmallLog.BOOK, seed).logs(), text);
            CSVFormat withHeader = CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get();
            for (CSVRecord row : withHeader.parse(new StringReader(text.toString()))) {
                row.toMap().forEach((name, cell) -> holds(Objects.requireNonNull(columns.get(name), name), cell));
            }
        }
    }

    private static void holds(JsonNode column, String cell) {
        String name = column.get("name").asText();
        if (cell.isEmpty()) {
            assertThat(column.path("required").asBoolean())
                    .as("%s is required", name)
                    .isFalse();
            return;
        }
        List<String> values = column.has("separator") ? List.of(cell.split(";", -1)) : List.of(cell);
        JsonNode type = column.get("datatype");
        String base = type.isTextual() ? type.asText() : type.get("base").asText();
        if (type.has("format")) {
            assertThat(values)
                    .as(name)
                    .allMatch(Pattern.compile(type.get("format").asText()).asMatchPredicate());
        }
        if (base.equals("nonNegativeInteger")) {
            assertThat(values)
                    .as(name)
                    .allMatch(value -> Integer.parseInt(value)
                                    >= type.path("minimum").asInt(0)
                            && Integer.parseInt(value) <= type.path("maximum").asInt(Integer.MAX_VALUE));
        }
    }

    private static ObjectNode described(Column column) {
        ObjectNode node = JSON.createObjectNode();
        node.put("name", column.name());
        node.put("titles", column.name());
        node.put("dc:description", column.meaning());
        if (!column.facet().isEmpty()) {
            node.put("propertyUrl", Rl.SCHEMA + column.facet());
        }
        node.set("datatype", datatype(column));
        if (column.list()) {
            node.put("separator", ";");
        }
        if (column.required()) {
            node.put("required", true);
        }
        return node;
    }

    private static JsonNode datatype(Column column) {
        return switch (column.kind()) {
            case TEXT, CONCEPT, EXCHANGE -> JSON.getNodeFactory().textNode("string");
            case DATE -> JSON.getNodeFactory().textNode("date");
            case CLOCK -> formatted(CLOCK);
            case TIME -> formatted(TIME);
            case WORDS -> formatted("(" + String.join("|", column.oneOf()) + ")");
            case INTEGER -> integer(column);
        };
    }

    private static JsonNode integer(Column column) {
        ObjectNode type = JSON.createObjectNode().put("base", "nonNegativeInteger");
        if (!column.oneOf().isEmpty()) {
            List<Integer> values =
                    column.oneOf().stream().map(Integer::valueOf).sorted().toList();
            type.put("minimum", values.get(0)).put("maximum", values.get(values.size() - 1));
        }
        return type;
    }

    private static JsonNode formatted(String pattern) {
        return JSON.createObjectNode().put("base", "string").put("format", pattern);
    }

    private static JsonNode metadata() throws IOException {
        String name = "/rushlight/demo/log.csv-metadata.json";
        try (InputStream in = Objects.requireNonNull(CsvwTest.class.getResourceAsStream(name), name)) {
            return JSON.readTree(in);
        }
    }
}
