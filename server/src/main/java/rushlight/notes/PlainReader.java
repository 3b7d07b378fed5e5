package rushlight.notes;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads lines that begin with a time: {@code [1:02] ...}, {@code (1:02) ...}, {@code 1:02 - ...}. */
final class PlainReader {
    private static final String STAMP = "(?:(\\d{1,3}):)?(\\d{1,3}):(\\d{2})(?:\\.(\\d{1,3}))?";
    private static final Pattern TIMED = Pattern.compile("\\s*(?:\\[" + STAMP + "(?:\\s*-\\s*" + STAMP + ")?]|\\("
            + STAMP + "\\)|" + STAMP + "(?=\\s|$))(?:\\s*-\\s+|\\s*)(.*)");

    private PlainReader() {}

    static boolean isTimed(String line) {
        return TIMED.matcher(line).matches();
    }

    static Narration read(String source, List<String> lines) {
        CueList cues = new CueList();
        boolean timed = lines.stream().anyMatch(PlainReader::isTimed);
        OptionalDouble start = OptionalDouble.empty();
        OptionalDouble end = OptionalDouble.empty();
        StringBuilder words = new StringBuilder();
        boolean open = false;
        int since = 1;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            Matcher found = TIMED.matcher(line);
            if (line.startsWith("#")) {
                continue;
            }
            if (found.matches()) {
                if (open) {
                    cues.add("", start, end, "", words.toString(), since);
                }
                int group = found.group(2) != null ? 1 : found.group(10) != null ? 9 : 13;
                start = seconds(found, group);
                end = found.group(6) != null ? seconds(found, 5) : OptionalDouble.empty();
                words = new StringBuilder(found.group(17));
                open = true;
                since = i + 1;
            } else if (!line.isEmpty()) {
                if (timed && !open) {
                    cues.report(
                            "NO_TIMING",
                            i + 1,
                            "This line stands before any time, or behind a blank line; it is kept without one.");
                    cues.add("", OptionalDouble.empty(), OptionalDouble.empty(), "", line, i + 1);
                } else {
                    words.append(words.isEmpty() ? "" : timed ? " " : "\n").append(line);
                    open = true;
                }
            } else if (timed && open) {
                cues.add("", start, end, "", words.toString(), since);
                words = new StringBuilder();
                open = false;
            }
        }
        if (open) {
            cues.add("", start, end, "", words.toString(), since);
        }
        return cues.narration(source, Format.PLAIN);
    }

    private static OptionalDouble seconds(Matcher found, int group) {
        String hours = found.group(group);
        String digits = found.group(group + 3);
        return OptionalDouble.of((hours == null ? 0 : Integer.parseInt(hours)) * 3600
                + Integer.parseInt(found.group(group + 1)) * 60
                + Integer.parseInt(found.group(group + 2))
                + (digits == null ? 0 : Integer.parseInt(digits) / Math.pow(10, digits.length())));
    }
}
