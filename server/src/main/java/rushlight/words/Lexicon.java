package rushlight.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rushlight.knowledge.BrokenBookException;

/**
 * A word list of the book: {@code lexicon/NAME.tsv}. The first line, behind a {@code #}, says what it holds; the second
 * names the columns; then one row a line, columns apart by one tab; a value that is empty is written {@code -}.
 *
 * @param columns the names of the columns
 * @param rows the rows, each with a value for every column
 */
public record Lexicon(List<String> columns, List<List<String>> rows) {
    private static final String FOLDER = "/rushlight/ontology/lexicon/";

    public Lexicon {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /**
     * The list with this name, which has these columns.
     *
     * @throws BrokenBookException where it is missing, or has other columns, or a row with too many or too few values
     */
    public static Lexicon named(String name, String... columns) {
        Lexicon read = parse(name + ".tsv", text(name + ".tsv"));
        if (!read.columns.equals(List.of(columns))) {
            throw new BrokenBookException("lexicon/" + name + ".tsv has the columns " + String.join(", ", read.columns)
                    + ", but the program reads " + String.join(", ", columns) + ".");
        }
        return read;
    }

    static Lexicon parse(String file, String text) {
        List<String> columns = List.of();
        List<List<String>> rows = new ArrayList<>();
        int number = 0;
        for (String line : text.split("\n", -1)) {
            number++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> values = Stream.of(line.stripTrailing().split("\t", -1))
                    .map(value -> value.equals("-") ? "" : value)
                    .toList();
            if (columns.isEmpty()) {
                columns = values;
            } else if (values.size() != columns.size()) {
                throw new BrokenBookException("lexicon/" + file + " line " + number + " has " + values.size()
                        + " values for " + columns.size() + " columns: " + line);
            } else {
                rows.add(values);
            }
        }
        return new Lexicon(columns, rows);
    }

    private static String text(String file) {
        try (InputStream in = Lexicon.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new BrokenBookException("The program was packed without its word list lexicon/" + file + ".");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
