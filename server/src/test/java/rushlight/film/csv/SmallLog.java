package rushlight.film.csv;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rushlight.knowledge.Column;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** A film log of a few rows, each a plain rep with some cells changed. */
final class SmallLog {
    static final Taxonomy BOOK = Taxonomy.of(Ontology.packaged());
    static final List<String> HEADER =
            BOOK.film().all().stream().map(Column::name).toList();

    private static final FilmLogReader READER = FilmLogReader.of(BOOK);

    private final List<String> lines = new ArrayList<>();

    private SmallLog() {
        lines.add(String.join(",", HEADER));
    }

    /** A log of one row; cells are given as column, value, column, value. */
    static SmallLog row(String... cells) {
        return new SmallLog().and(cells);
    }

    SmallLog and(String... cells) {
        Map<String, String> row = new LinkedHashMap<>();
        HEADER.forEach(column -> row.put(column, ""));
        row.put("rep", "r" + lines.size());
        row.put("prospect", "Oren Halloway");
        row.put("game", "Mill Night");
        row.put("phase", "pass-rush");
        for (int i = 0; i < cells.length; i += 2) {
            if (row.put(cells[i], cells[i + 1]) == null) {
                throw new IllegalArgumentException("no column " + cells[i]);
            }
        }
        lines.add(row.values().stream().map(SmallLog::quoted).collect(Collectors.joining(",")));
        return this;
    }

    /** A row as it stands. */
    SmallLog line(String line) {
        lines.add(line);
        return this;
    }

    ReadResult read() {
        return read(FilmLogReader.Options.none());
    }

    ReadResult read(FilmLogReader.Options options) {
        return read(text(), options);
    }

    /** The file. */
    String text() {
        return String.join("\r\n", lines);
    }

    static ReadResult read(String text) {
        return read(text, FilmLogReader.Options.none());
    }

    static ReadResult read(byte[] bytes) {
        return READER.read("log.csv", new ByteArrayInputStream(bytes), FilmLogReader.Options.none());
    }

    static List<String> faults(ReadResult result) {
        return result instanceof ReadResult.Rejected rejected
                ? rejected.faults().stream().map(Fault::text).toList()
                : List.of();
    }

    static List<String> warnings(ReadResult result) {
        return result.warnings().stream().map(Fault::text).toList();
    }

    private static ReadResult read(String text, FilmLogReader.Options options) {
        return READER.read("log.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), options);
    }

    private static String quoted(String cell) {
        return cell.matches("[^\",\r\n]*") ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
    }
}
