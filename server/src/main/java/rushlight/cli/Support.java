package rushlight.cli;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rushlight.knowledge.Source;

/** How well a statement is borne out, as a mark with the numbers of its sources. */
final class Support {
    static final String LEGEND =
            "\u25a0 printed, and borne out by the sources numbered   \u25e7 partly printed   \u25a1 habit of"
                    + " the trade";

    private static final Map<String, String> MARKS =
            Map.of("strong", "\u25a0", "fair", "\u25e7", "common-practice", "\u25a1");

    private final List<Source> printed;

    Support(List<Source> sources) {
        this.printed = sources.stream().filter(Source::printed).toList();
    }

    /** The mark of a level of support. */
    static String mark(String support) {
        return MARKS.getOrDefault(support, "\u25a1");
    }

    /** The mark that stands behind a statement. */
    String of(String support, List<Source> sources) {
        String numbers = IntStream.range(0, printed.size())
                .filter(i -> sources.contains(printed.get(i)))
                .mapToObj(i -> String.valueOf(i + 1))
                .collect(Collectors.joining(","));
        return mark(support) + numbers;
    }

    /** The sources, numbered, one a line. */
    List<String> listed() {
        return printed.stream()
                .map(source -> source.text() + (source.howSeen().isEmpty() ? "" : " (" + source.howSeen() + ")") + ".")
                .toList();
    }
}
