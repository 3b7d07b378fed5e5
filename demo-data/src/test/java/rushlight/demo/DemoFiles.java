package rushlight.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The CSV files of this module, row by row. */
final class DemoFiles {
    private DemoFiles() {}

    static List<Map<String, String>> logs() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("logs"))) {
            return files.sorted().flatMap(file -> rows(file).stream()).toList();
        }
    }

    static List<Map<String, String>> rows(Path file) {
        try {
            List<String> lines = Files.readAllLines(file);
            List<String> header = cells(lines.get(0));
            return lines.subList(1, lines.size()).stream()
                    .map(line -> row(header, cells(line)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> row(List<String> header, List<String> cells) {
        if (cells.size() != header.size()) {
            throw new IllegalArgumentException(cells.size() + " cells, not " + header.size() + ": " + cells);
        }
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            row.put(header.get(i), cells.get(i));
        }
        return row;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                boolean doubled = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
                if (doubled) {
                    cell.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
