package rushlight.notes;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads lines that begin with a time: {@code [1:02] ...}, {@code (1:02) ...}, {@code 1:02 - ...}. */
final class PlainReader {
    private static final String STAMP = "(?:(\\d{1,3}):)?(\\d{1,3}):([0-5]\\d)(?:\\.(\\d{1,3}))?";
    private static final String DASH = "[-\u2013\u2014]";
    private static final Pattern TIMED = Pattern.compile(
            "\\s*(?:\\[" + STAMP + "(?:\\s*" + DASH + "\\s*" + STAMP + ")?]|\\(" + STAMP + "\\)|" + STAMP
                    + "(?=\\s|$))(?:\\s*" + DASH + "\\s+|\\s*)(.*)",
            Pattern.DOTALL);
    private static final Pattern ALMOST = Pattern.compile("[\\[(]\\d+:[\\d:.,]*.*", Pattern.DOTALL);
    private static final Pattern REMARK = Pattern.compile("#(?!\\d).*", Pattern.DOTALL);

    private final CueList cues;
    private final boolean timed;
    private OptionalDouble start = OptionalDouble.empty();
    private OptionalDouble end = OptionalDouble.empty();
    private StringBuilder words = new StringBuilder();
    private boolean open;
    private int since = 1;

    private PlainReader(boolean timed, CueList cues) {
        this.cues = cues;
        this.timed = timed;
    }

    static boolean isTimed(String line) {
        return TIMED.matcher(line).matches();
    }

    static void read(List<String> lines, CueList cues) {
        PlainReader reader = new PlainReader(lines.stream().anyMatch(PlainReader::isTimed), cues);
        for (int i = 0; i < lines.size(); i++) {
            reader.line(lines.get(i).strip(), i + 1);
        }
        reader.close();
    }

    private void line(String line, int number) {
        if (REMARK.matcher(line).matches()) {
            return;
        }
        Matcher found = TIMED.matcher(line);
        if (found.matches()) {
            close();
            int group = found.group(2) != null ? 1 : found.group(10) != null ? 9 : 13;
            start = seconds(found, group);
            end = found.group(6) != null ? seconds(found, 5) : OptionalDouble.empty();
            words = new StringBuilder(found.group(17));
            open = true;
            since = number;
        } else if (line.isEmpty()) {
            if (timed) {
                close();
            }
        } else {
            untimed(line, number);
        }
    }

    private void untimed(String line, int number) {
        if (timed && ALMOST.matcher(line).matches()) {
            close();
            cues.report(
                    "BAD_TIMING",
                    number,
                    "\"" + Narrations.shortened(line) + "\" does not begin with a time as it should ([1:02] or"
                            + " [1:01:02]). It is kept without one.");
            cues.add(line, number);
        } else if (timed && !open) {
            cues.report(
                    "NO_TIMING",
                    number,
                    "This line stands before any time, or behind a blank line; it is kept without one.");
            cues.add(line, number);
        } else {
            words.append(words.isEmpty() ? "" : timed ? " " : "\n").append(line);
            open = true;
        }
    }

    private void close() {
        if (open) {
            cues.add("", start, end, List.of(), words.toString(), since);
            words = new StringBuilder();
            open = false;
        }
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
